// `npm run check:runs` on good reference runs, on an altered one, and on what is none.
import { expect, it } from 'vitest'
import { references } from '../checks/files.ts'
import { direct as launch, folderForFiles, npm } from './command.ts'

const direct = (...args: string[]) => launch('scenarios/checkRuns.ts', ...args)
const { file: textFile } = folderForFiles()
const file = (name: string, value: unknown) => textFile(name, JSON.stringify(value))

it('passes test/checks/runs.json: a line a run with events, times and temperatures', async () => {
  const { code, out, err } = await npm('check:runs', 'test/checks/runs.json')
  const lines = out.trimEnd().split('\n')
  expect(code).toBe(0)
  expect(err).toBe('')
  expect(lines).toHaveLength(references.runs.length + 1)
  references.runs.forEach(({ name, expected }, index) => {
    const count = expected.events.length
    expect(lines[index]).toMatch(
      new RegExp(`^${name} +events ${count}/${count} +time \\S+ +temperature \\S+ K +pass$`),
    )
  })
  expect(lines.at(-1)).toMatch(new RegExp(`^${references.runs.length} passed, 0 failed`))
})

/** A short run with events, and the same with one expected number moved past the tolerance. */
const [short] = [...references.runs]
  .filter(({ expected }) => expected.events.length > 0)
  .sort((a, b) => a.seconds - b.seconds)
const altered = (change: (run: typeof short) => void) => {
  const copy = structuredClone(short)
  change(copy)
  return copy
}

it('fails what is altered past the tolerance, in time, temperature, peak or number of events', async () => {
  const runs = [
    short,
    altered((run) => {
      run.name = 'late'
      run.expected.events[0][1] *= 1 + 2e-4
    }),
    altered((run) => {
      run.name = 'warm'
      run.expected.end.Tw += 0.03
    }),
    altered((run) => {
      run.name = 'peak'
      run.expected.peak.Ts += 0.03
    }),
    altered((run) => {
      run.name = 'fewer'
      run.expected.events.pop()
    }),
    altered((run) => {
      run.name = 'other magnets'
      run.plant = { ...run.plant, kTempCoeff: -0.05 }
    }),
  ]
  const { code, out } = await direct(file('altered.json', { base: references.base, runs }))
  const lines = out.trimEnd().split('\n')
  expect(code).toBe(1)
  expect(lines.map((line) => /(pass|FAIL)$/.exec(line)?.[1])).toEqual([
    'pass',
    'FAIL',
    'FAIL',
    'FAIL',
    'FAIL',
    'FAIL',
    undefined,
  ])
  expect(lines[5]).toContain('other magnets: cannot be run')
  expect(lines[6]).toMatch(/^1 passed, 5 failed/)
})

it.each([
  ['no file', [], /npm run check:runs -- FILE/],
  ['what is no file of runs', [file('none.json', { runs: 5 })], /no reference runs in it/],
])('given %s says what it wants and exits 2', async (_, args, words) => {
  const { code, out, err } = await direct(...args)
  expect([code, out]).toEqual([2, ''])
  expect(err).toMatch(words)
  expect(err).not.toMatch(/\n\s+at /)
})
