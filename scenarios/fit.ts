// Heat numbers of a motor from its warm-up log. `npm run fit -- LOG.csv FILE`
import { statSync } from 'node:fs'
import { basename } from 'node:path'
import { parseArgs } from 'node:util'
import { heatDoubtOf } from '../sim/heatDoubt.ts'
import { type Fit, fitWarmUp } from '../sim/identify/fit.ts'
import { readLog, tooLarge } from '../sim/identify/log.ts'
import { parseQuantity } from '../sim/quantity.ts'
import { fitLines, heatInputs, hottestWords, missWords, settledWords } from '../sim/say/fit.ts'
import type { Units } from '../sim/say/units.ts'
import { DEMO, openJob, textOf } from './open.ts'
import { problemLines, say, tell } from './terminal.ts'

const EXAMPLE = 'scenarios/appleMillWarmUp.csv'
const USAGE = `npm run fit -- LOG.csv [FILE] [options]     FILE: the job with the motor; left out: the apple mill demo
  --json            one line of JSON: numbers with bands, what to record next (SI); use npm run -s
  --variant NAME    the job with this variant's changes: cooling as it was in the run
  --rpm SPEED       motor speed where the log has neither rpm nor volts
  --units us|metric units (us)
  --fahrenheit      temperatures in °F`

const parse = () =>
  parseArgs({
    allowPositionals: true,
    options: {
      json: { type: 'boolean', default: false },
      variant: { type: 'string' },
      rpm: { type: 'string' },
      units: { type: 'string', default: 'us' },
      fahrenheit: { type: 'boolean', default: false },
      help: { type: 'boolean', default: false },
    },
  })

/** The report: numbers, how well they are known, what to record next, lines to paste. */
function report(fit: Fit, log: string, notes: readonly string[], units: Units): string {
  const lines = fitLines(fit, units)
  const width = (pick: (line: (typeof lines)[number]) => string) =>
    Math.max(...lines.map((line) => pick(line).length))
  const [labels, values, bands] = [
    width(({ label }) => label),
    width(({ value }) => value),
    width(({ band }) => band),
  ]
  const list = (title: string, sentences: readonly string[]) =>
    sentences.length > 0 ? ['', title, ...sentences.map((sentence) => `  ${sentence}`)] : []
  const inputs = Object.entries(heatInputs(fit, basename(log)))
  return [
    `Heat numbers from ${basename(log)}`,
    '',
    ...lines.map(
      ({ label, value, band, settled }) =>
        `  ${label.padEnd(labels)}  ${value.padEnd(values)}  likely ${band.padEnd(bands)}  ${settled}`,
    ),
    '',
    settledWords(fit),
    missWords(fit, units),
    hottestWords(fit, units),
    ...list('Worth a look', [...notes, ...fit.notes]),
    ...list('To record next', fit.next),
    '',
    'For the job file, under "heat":',
    ...inputs.map(
      ([name, input], n) =>
        `  ${JSON.stringify(name)}: ${JSON.stringify(input)}${n + 1 < inputs.length ? ',' : ''}`,
    ),
  ].join('\n')
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
  const [file, job = DEMO, ...more] = positionals
  const unitsKnown = values.units === 'us' || values.units === 'metric'
  if (values.help || file === undefined || more.length > 0 || !unitsKnown) {
    tell(USAGE)
    return values.help ? 0 : 2
  }
  const refuse = (about: string, wrong: string, wouldDo: string): number => {
    tell(problemLines(about, [{ path: '', wrong, wouldDo }]))
    if (values.json)
      process.stdout.write(
        `${JSON.stringify({ file, ok: false, problems: [{ path: '', wrong, wouldDo }] })}\n`,
      )
    return 2
  }
  const held = values.rpm === undefined ? undefined : parseQuantity(values.rpm, 'angular speed', 'rpm')
  if (held && !held.ok) return refuse('--rpm', held.wrong, held.wouldDo)

  const large = tooLarge(statSync(file, { throwIfNoEntry: false })?.size ?? 0)
  if (large) return refuse(file, large.wrong, large.wouldDo)
  const text = textOf(file, EXAMPLE)
  if (typeof text !== 'string') return refuse(file, text[0].wrong, text[0].wouldDo)
  const read = readLog(text)
  if (!read.ok) return refuse(file, read.wrong, read.wouldDo)
  const opened = openJob(job, values.variant)
  if (!('reading' in opened)) {
    tell(problemLines(job, opened))
    return 2
  }
  const { reading, scenario } = opened
  const doubt = heatDoubtOf(scenario, reading.motor, reading.job.parts.supply)
  const fit = fitWarmUp(read.log, reading.job.parts, doubt, held?.value)
  if (!fit.ok) return refuse(file, fit.wrong, fit.wouldDo)
  const units: Units = {
    system: values.units === 'metric' ? 'metric' : 'us',
    temperature: values.fahrenheit ? '°F' : '°C',
  }
  if (values.json) {
    const { numbers, frameMiss, windingMiss, next } = fit
    const notes = [...read.notes, ...fit.notes]
    process.stdout.write(
      `${JSON.stringify({ file, ok: true, numbers, frameMiss, windingMiss, notes, next, heat: heatInputs(fit, basename(file)) })}\n`,
    )
  } else say(report(fit, file, read.notes, units))
  return 0
}

process.exitCode = main()
