// What is known of a job's motor, from where, with bands and complaints. `npm run motor -- FILE…`
import { parseArgs } from 'node:util'
import { complaints } from '../sim/identify/complaints.ts'
import { know } from '../sim/identify/known.ts'
import type { MotorNumbers } from '../sim/identify/motor.ts'
import { motorLines, torqueWords } from '../sim/say/motor.ts'
import type { Units } from '../sim/say/units.ts'
import { DEMO, type Opened, openJob } from './open.ts'
import { problemLines, say, tell } from './terminal.ts'

const USAGE = `npm run motor -- [FILE…] [options]     no file: the apple mill demo
  --json            one line of JSON a file: numbers with bands and origins (SI); use npm run -s
  --variant NAME    the job with this variant's changes
  --units us|metric units (us)
  --fahrenheit      temperatures in °F`

const parse = () =>
  parseArgs({
    allowPositionals: true,
    options: {
      json: { type: 'boolean', default: false },
      variant: { type: 'string' },
      units: { type: 'string', default: 'us' },
      fahrenheit: { type: 'boolean', default: false },
      help: { type: 'boolean', default: false },
    },
  })

/** The table: each number, its band, where it came from. */
function table({ scenario, reading }: Opened, units: Units): string {
  const found = know(reading.motor)
  if (!found) return `${scenario.name}: every number of the motor is given in the job.`
  const lines = motorLines(found.known, units).map((line) => ({
    ...line,
    band: line.band && `likely ${line.band}`,
  }))
  const width = (pick: (line: (typeof lines)[number]) => string) =>
    Math.max(...lines.map((line) => pick(line).length))
  const [labels, values, bands] = [
    width(({ label }) => label),
    width(({ value }) => value),
    width(({ band }) => band),
  ]
  const wrong = complaints(reading.motor)
  return [
    `The motor of ${scenario.name}`,
    '',
    ...lines.map(
      ({ label, value, band, origin }) =>
        `  ${label.padEnd(labels)}  ${value.padEnd(values)}  ${band.padEnd(bands)}  ${origin}`,
    ),
    '',
    torqueWords(found.motor, units),
    ...(wrong.length > 0
      ? ['', 'Worth a look', ...wrong.map(({ path, wrong, wouldDo }) => `  ${path}: ${wrong} ${wouldDo}`)]
      : []),
  ].join('\n')
}

/** What is known where every number is given and the plate says nothing. */
const given = (numbers: Partial<MotorNumbers>) =>
  Object.fromEntries(
    Object.entries(numbers).map(([name, value]) => [
      name,
      { value, low: value, high: value, from: 'given', how: 'given in the job' },
    ]),
  )

const jsonLine = ({ file, scenario, reading }: Opened): string => {
  const found = know(reading.motor)
  return JSON.stringify({
    file,
    ok: true,
    name: scenario.name,
    numbers: found?.known ?? given(reading.motor.given),
    complaints: found ? complaints(reading.motor) : [],
  })
}

function main(): number {
  let parsed: ReturnType<typeof parse>
  try {
    parsed = parse()
  } catch (error) {
    tell(`${error instanceof Error ? error.message : error}\n\n${USAGE}`)
    return 2
  }
  const { values, positionals } = parsed
  if (values.help || (values.units !== 'us' && values.units !== 'metric')) {
    tell(USAGE)
    return values.help ? 0 : 2
  }
  const units: Units = { system: values.units, temperature: values.fahrenheit ? '°F' : '°C' }
  let status = 0
  for (const file of positionals.length > 0 ? positionals : [DEMO]) {
    const opened = openJob(file, values.variant)
    if ('reading' in opened) {
      if (values.json) process.stdout.write(`${jsonLine(opened)}\n`)
      else say(table(opened, units))
      continue
    }
    status = 2
    tell(problemLines(file, opened))
    if (values.json) process.stdout.write(`${JSON.stringify({ file, ok: false, problems: opened })}\n`)
  }
  return status
}

process.exitCode = main()
