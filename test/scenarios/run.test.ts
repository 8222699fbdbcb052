// `npm run job`: what it answers, in words, as JSON, as a table, in the units asked for.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { scenario } from '../jobs.ts'
import { direct, folderForFiles, npm, outcomesOf } from './command.ts'

const RUN = 'scenarios/run.ts'
const { folder, file } = folderForFiles()
const short = file('short.json', JSON.stringify(scenario({ 'duty.repeatFor': '4 min' })))
const hostile = file(
  'hostile.json',
  JSON.stringify(scenario({ name: 'A\u001b[31m\u0007 job', 'duty.repeatFor': '1 min' })),
)
const table = join(folder, 'table.csv')

const of = outcomesOf({
  demo: () => npm('job'),
  other: () => direct(RUN, '--variant', 'With the shaft fan', '--units', 'metric', '--fahrenheit'),
  csv: () => direct(RUN, hostile, '--csv', table),
  sure: () => direct(RUN, 'scenarios/bandSaw.json', '--sure'),
  sureJson: () => direct(RUN, short, '--sure', '--json'),
  check: () => direct(RUN, '--cross-check', '--until', '2min'),
})

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

it('--variant, --units and --fahrenheit do what they say', () => {
  const { code, out } = of('other')
  expect(code).toBe(0)
  expect(out).toMatch(/^Orchard workshop apple mill, With the shaft fan \(shaft fan/)
  expect(out).toMatch(/\n\n(Yes|Barely)\. The cutoff gets to 1\d\d\u00a0°F and never opens/)
  expect(out).not.toContain('°C')
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
