// The command line: job files in, answers out. `npm run job -- FILE…`
import { createWriteStream } from 'node:fs'
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
import { wiringLead } from '../sim/say/wiring.ts'
import { wiringData, wiringLines } from '../sim/say/wiringReport.ts'
import type { Scenario, Variant } from '../sim/scenario.ts'
import type { Sure } from '../sim/studies/sure.ts'
import type { Trace } from '../sim/trace.ts'
import { type Statement, wiringOf } from '../sim/wiring.ts'
import {
  type Advised,
  adviseOn,
  advisedData,
  advisedLines,
  notesLeft,
  symptomAmiss,
  type Wanted,
} from './advice.ts'
import { doubtOn } from './doubt.ts'
import { DEMO, openJob, titleOf } from './open.ts'
import { type Command, command, refused, SHARED } from './options.ts'
import { drive, say, tell } from './terminal.ts'

const USAGE = `npm run job -- [FILE…] [options]     no file: the apple mill demo
  --csv OUT         writes the trace as a table, units in the header; every cycle is run for it
  --direct          every cycle of a duty that repeats is run, none skipped
  --cross-check     runs the start with a second, unrelated method and prints the largest difference
  --sure            with the doubt: two hundred likely readings are run, and the answer follows them
  --findings        everything to do about it, and what to measure; else the three most urgent, and what may hurt
  --wiring          the checklist for wiring and safety, each line with its source
  --symptom WORDS   what it does ("trips after 20 minutes"): what may be behind it, and how to tell
  --until TIME      with --cross-check: up to this time ("20min") instead of the first opening
${SHARED}
JSON holds one line a file: figures, events, ending, effort (SI, °C).`

const OWN = {
  csv: { type: 'string' },
  direct: { type: 'boolean' },
  'cross-check': { type: 'boolean' },
  until: { type: 'string' },
  sure: { type: 'boolean' },
  findings: { type: 'boolean' },
  wiring: { type: 'boolean' },
  symptom: { type: 'string' },
} as const

interface Options {
  readonly json: boolean
  readonly csv: string | undefined
  readonly variant: string | undefined
  readonly direct: boolean
  readonly crossCheck: boolean
  readonly sure: boolean
  readonly until: number | undefined
  readonly units: Units
  readonly wanted: Wanted
  readonly wiring: boolean
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
  readonly sure: Sure | null
  readonly advised: Advised
  readonly checklist: readonly Statement[]
}

/** What is asked, from the command line; a sentence where something does not go together. */
function optionsOf({ text, flag, files, json, variant, units }: Command): Options | string {
  const untilText = text('until')
  const until = untilText === undefined ? undefined : parseQuantity(untilText, 'time')
  if (until && !until.ok) return `--until: ${until.wrong} ${until.wouldDo}`
  if (until && !flag('cross-check')) return '--until goes with --cross-check.'
  const symptom = text('symptom')
  const amiss = symptomAmiss(symptom)
  if (amiss) return amiss
  const csv = text('csv')
  if (csv !== undefined && files.length > 1) return '--csv writes one table: give one file.'
  return {
    json,
    csv,
    variant,
    // A table is for other programs: its rows are those of the run itself, each with its own error alone.
    direct: flag('direct') || csv !== undefined,
    crossCheck: flag('cross-check'),
    sure: flag('sure'),
    until: until?.value,
    units,
    wanted: { findings: flag('findings'), symptom },
    wiring: flag('wiring'),
  }
}

function perform(file: string, options: Options): Done | readonly Problem[] {
  const opened = openJob(file, options.variant)
  if (!('reading' in opened)) return opened
  const { job, motor, cuts, notes } = opened.reading
  const outcome = drive(carryOut(job, { direct: options.direct }), 'Working it out')
  const check = options.crossCheck
    ? drive(
        crossCheck(job, options.until === undefined ? {} : { until: options.until }),
        'Checking with a second method',
      )
    : null
  const doubt = options.sure ? doubtOn(opened.scenario, opened.variant) : null
  if (doubt && !('fates' in doubt)) return doubt
  const advised = adviseOn(opened, outcome.figures, options.wanted)
  const checklist = wiringOf(job, motor.bench, outcome.figures)
  return { ...opened, job, cuts, notes, ...outcome, check, sure: doubt, advised, checklist }
}

const jsonLine = (
  {
    file,
    scenario,
    variant,
    job,
    cuts,
    notes,
    trace,
    figures,
    skipping,
    check,
    sure,
    advised,
    checklist,
  }: Done,
  units: Units,
): string =>
  JSON.stringify({
    file,
    ok: true,
    name: scenario.name,
    variant: variant?.name ?? null,
    answer: answerOf(job, figures, units, sure),
    figures,
    events: trace.marks,
    ending: trace.ending,
    effort: trace.effort,
    skipping,
    cuts: cuts.map((cut) => ({ ...cut, how: sumText(cut.how, units) })),
    notes,
    ...advisedData(advised, units),
    wiring: wiringData(checklist, units),
    ...(check ? { crossCheck: check } : {}),
    ...(sure ? { sure } : {}),
  })

async function writeCsv(path: string, job: Job, trace: Trace): Promise<void> {
  const out = createWriteStream(path)
  const failed = new Promise<never>((_, reject) => out.on('error', reject))
  for (const line of csvLines(job, trace))
    if (!out.write(line)) await Promise.race([new Promise<void>((on) => out.once('drain', on)), failed])
  await Promise.race([new Promise<void>((on) => out.end(on)), failed])
}

async function main(): Promise<number> {
  const asked = command(USAGE, OWN)
  if (typeof asked === 'number') return asked
  const options = optionsOf(asked)
  if (typeof options === 'string') return asked.fail(options)
  const { units, json, csv, wanted } = options
  let status = 0
  for (const file of asked.files.length > 0 ? asked.files : [DEMO]) {
    const outcome = perform(file, options)
    if (!('job' in outcome)) {
      status = refused(file, outcome, json)
      continue
    }
    if (json) process.stdout.write(`${jsonLine(outcome, units)}\n`)
    else {
      const title = `${titleOf(outcome)} (${inShort(outcome.job)})`
      const advice = advisedLines(outcome.advised, wanted, units)
      const notes = notesLeft(outcome.advised, outcome.notes, wanted, units)
      const checklist = options.wiring ? wiringLines(wiringLead(outcome.job), outcome.checklist, units) : []
      say(jobReport(title, { ...outcome, notes, advice, checklist }, units))
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
