// The reader: a file's text, or a scenario with a variant, to a job; or every problem with its path.
import * as v from 'valibot'
import { MOST_PHASES } from './duty.ts'
import { fieldOf, mayBeLeftOut } from './field.ts'
import type { Job } from './job.ts'
import { fill, readingsOf } from './fill.ts'
import type { MotorReadings } from './identify/motor.ts'
import { harmless } from './harmless.ts'
import { jobOf } from './jobOf.ts'
import { mismatches } from './mismatches.ts'
import { notesOf } from './notes.ts'
import { type PhaseCut, phaseCuts } from './phaseCuts.ts'
import type { Problem } from './problem.ts'
import { readInput, textOf } from './reading.ts'
import {
  entriesOf,
  FORMAT,
  givenAt,
  type ReadScenario,
  type Scenario,
  ScenarioFields,
  schemaAt,
  type Variant,
  withChange,
  withVariant,
} from './scenario.ts'
import { NO_GROUP, suggest, unknownInputs } from './unknownInputs.ts'

/** Largest file that is read at all, in characters. */
export const LARGEST_FILE = 4_000_000
/** Where the duty's steps stand. */
const STEPS = 'duty.phases'
/** Most problems told at once; and most issues looked at, since one problem may raise several. */
const MOST_PROBLEMS = 50
const MOST_ISSUES = 500

export interface Accepted {
  readonly ok: true
  readonly job: Job
  /** What the job's motor was identified from. */
  readonly motor: MotorReadings
  /** The cuts that steps name in place of a torque, with the handbook row and spread of each. */
  readonly cuts: readonly PhaseCut[]
  /** Every input as read, SI. */
  readonly fields: ReadScenario
  /** What is worth a look before a run that goes ahead all the same. Worked out when asked for. */
  readonly notes: readonly Problem[]
}
export type Read = Accepted | Refused
export interface Refused {
  readonly ok: false
  readonly problems: readonly Problem[]
}
export type ReadFile = { readonly ok: true; readonly scenario: Scenario } | Refused

const refuse = (path: string, wrong: string, wouldDo: string): Refused => ({
  ok: false,
  problems: [{ path, wrong, wouldDo }],
})

/** The scenario in a file's text: JSON of a known format, not yet checked any further. */
export function readFile(text: string): ReadFile {
  if (text.length > LARGEST_FILE)
    return refuse(
      '',
      `The file holds ${Math.round(text.length / 1e6)} million characters.`,
      'A job file is a few thousand; 4 million at most.',
    )
  let parsed: unknown
  try {
    parsed = JSON.parse(text.replace(/^\uFEFF/, ''), (_, value) =>
      typeof value === 'string' ? harmless(value) : value,
    )
  } catch (error) {
    const why = (error as Error).message.replace(/\s+/g, ' ').slice(0, 120)
    if (!/^\s*[{[]/.test(text) && /[,;\t]/.test(text.slice(0, 2000)))
      return refuse(
        '',
        'This is not a job file: it looks like a table or a log.',
        'A warm-up log goes to the bench zone of the page, or to npm run fit.',
      )
    return refuse(
      '',
      `This is not a job file: it is not JSON (${why}).`,
      'Open one that was saved as a job, or copy one of the examples.',
    )
  }
  if (typeof parsed !== 'object' || parsed === null || Array.isArray(parsed))
    return refuse(
      '',
      'This is not a job file: it holds no job.',
      'It begins with { and names "format", "supply", "winding" and so on.',
    )
  const format = givenAt(parsed, 'format')
  if (typeof format === 'number' && format > FORMAT)
    return refuse(
      'format',
      `The file is of format ${format}, from a newer version.`,
      `This version reads format ${FORMAT}: reload the page, or update.`,
    )
  if (format !== FORMAT)
    return refuse('format', 'The file does not say its format.', `It should hold "format": ${FORMAT}.`)
  return { ok: true, scenario: parsed as Scenario }
}

/** Reads a scenario, with a variant's changes if one is given, into a frozen job. */
export function read(scenario: Scenario, variant?: Variant): Read {
  const given = variant ? withVariant(scenario, variant) : scenario
  const crowd = crowdOf(given)
  const whole = crowd > 0 ? withChange(given, STEPS, []) : given
  const parsed = v.safeParse(ScenarioFields, whole)
  const named = phaseCuts(whole)
  const problems = [
    ...(crowd > 0
      ? [
          {
            path: STEPS,
            wrong: `${crowd} steps are more than one cycle can hold.`,
            wouldDo: `Up to ${MOST_PHASES}.`,
          },
        ]
      : []),
    ...(variant ? changesAmiss(variant, scenario, given) : []),
    ...unknownInputs(whole, MOST_PROBLEMS),
    ...(parsed.issues ?? []).slice(0, MOST_ISSUES).map((issue) => problemOf(issue, whole)),
    ...mismatches(parsed.output),
    ...named.problems,
  ]
  if (problems.length > 0 || !parsed.success)
    return { ok: false, problems: once(problems).slice(0, MOST_PROBLEMS) }
  const motor = readingsOf(parsed.output)
  const filled = fill(parsed.output, motor)
  if (!('winding' in filled)) return { ok: false, problems: filled }
  const { cuts } = named
  const job = jobOf(parsed.output, filled, cuts)
  let notes: readonly Problem[] | undefined
  return {
    ok: true,
    job,
    motor,
    cuts,
    fields: parsed.output,
    get notes() {
      notes ??= notesOf(whole, job, motor)
      return notes
    },
  }
}

/** How many steps the duty has, where they are too many to look at one by one; else 0. */
function crowdOf(scenario: Scenario): number {
  const steps = givenAt(scenario, STEPS)
  return Array.isArray(steps) && steps.length > MOST_PHASES ? steps.length : 0
}

/** The first problem at each path: what is amiss in itself is not told again for what it does not match. */
const once = (problems: readonly Problem[]): Problem[] =>
  problems.filter(({ path }, index) => problems.findIndex((other) => other.path === path) === index)

/** Changes of a variant that change nothing, since the scenario has no such place. */
const changesAmiss = ({ changes }: Variant, before: Scenario, whole: Scenario): Problem[] =>
  Object.entries(changes).flatMap(([path, text]) => {
    const known = schemaAt(path, whole) ?? (text === null ? schemaAt(path, before) : null)
    if (known === null) return { path, wrong: 'No input has this name.', wouldDo: suggest(path, whole) }
    if (text === null || givenAt(whole, path) !== undefined) return []
    return { path, wrong: 'The job has no such step.', wouldDo: 'Steps are numbered from 0.' }
  })

/** An issue of the schema library, told by the field it stands at. */
function problemOf(issue: v.BaseIssue<unknown>, scenario: Scenario): Problem {
  const path = (v.getDotPath(issue) ?? '').replace(/\.(value|source|low|high)$/, '')
  const schema = path === '' ? null : schemaAt(path, scenario)
  const field = schema && fieldOf(schema)
  const given = givenAt(scenario, path)
  if (schema && field) {
    if (textOf(given) === undefined && !mayBeLeftOut(schema))
      return {
        path,
        wrong: `${field.label} is missing.`,
        wouldDo: field.kind === 'quantity' ? `Between ${field.low} and ${field.high}.` : 'Give one.',
      }
    const reading = readInput(field, given)
    if (!reading.ok) return { path, wrong: reading.wrong, wouldDo: reading.wouldDo, offers: reading.offers }
  }
  if (issue.input === undefined && path !== '')
    return { path, wrong: 'This part of the job is missing.', wouldDo: 'Copy it from one of the examples.' }
  if (path === '' || (schema && entriesOf(schema))) return { path, ...NO_GROUP }
  const wouldDo = path === STEPS ? `A list of 1 to ${MOST_PHASES} steps.` : 'See the examples for its shape.'
  return { path, wrong: issue.message, wouldDo }
}
