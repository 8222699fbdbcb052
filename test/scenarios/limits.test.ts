// The command line of work and rest, run as a person runs it.
import { spawnSync } from 'node:child_process'
import { expect, it } from 'vitest'
import { root } from '../house/tree.ts'

function launch(...words: string[]) {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ['--import', 'tsx', 'scenarios/limits.ts', ...words],
    { cwd: root, encoding: 'utf8' },
  )
  const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ')
  return { status, out: plain(stdout), err: plain(stderr) }
}

it('in words: sentences, likely and careful, and the card', () => {
  const { status, out, err } = launch('scenarios/bandSaw.json', '--units', 'metric', '--rest', '20 min')
  expect([status, err]).toEqual([0, ''])
  expect(out).toMatch(/^Steel-cutting band saw: cutting, 17\.0 N·m at 38 rpm$/m)
  expect(out).toMatch(
    /^From cold it goes [^:]+: then the winding passes its class limit\. After 20 min of standing /m,
  )
  expect(out).toMatch(/^ {2}Longest run from cold +\d+ min( \d+ s)? +\d+ min( \d+ s)?$/m)
  expect(out).toMatch(/^To pin on the machine$/m)
  expect(out).toMatch(/^ {2}Stop at +\d+\.\d A or \d+ °C /m)
  expect(out).not.toMatch(/undefined|NaN|Infinity|null/)
})

it('as one line of JSON, with a ready-made duty', () => {
  const { status, out } = launch('scenarios/bandSaw.json', '--json', '--duty', 's3 25')
  expect(status).toBe(0)
  expect(out.trim().split('\n')).toHaveLength(1)
  const { ok, phase, duty, asGiven, careful, answer } = JSON.parse(out)
  expect(ok).toBe(true)
  expect(phase.seconds).toBe(150)
  expect(duty.phases.map(({ seconds }: { seconds: number }) => seconds)).toEqual([150, 450])
  expect(careful.cold.seconds).toBeLessThan(asGiven.cold.seconds)
  expect(answer.card.rows.map(({ name }: { name: string }) => name)).toContain('Stop at')
})

it.each([
  [['--duty', 'S9'], '--duty cannot be "S9": one of "S1", "S2 10 min"'],
  [['--rest', 'a while'], '--rest: '],
  [['--phase', 'millin'], 'No step is called “millin”. Did you mean “milling”?'],
])('refuses %j', (words, told) => {
  const { status, out, err } = launch(...words)
  expect([status, out]).toEqual([2, ''])
  expect(err).toContain(told)
})
