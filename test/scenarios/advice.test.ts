// The job command’s findings and symptoms, as a process: text beside the answer, and the same as data.
import { execFile } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { expect, it } from 'vitest'
import { wellMade } from '../sim/advise/cases.ts'

const root = fileURLToPath(new URL('../..', import.meta.url))

/** Runs the command; its exit code and what it wrote. */
const job = (...args: string[]) =>
  new Promise<{ code: number; out: string; err: string }>((resolve) => {
    execFile(
      process.execPath,
      ['--import', 'tsx', 'scenarios/run.ts', ...args],
      { cwd: root, maxBuffer: 1e8 },
      (error, out, err) => resolve({ code: typeof error?.code === 'number' ? error.code : 0, out, err }),
    )
  })

it('--json carries findings with their numbers, cures and words, and what a symptom may come from', async () => {
  const file = 'scenarios/bandSaw.json'
  const { code, out } = await job(file, '--json', '--symptom', 'too hot to touch in a minute')
  expect(code).toBe(0)
  const { findings, diagnosis, wiring } = JSON.parse(out)
  const [restarts, first] = findings
  // Hands first: the cutoff recloses in this job; then what makes it open.
  expect(restarts).toMatchObject({ name: 'restarts', kind: 'Safety', severity: 'danger', after: 'range' })
  expect(first).toMatchObject({ name: 'range', kind: 'Fix', severity: 'damage' })
  expect(first.evidence.motor).toEqual({
    value: expect.any(Number),
    dimension: 'angular speed',
    source: 'the job file',
  })
  expect(first.cures[0]).toMatchObject({ whole: true, outcome: { faults: [] } })
  expect(first.words.headline).toBe('Let the motor turn faster: gear it down.')
  expect(wiring.length).toBeGreaterThan(15)
  expect(wiring.find(({ name }: { name: string }) => name === 'batteryFuse')).toMatchObject({
    group: 'protect',
    wrong: false,
    source: 'common practice, no source',
    words: { what: expect.stringContaining('battery’s post') },
  })
  expect(diagnosis).toMatchObject({ symptom: 'burns', explained: false })
  expect(diagnosis.words).toMatch(/^A fault, not the load: /)
})

it('tells the most urgent findings under the answer, and counts the others; words that name no symptom are refused', async () => {
  const [{ out }, refused] = await Promise.all([
    job('scenarios/bandSaw.json', '--symptom', 'trips after 25 minutes'),
    job('--symptom', 'it is a fine day'),
  ])
  const told = out.slice(out.indexOf('What to do about it'))
  expect(told).toContain('The load explains it:')
  expect(told).toMatch(/ {2}Fix {6}Let the motor turn faster: gear it down\. /)
  expect(told).toMatch(/and \d more; --findings tells them all/)
  expect(refused.code).toBe(2)
  expect(refused.err).toContain('Try: trips after twenty minutes,')
})

it('--wiring prints the checklist, each line with its source; the earth nobody measured is told without asking', async () => {
  const [{ out, code }, plain] = await Promise.all([job('--wiring'), job()])
  expect(code).toBe(0)
  const list = out.slice(out.indexOf('\nWiring and safety\n'))
  const boxes = list.split('\n    [ ] ').slice(1)
  expect(boxes.length).toBeGreaterThan(20)
  for (const each of boxes)
    expect(each.replaceAll(/\s+/g, ' '), each).toMatch(
      /\(.*(IEC|ISO|common practice|code|closed form|rating|constant|quadrant).*\)/,
    )
  expect(list).toContain('AS IT STANDS.')
  expect(plain.out).not.toContain('Wiring and safety')
  expect(plain.out).toContain('Measure the earth before the first run.')
})

it('what a finding tells is not told a second time as a note', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'advice-'))
  const file = join(folder, 'plate.json')
  writeFileSync(file, JSON.stringify(wellMade('appleMill', { 'plate.printedWatts': '900 W' })))
  const { out } = await job(file, '--findings')
  rmSync(folder, { recursive: true })
  const complaint = /The plate says 1\.6 hp and 900 W/g
  expect([...out.matchAll(complaint)]).toHaveLength(1)
})
