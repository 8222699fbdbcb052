// The job command’s findings and symptoms, as a process: text beside the answer, and the same as data.
import { execFile } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { expect, it } from 'vitest'

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
  const { findings, diagnosis } = JSON.parse(out)
  const [first] = findings
  expect(first).toMatchObject({ name: 'range', kind: 'Fix', severity: 'danger' })
  expect(first.evidence.motor).toEqual({
    value: expect.any(Number),
    dimension: 'angular speed',
    source: 'the job file',
  })
  expect(first.cures[0]).toMatchObject({ whole: true, outcome: { faults: [] } })
  expect(first.words.headline).toBe('Let the motor turn faster: gear it down.')
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
