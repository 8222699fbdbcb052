// The ledger holds every outside case once, and a used one is really named by its test.
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { withoutComments } from '../house/imports.ts'
import { root } from '../house/tree.ts'
import { ids } from './files.ts'
import { complaints, ledger, type Standing } from './ledger.ts'

const all = [...ids.published, ...ids.oracles, ...ids.measured]

/** Comments do not count: a case is used where code names it. */
const textOf = (file: string): string | null => {
  const path = join(root, file)
  return existsSync(path) ? withoutComments(readFileSync(path, 'utf8')) : null
}

it('every case is used, planned or left out', () => {
  // What the files are known to hold: a case dropped from them would go unnoticed otherwise.
  expect([ids.published.length, ids.oracles.length, ids.measured.length]).toEqual([61, 21, 2])
  expect(new Set(all).size).toBe(all.length)
  expect(complaints(ledger, all, textOf)).toEqual([])
})

it.each<[string, Record<string, Standing>, string]>([
  ['P01', {}, 'P01 is not in the ledger'],
  ['', { P02: { planned: 'know the motor' } }, 'P02 is in the ledger, and there is no such case'],
  ['P01', { P01: { used: 'test/none.test.ts' } }, 'P01 is used by test/none.test.ts, which does not exist'],
  ['P01', { P01: { used: 'test/some.test.ts' } }, 'P01 is not named in test/some.test.ts'],
  ['P01', { P01: { leftOut: 'no' } }, 'P01 is left out without a reason'],
  [
    'P01',
    { P01: { planned: 'some day' as 'know the motor' } },
    'P01 is planned for “some day”, which is no capability',
  ],
])('complains: case "%s" with %o', (id, entries, complaint) => {
  const files: Record<string, string> = { 'test/some.test.ts': "publishedCase('P010')" }
  expect(complaints(entries, id ? [id] : [], (file) => files[file] ?? null)).toEqual([complaint])
})

it('takes a used case that its test names', () => {
  expect(complaints({ P01: { used: 'a' } }, ['P01'], () => "publishedCase('P01')")).toEqual([])
  expect(complaints({ O01: { used: 'a' } }, ['O01'], () => 'O01_pmdc_voltage_step')).toEqual([])
})
