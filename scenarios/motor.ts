// What is known of a job's motor, from where, with bands and complaints. `npm run motor -- FILE…`
import { complaints } from '../sim/identify/complaints.ts'
import { know } from '../sim/identify/known.ts'
import type { MotorNumbers } from '../sim/identify/motor.ts'
import { motorLines, torqueWords } from '../sim/say/motor.ts'
import type { Units } from '../sim/say/units.ts'
import { DEMO, type Opened, openJob } from './open.ts'
import { command, refused, SHARED } from './options.ts'
import { say } from './terminal.ts'

const USAGE = `npm run motor -- [FILE…] [options]     no file: the apple mill demo
${SHARED}
JSON holds one line a file: numbers with bands and origins (SI).`

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
  const asked = command(USAGE)
  if (typeof asked === 'number') return asked
  const { files, variant, units, json } = asked
  let status = 0
  for (const file of files.length > 0 ? files : [DEMO]) {
    const opened = openJob(file, variant)
    if (!('reading' in opened)) status = refused(file, opened, json)
    else if (json) process.stdout.write(`${jsonLine(opened)}\n`)
    else say(table(opened, units))
  }
  return status
}

process.exitCode = main()
