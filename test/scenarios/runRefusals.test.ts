// `npm run job` where something is amiss: a bad file, an unknown option, a place that is none; one does not stop the next.
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { type Changes, scenario } from '../jobs.ts'
import { direct, folderForFiles, npm, outcomesOf } from './command.ts'

const RUN = 'scenarios/run.ts'
const { folder, file } = folderForFiles()
const jobFile = (name: string, changes: Changes) => file(name, JSON.stringify(scenario(changes)))
const short = jobFile('short.json', { 'duty.repeatFor': '4 min' })
const malformed = jobFile('variants.json', { variants: [null, { name: 5 }] })
const bad = jobFile('bad.json', {
  'supply.volts': '12 furlongs',
  'winding.resistance': '-1 Ω',
  'cutoff.reclosesAt': '118 °C',
  'duty.phases.1.lasts': 'NaN s',
  'belt.machinePulley': null,
})
const demo = jobFile('demo.json', {})

const of = outcomesOf({
  json: () => npm('job', short, bad, short, '--json'),
  option: () => direct(RUN, '--frobnicate'),
  units: () => direct(RUN, short, '--units', 'furlongs'),
  variant: () => direct(RUN, malformed, demo, '--variant', 'With a shaft fan'),
  nowhere: () => direct(RUN, short, '--csv', join(folder, 'no', 'such', 'folder.csv')),
  unreadable: () =>
    direct(
      RUN,
      join(folder, 'missing.json'),
      folder,
      file('large.json', ' '.repeat(10_000_000)),
      file('text.json', 'supply: 12 V'),
      file('newer.json', '{"format": 2}'),
    ),
})

it('--json: one line of JSON a file and nothing else; a bad file does not stop the next; exit 2', () => {
  const { code, out, err } = of('json')
  expect(code).toBe(2)
  const lines = out.trimEnd().split('\n')
  expect(lines).toHaveLength(3)
  const [first, second, third] = lines.map((line) => JSON.parse(line))
  expect(first).toMatchObject({
    file: short,
    ok: true,
    name: 'Orchard workshop apple mill',
    variant: null,
    answer: { verdict: expect.any(String), sentence: expect.any(String), support: expect.any(String) },
    figures: { seconds: 240, reached: 240, firstOpening: null, classLimitC: 120 },
    events: expect.any(Array),
    ending: { kind: 'finished' },
    effort: { steps: expect.any(Number), rates: expect.any(Number) },
    notes: expect.any(Array),
  })
  expect(first.figures.hottestWindingC.value).toBeGreaterThan(25)
  expect(second).toMatchObject({ file: bad, ok: false })
  expect(second.problems.map(({ path }: { path: string }) => path).sort()).toEqual([
    'belt.machinePulley',
    'cutoff.reclosesAt',
    'duty.phases.1.lasts',
    'supply.volts',
    'winding.resistance',
  ])
  expect(third).toEqual(first)
  expect(err.trimEnd().split('\n')).toHaveLength(5)
})

it('tells every problem of a bad file with its path, on stderr, and shows no stack', () => {
  const { err } = of('json')
  expect(err).toContain(
    `${bad}: supply.volts: "furlongs" is not a unit of voltage. Units that would do: V or mV.`,
  )
  for (const path of ['winding.resistance', 'cutoff.reclosesAt', 'duty.phases.1.lasts', 'belt.machinePulley'])
    expect(err).toContain(`${bad}: ${path}: `)
  expect(err).not.toMatch(/\n\s+at |Error:|node:/)
})

it('refuses what it does not know with the usage, exit 2 and an empty stdout', () => {
  for (const [name, words] of [
    ['option', /--frobnicate/],
    ['units', /--units cannot be "furlongs": us or metric\./],
  ] as const) {
    const { code, out, err } = of(name)
    expect(code).toBe(2)
    expect(out).toBe('')
    expect(err).toMatch(words)
    expect(err).toContain('npm run job -- [FILE…] [options]')
    expect(err).not.toMatch(/\n\s+at /)
  }
})

it('--variant suggests the nearest name, and exits 2', () => {
  const { code, out, err } = of('variant')
  expect([code, out]).toEqual([2, ''])
  expect(err).toContain(
    `${demo}: No variant is called "With a shaft fan". Did you mean "With the shaft fan"?`,
  )
})

it('malformed variants are told like any problem', () => {
  const { err } = of('variant')
  expect(err).toContain(`${malformed}: variants.0: This must be a group of inputs.`)
  expect(err).toContain(`${malformed}: variants.1.name: `)
  expect(err).not.toMatch(/\n\s+at /)
})

it('--csv to where no folder is says so, after the answer', () => {
  const { code, out, err } = of('nowhere')
  expect(code).toBe(2)
  expect(out).toContain('What limits')
  expect(err).toMatch(/The table could not be written .+ Give a path in a folder that exists\./)
  expect(err).not.toMatch(/\n\s+at /)
})

it('a file that cannot be read is told in a line each, and the next is still tried', () => {
  const { code, out, err } = of('unreadable')
  expect([code, out]).toEqual([2, ''])
  const lines = err.trimEnd().split('\n')
  expect(lines).toHaveLength(5)
  expect(lines[0]).toContain('missing.json: There is no such file.')
  expect(lines[1]).toContain(': This is a folder.')
  expect(lines[2]).toContain(
    'large.json: The file holds 10 million characters. A job file is a few thousand; 4 million at most.',
  )
  expect(lines[3]).toContain('text.json: This is not a job file: it is not JSON')
  expect(lines[4]).toContain('newer.json: format: The file is of format 2, from a newer version.')
})
