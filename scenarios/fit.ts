// Heat numbers of a motor from its warm-up log. `npm run fit -- LOG.csv FILE`
import { statSync } from 'node:fs'
import { basename } from 'node:path'
import { heatDoubtOf } from '../sim/heatDoubt.ts'
import { type Fit, fitWarmUp } from '../sim/identify/fit.ts'
import { readLog, tooLarge } from '../sim/identify/log.ts'
import { parseQuantity } from '../sim/quantity.ts'
import { fitLines, heatInputs, hottestWords, missWords, settledWords } from '../sim/say/fit.ts'
import type { Units } from '../sim/say/units.ts'
import { DEMO, openJob, textOf } from './open.ts'
import { command, refused, SHARED } from './options.ts'
import { say } from './terminal.ts'

const EXAMPLE = 'scenarios/appleMillWarmUp.csv'
const USAGE = `npm run fit -- LOG.csv [FILE] [options]     FILE: the job with the motor; left out: the apple mill demo
  --rpm SPEED       motor speed where the log has neither rpm nor volts
${SHARED}
The variant: cooling as it was in the run. JSON holds numbers with bands, and what to record next (SI).`

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
  const asked = command(USAGE, { rpm: { type: 'string' } })
  if (typeof asked === 'number') return asked
  const { units, json } = asked
  const [file, job = DEMO, ...more] = asked.files
  if (file === undefined) return asked.fail('Which log?')
  if (more.length > 0) return asked.fail('One log and one job.')
  const refuse = (about: string, wrong: string, wouldDo: string): number =>
    refused(about, [{ path: '', wrong, wouldDo }], json)
  const rpm = asked.text('rpm')
  const held = rpm === undefined ? undefined : parseQuantity(rpm, 'angular speed', 'rpm')
  if (held && !held.ok) return refuse('--rpm', held.wrong, held.wouldDo)

  const large = tooLarge(statSync(file, { throwIfNoEntry: false })?.size ?? 0)
  if (large) return refuse(file, large.wrong, large.wouldDo)
  const text = textOf(file, EXAMPLE)
  if (typeof text !== 'string') return refuse(file, text[0].wrong, text[0].wouldDo)
  const read = readLog(text)
  if (!read.ok) return refuse(file, read.wrong, read.wouldDo)
  const opened = openJob(job, asked.variant)
  if (!('reading' in opened)) return refused(job, opened, json)
  const { reading, scenario } = opened
  const doubt = heatDoubtOf(scenario, reading.motor, reading.job.parts.supply)
  const fit = fitWarmUp(read.log, reading.job.parts, doubt, held?.value)
  if (!fit.ok) return refuse(file, fit.wrong, fit.wouldDo)
  if (json) {
    const { numbers, frameMiss, windingMiss, next } = fit
    const notes = [...read.notes, ...fit.notes]
    process.stdout.write(
      `${JSON.stringify({ file, ok: true, numbers, frameMiss, windingMiss, notes, next, heat: heatInputs(fit, basename(file)) })}\n`,
    )
  } else say(report(fit, file, read.notes, units))
  return 0
}

process.exitCode = main()
