// The command line, run as its users run it: what is on which stream, and the exit code.
import { execFile } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { root } from '../house/tree.ts'
import { type Changes, scenario } from '../jobs.ts'

interface Outcome {
  readonly code: number
  readonly out: string
  readonly err: string
}

const launch = (program: string, args: readonly string[]): Promise<Outcome> =>
  new Promise((done) => {
    execFile(program, args, { cwd: root }, (error, out, err) => {
      done({ code: error ? Number(error.code) : 0, out, err })
    })
  })
/** `npm run -s job -- …` in the project's folder; and what npm would start, started without it: half a second less. */
const npm = (...args: string[]) => launch('npm', ['run', '-s', 'job', '--', ...args])
const direct = (...args: string[]) =>
  launch(process.execPath, [
    join(root, 'node_modules/tsx/dist/cli.mjs'),
    join(root, 'scenarios/run.ts'),
    ...args,
  ])

const folder = mkdtempSync(join(tmpdir(), 'dutywright-'))
afterAll(() => rmSync(folder, { recursive: true }))
const file = (name: string, text: string) => {
  const path = join(folder, name)
  writeFileSync(path, text)
  return path
}
const jobFile = (name: string, changes: Changes) => file(name, JSON.stringify(scenario(changes)))

const short = jobFile('short.json', { 'duty.repeatFor': '4 min' })
const hostile = jobFile('hostile.json', { name: 'A\u001b[31m\u0007 job', 'duty.repeatFor': '1 min' })
const malformed = jobFile('variants.json', { variants: [null, { name: 5 }] })
const bad = jobFile('bad.json', {
  'supply.volts': '12 furlongs',
  'winding.resistance': '-1 Ω',
  'cutoff.reclosesAt': '118 °C',
  'duty.phases.1.lasts': 'NaN s',
  'belt.machinePulley': null,
})
const demo = jobFile('demo.json', {})
const table = join(folder, 'table.csv')

const asked = {
  demo: () => npm(),
  json: () => npm(short, bad, short, '--json'),
  option: () => direct('--frobnicate'),
  units: () => direct(short, '--units', 'furlongs'),
  variant: () => direct(malformed, demo, '--variant', 'With a shaft fan'),
  other: () => direct('--variant', 'With the shaft fan', '--units', 'metric', '--fahrenheit'),
  csv: () => direct(hostile, '--csv', table),
  nowhere: () => direct(short, '--csv', join(folder, 'no', 'such', 'folder.csv')),
  sure: () => direct('scenarios/bandSaw.json', '--sure'),
  sureJson: () => direct(short, '--sure', '--json'),
  check: () => direct('--cross-check', '--until', '2min'),
  unreadable: () =>
    direct(
      join(folder, 'missing.json'),
      folder,
      file('large.json', ' '.repeat(10_000_000)),
      file('text.json', 'supply: 12 V'),
      file('newer.json', '{"format": 2}'),
    ),
}
type Name = keyof typeof asked

const outcomes: Partial<Record<Name, Outcome>> = {}
beforeAll(async () => {
  // Two at a time: as many as the smallest machine has cores.
  const names = Object.keys(asked) as Name[]
  const work = async () => {
    for (let name = names.shift(); name !== undefined; name = names.shift())
      outcomes[name] = await asked[name]()
  }
  await Promise.all([work(), work()])
}, 120_000)
const of = (name: Name): Outcome => outcomes[name]!

describe('npm run job', () => {
  it('without a file answers the demonstration', () => {
    const { code, out, err } = of('demo')
    expect(code).toBe(0)
    expect(err).toBe('')
    expect(out).toMatch(
      /^Orchard workshop apple mill \(no fan, ratio 4\u00a0:\u00a01\)\n\nNo\. The cutoff opens /,
    )
    for (const part of [
      'Hottest winding',
      'What limits',
      'What happens',
      'cutoff recloses',
      'This is an estimate',
    ])
      expect(out).toContain(part)
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
    for (const path of [
      'winding.resistance',
      'cutoff.reclosesAt',
      'duty.phases.1.lasts',
      'belt.machinePulley',
    ])
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

  it('--variant, --units and --fahrenheit do what they say', () => {
    const { code, out } = of('other')
    expect(code).toBe(0)
    expect(out).toMatch(/^Orchard workshop apple mill, With the shaft fan \(shaft fan/)
    expect(out).toMatch(/\n\n(Yes|Barely)\. The cutoff gets to 1\d\d\u00a0°F and never opens/)
    expect(out).not.toContain('°C')
  })

  it('malformed variants are told like any problem', () => {
    const { err } = of('variant')
    expect(err).toContain(`${malformed}: variants.0: This must be a group of inputs.`)
    expect(err).toContain(`${malformed}: variants.1.name: `)
    expect(err).not.toMatch(/\n\s+at /)
  })

  it('--csv writes the table, units in the header', () => {
    const { code, err } = of('csv')
    expect(code).toBe(0)
    const rows = readFileSync(table, 'utf8').trimEnd().split('\n')
    expect(rows[0]).toMatch(/^time \(s\),asked spindle speed \(rpm\),/)
    expect(rows.length).toBeGreaterThan(20)
    expect(rows.at(-1)).toMatch(/^60,/)
    expect(err).toContain(`${rows.length - 1} rows written to ${table}.`)
  })

  it('a name that would steer the terminal is shown, not obeyed', () => {
    const { out } = of('csv')
    expect(out).toMatch(/^A□\[31m□ job \(/)
    expect(out).not.toContain('\u001b')
  })

  it('--csv to where no folder is says so, after the answer', () => {
    const { code, out, err } = of('nowhere')
    expect(code).toBe(2)
    expect(out).toContain('What limits')
    expect(err).toMatch(/The table could not be written .+ Give a path in a folder that exists\./)
    expect(err).not.toMatch(/\n\s+at /)
  })

  it('--sure: the answer follows the samples, and what they come to stands under it', () => {
    const { code, out } = of('sure')
    expect(code).toBe(0)
    expect(out).toMatch(
      /\n\nNo\. The cutoff opens \d+\u00a0min into the job, likely between \d+ and \d+\.\n.+\n\nHow sure\n/,
    )
    expect(out).toMatch(/\n {2}200 samples: .+\.\n/)
    expect(out).toMatch(/\n\nWith the values as given\n {2}Cutoff opens at/)
    expect(out).not.toContain(', with the values as given')
    const found = JSON.parse(of('sureJson').out)
    expect(found.answer.verdict).toBe('Yes')
    expect(found.answer.sentence).not.toContain('with the values as given')
    expect(found.sure).toMatchObject({ samples: 200, fates: { lasts: 1 }, of: 'winding' })
  })

  it('--cross-check prints the largest differences of a second method', () => {
    const { code, out } = of('check')
    expect(code).toBe(0)
    const found =
      /Second method\n {2}An unrelated method, over the first 2\u00a0min and (\d+) times the work, differs by at most ([\d.e-]+)\u00a0°C, ([\d.e-]+)\u00a0rpm at the motor and ([\d.e-]+)\u00a0A\./.exec(
        out,
      )
    expect(found).not.toBeNull()
    const [, times, kelvin, rpm, amps] = found!.map(Number)
    expect(times).toBeGreaterThan(5)
    // NUMERICS.md: at the default tolerance 0.05 K to the first event; some difference there must be.
    expect(kelvin).toBeGreaterThan(0)
    expect(kelvin).toBeLessThan(0.05)
    expect(rpm).toBeLessThan(20)
    expect(amps).toBeLessThan(1)
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
})
