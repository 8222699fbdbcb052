// The command line: job files in, answers out. `npm run job -- FILE…`
import { createWriteStream } from 'node:fs'
import { parseArgs } from 'node:util'
import { carryOut, type Skipping } from '../sim/carryOut.ts'
import { type CrossCheck, crossCheck } from '../sim/crossCheck.ts'
import type { Job } from '../sim/job.ts'
import type { Figures } from '../sim/judge.ts'
import type { Problem } from '../sim/problem.ts'
import type { PhaseCut } from '../sim/phaseCuts.ts'
import { parseQuantity } from '../sim/quantity.ts'
import { answerOf, inShort } from '../sim/say/answer.ts'
import { csvLines } from '../sim/say/csv.ts'
import { sumText } from '../sim/say/cut.ts'
import { jobReport } from '../sim/say/report.ts'
import type { Units } from '../sim/say/units.ts'
import type { Scenario, Variant } from '../sim/scenario.ts'
import type { Trace } from '../sim/trace.ts'
import { type Advised, adviseOn, advisedData, advisedLines, symptomAmiss, type Wanted } from './advice.ts'
import { DEMO, openJob } from './open.ts'
import { drive, problemLines, say, tell } from './terminal.ts'

const USAGE = `npm run job -- [FILE…] [options]     no file: the apple mill demo
  --json            one line of JSON a file: figures, events, ending, effort (SI, °C); use npm run -s
  --csv OUT         writes the trace as a table, units in the header; every cycle is run for it
  --variant NAME    the job with this variant's changes
  --direct          every cycle of a duty that repeats is run, none skipped
  --cross-check     runs the start with a second, unrelated method and prints the largest difference
  --findings        everything to do about it, and what to measure; else the three most urgent
  --symptom WORDS   what it does ("trips after 20 minutes"): what may be behind it, and how to tell
  --until TIME      with --cross-check: up to this time ("20min") instead of the first opening
  --units us|metric units of the answer (us)
  --fahrenheit      temperatures in °F`

interface Options {
  readonly json: boolean
  readonly csv: string | undefined
  readonly variant: string | undefined
  readonly direct: boolean
  readonly crossCheck: boolean
  readonly until: number | undefined
  readonly units: Units
  readonly wanted: Wanted
}

/** A job file, done: everything the output is made from. */
interface Done {
  readonly file: string
  readonly scenario: Scenario
  readonly variant: Variant | undefined
  readonly job: Job
  readonly cuts: readonly PhaseCut[]
  readonly notes: readonly Problem[]
  readonly trace: Trace
  readonly figures: Figures
  readonly skipping: Skipping | null
  readonly check: CrossCheck | null
  readonly advised: Advised
}

function options(): { files: string[]; options: Options } | string {
  let parsed: ReturnType<typeof parse>
  try {
    parsed = parse()
  } catch (error) {
    return error instanceof Error ? error.message : String(error)
  }
  const { values, positionals } = parsed
  if (values.help) return ''
  if (values.units !== 'us' && values.units !== 'metric')
    return `--units cannot be "${values.units}": us or metric.`
  const until = values.until === undefined ? undefined : parseQuantity(values.until, 'time')
  if (until && !until.ok) return `--until: ${until.wrong} ${until.wouldDo}`
  if (until && !values['cross-check']) return '--until goes with --cross-check.'
  const amiss = symptomAmiss(values.symptom)
  if (amiss) return amiss
  if (values.csv !== undefined && positionals.length > 1) return '--csv writes one table: give one file.'
  return {
    files: positionals.length > 0 ? positionals : [DEMO],
    options: {
      json: values.json,
      csv: values.csv,
      variant: values.variant,
      // A table is for other programs: its rows are those of the run itself, each with its own error alone.
      direct: values.direct || values.csv !== undefined,
      crossCheck: values['cross-check'],
      until: until?.value,
      units: { system: values.units, temperature: values.fahrenheit ? '°F' : '°C' },
      wanted: { findings: values.findings, symptom: values.symptom },
    },
  }
}

const parse = () =>
  parseArgs({
    allowPositionals: true,
    options: {
      json: { type: 'boolean', default: false },
      csv: { type: 'string' },
      variant: { type: 'string' },
      direct: { type: 'boolean', default: false },
      'cross-check': { type: 'boolean', default: false },
      until: { type: 'string' },
      findings: { type: 'boolean', default: false },
      symptom: { type: 'string' },
      units: { type: 'string', default: 'us' },
      fahrenheit: { type: 'boolean', default: false },
      help: { type: 'boolean', default: false },
    },
  })

function perform(file: string, options: Options): Done | readonly Problem[] {
  const opened = openJob(file, options.variant)
  if (!('reading' in opened)) return opened
  const { job, cuts, notes } = opened.reading
  const outcome = drive(carryOut(job, { direct: options.direct }), 'Working it out')
  const check = options.crossCheck
    ? drive(
        crossCheck(job, options.until === undefined ? {} : { until: options.until }),
        'Checking with a second method',
      )
    : null
  const advised = adviseOn(opened, outcome.figures, options.wanted)
  return { ...opened, job, cuts, notes, ...outcome, check, advised }
}

const jsonLine = (
  { file, scenario, variant, job, cuts, notes, trace, figures, skipping, check, advised }: Done,
  units: Units,
): string =>
  JSON.stringify({
    file,
    ok: true,
    name: scenario.name,
    variant: variant?.name ?? null,
    answer: answerOf(job, figures, units),
    figures,
    events: trace.marks,
    ending: trace.ending,
    effort: trace.effort,
    skipping,
    cuts: cuts.map((cut) => ({ ...cut, how: sumText(cut.how, units) })),
    notes,
    ...advisedData(advised, units),
    ...(check ? { crossCheck: check } : {}),
  })

async function writeCsv(path: string, job: Job, trace: Trace): Promise<void> {
  const out = createWriteStream(path)
  const failed = new Promise<never>((_, reject) => out.on('error', reject))
  for (const line of csvLines(job, trace))
    if (!out.write(line)) await Promise.race([new Promise<void>((on) => out.once('drain', on)), failed])
  await Promise.race([new Promise<void>((on) => out.end(on)), failed])
}

async function main(): Promise<number> {
  const asked = options()
  if (typeof asked === 'string') {
    tell(asked === '' ? USAGE : `${asked}\n\n${USAGE}`)
    return asked === '' ? 0 : 2
  }
  let status = 0
  for (const file of asked.files) {
    const outcome = perform(file, asked.options)
    if (!('job' in outcome)) {
      status = 2
      tell(problemLines(file, outcome))
      if (asked.options.json)
        process.stdout.write(`${JSON.stringify({ file, ok: false, problems: outcome })}\n`)
      continue
    }
    const { units, json, csv } = asked.options
    if (json) process.stdout.write(`${jsonLine(outcome, units)}\n`)
    else {
      const title = `${outcome.scenario.name}${outcome.variant ? `, ${outcome.variant.name}` : ''} (${inShort(outcome.job)})`
      const advice = advisedLines(outcome.advised, asked.options.wanted, units)
      say(jobReport(title, { ...outcome, advice }, units))
    }
    if (csv === undefined) continue
    try {
      await writeCsv(csv, outcome.job, outcome.trace)
      tell(`${outcome.trace.time.length} rows written to ${csv}.`)
    } catch (error) {
      status = 2
      tell(
        `${csv}: The table could not be written (${error instanceof Error ? error.message : 'unknown'}). Give a path in a folder that exists.`,
      )
    }
  }
  return status
}

process.exitCode = await main()
