// The reader: a file's text, or a scenario with a variant, to a job; or every problem with its path.
import * as v from 'valibot'
import { cycleSeconds, type Duty, MOST_PHASES, type Phase } from './duty.ts'
import { fieldOf, mayBeLeftOut, readField, textOf } from './field.ts'
import { frozen, type Job } from './job.ts'
import { nearest } from './nearest.ts'
import { LEAST_HYSTERESIS } from './parts/cutoff.ts'
import type { Cut } from './parts/machine.ts'
import { resistanceAt } from './parts/winding.ts'
import type { Problem } from './problem.ts'
import {
  entriesOf,
  FORMAT,
  itemOf,
  type ReadScenario,
  type Scenario,
  ScenarioFields,
  schemaAt,
  type Variant,
  givenAt,
  withVariant,
} from './scenario.ts'

/** Largest file that is read at all, in characters. */
export const LARGEST_FILE = 4_000_000
/** Most problems told at once. */
const MOST_PROBLEMS = 50

export type Read = { readonly ok: true; readonly job: Job; readonly notes: readonly Problem[] } | Refused
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
    parsed = JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch (error) {
    const why = error instanceof Error ? error.message.replace(/\s+/g, ' ').slice(0, 120) : ''
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
  const problems: Problem[] = []
  if (variant) {
    for (const path of Object.keys(variant.changes))
      if (schemaAt(path) === null)
        problems.push({ path, wrong: 'No input has this name.', wouldDo: suggest(path) })
  }
  const whole = variant ? withVariant(scenario, variant) : scenario
  problems.push(...unknownInputs(whole))
  const parsed = v.safeParse(ScenarioFields, whole)
  if (!parsed.success) problems.push(...parsed.issues.map((issue) => problemOf(issue, whole)))
  else problems.push(...mismatches(parsed.output))
  if (problems.length > 0 || !parsed.success)
    return { ok: false, problems: once(problems).slice(0, MOST_PROBLEMS) }
  const job = jobOf(parsed.output)
  return { ok: true, job, notes: notesOf(job, parsed.output) }
}

const once = (problems: readonly Problem[]): Problem[] => [
  ...new Map(problems.map((p) => [`${p.path}\n${p.wrong}`, p])).values(),
]

/** An issue of the schema library, told by the field it stands at. */
function problemOf(issue: v.BaseIssue<unknown>, scenario: Scenario): Problem {
  const path = (v.getDotPath(issue) ?? '').replace(/\.(value|source|low|high)$/, '')
  const schema = path === '' ? null : schemaAt(path)
  const field = schema && fieldOf(schema)
  const given = textOf(givenAt(scenario, path))
  if (field && given === undefined && !(schema && mayBeLeftOut(schema)))
    return {
      path,
      wrong: `${field.label} is missing.`,
      wouldDo: field.kind === 'quantity' ? `Between ${field.low} and ${field.high}.` : 'Give one.',
    }
  if (field) {
    const reading = readField(field, given)
    if (!reading.ok) return { path, wrong: reading.wrong, wouldDo: reading.wouldDo, offers: reading.offers }
  }
  if (given === undefined)
    return { path, wrong: 'This part of the job is missing.', wouldDo: 'Copy it from one of the examples.' }
  const wouldDo = path.startsWith('duty.phases')
    ? `A list of 1 to ${MOST_PHASES} steps.`
    : 'See the examples for its shape.'
  return { path, wrong: issue.message, wouldDo }
}

/** Inputs that no field table knows: a slip of the pen would otherwise be passed over in silence. */
function unknownInputs(scenario: Scenario): Problem[] {
  const found: Problem[] = []
  const visit = (schema: v.GenericSchema, value: unknown, path: string) => {
    if (found.length >= MOST_PROBLEMS || typeof value !== 'object' || value === null || fieldOf(schema))
      return
    const item = itemOf(schema)
    if (item && Array.isArray(value))
      return value.slice(0, MOST_PHASES).forEach((each, index) => {
        visit(item, each, `${path}${index}.`)
      })
    const entries = entriesOf(schema)
    if (!entries || Array.isArray(value)) return
    for (const key of Object.keys(value)) {
      const here = `${path}${key.slice(0, 60)}`
      if (Object.hasOwn(entries, key))
        visit(entries[key], (value as Record<string, unknown>)[key], `${here}.`)
      else if (!key.startsWith('$'))
        found.push({ path: here, wrong: 'No input has this name.', wouldDo: suggest(here) })
    }
  }
  visit(ScenarioFields, scenario, '')
  return found
}

function suggest(path: string): string {
  const at = path.lastIndexOf('.')
  const parent = at < 0 ? ScenarioFields : schemaAt(path.slice(0, at))
  const names = Object.keys((parent && entriesOf(parent)) ?? {})
  if (names.length === 0) return 'See the examples for the names.'
  const guess = nearest(path.slice(at + 1), names)
  return guess ? `Did you mean "${guess}"?` : `Known here: ${names.join(', ')}.`
}

/** What cannot be told field by field. */
function mismatches(read: ReadScenario): Problem[] {
  const found: Problem[] = []
  const { cutoff, belt, duty, supply, plate } = read
  const hysteresis = cutoff.opensAt - cutoff.reclosesAt
  if (cutoff.fitted === 'self-reset' && hysteresis < LEAST_HYSTERESIS - 1e-9)
    found.push({
      path: 'cutoff.reclosesAt',
      wrong: `It would reclose ${Number(hysteresis.toPrecision(3))} °C under its opening temperature.`,
      wouldDo: `At least ${LEAST_HYSTERESIS} °C lower; 20 to 40 °C is usual.`,
    })
  if ((belt.jackshaftLarge === undefined) !== (belt.jackshaftSmall === undefined))
    found.push({
      path: belt.jackshaftLarge === undefined ? 'belt.jackshaftLarge' : 'belt.jackshaftSmall',
      wrong: 'A jackshaft needs two pulleys, and only one is given.',
      wouldDo: 'Give the other too, or neither for a single stage.',
    })
  if (supply.kind === 'phase control' && (plate.amps === undefined || plate.speed === undefined))
    found.push({
      path: plate.amps === undefined ? 'plate.amps' : 'plate.speed',
      wrong: 'How lumpy the current is follows from the plate, and this is not given.',
      wouldDo: 'Give plate amps and plate speed, or choose phase control with a choke.',
    })
  duty.phases.forEach((phase, index) => {
    const path = `duty.phases.${index}`
    if ([phase.torque, phase.power, phase.fanTorque].filter((cut) => cut !== undefined).length > 1)
      found.push({
        path: `${path}.torque`,
        wrong: 'This step has more than one kind of cut.',
        wouldDo: 'Keep one of torque, power and fanTorque.',
      })
    if (phase.fanTorque !== undefined && phase.fanTorque > 0 && phase.speed === 0)
      found.push({
        path: `${path}.fanTorque`,
        wrong: 'A fan’s torque is given at the asked speed, and that is 0.',
        wouldDo: 'Ask for a speed, or leave this out.',
      })
    if (phase.surge && phase.surge.lasts >= phase.surge.every)
      found.push({
        path: `${path}.surge.lasts`,
        wrong: 'The surge lasts as long as the time between surges, or longer.',
        wouldDo: 'Shorter than "every"; or add it to the cut.',
      })
  })
  if (!(cycleSeconds(dutyOf(read)) > 0))
    found.push({
      path: 'duty.phases',
      wrong: 'Every step lasts no time at all.',
      wouldDo: 'Give at least one step a length.',
    })
  if (!(duty.repeatFor > 0))
    found.push({
      path: 'duty.repeatFor',
      wrong: 'The job lasts no time at all.',
      wouldDo: 'For example "3 h".',
    })
  return found
}

/** What is worth saying before a run that goes ahead all the same. */
function notesOf(job: Job, read: ReadScenario): Problem[] {
  const { controller, winding, heat } = job.parts
  const notes: Problem[] = []
  const share = (controller.compensation * winding.resistance) / resistanceAt(winding, heat.air)
  if (controller.holds === 'sag compensation' && share > 0.9)
    notes.push({
      path: 'controller.compensation',
      wrong: `The controller makes up for ${Math.round(share * 100)} % of the coldest winding’s resistance: speed will hunt.`,
      wouldDo: 'Turn it down under 90 %.',
    })
  if (read.bench && Object.keys(read.bench).length > 0)
    notes.push({
      path: 'bench',
      wrong: 'Bench readings are kept, and not used yet.',
      wouldDo: 'Give the winding, rotor and heat numbers for now.',
    })
  return notes
}

/** Spindle speed under which a constant-power cut asks no more torque, where nothing is asked. rad/s */
const SLOW = 1

function cutOf(phase: ReadScenario['duty']['phases'][number]): Cut {
  if (phase.power !== undefined)
    return { kind: 'power', power: phase.power, fullAbove: phase.speed > 0 ? phase.speed / 4 : SLOW }
  if (phase.fanTorque !== undefined && phase.speed > 0)
    return { kind: 'fan', coefficient: phase.fanTorque / (phase.speed * phase.speed) }
  return { kind: 'torque', torque: phase.torque ?? 0 }
}

function dutyOf({ duty, heat }: ReadScenario): Duty {
  return {
    phases: duty.phases.map(
      (phase): Phase => ({
        name: phase.name,
        seconds: phase.lasts,
        speed: phase.speed,
        cut: cutOf(phase),
        surge: phase.surge ?? null,
      }),
    ),
    seconds: duty.repeatFor,
    startC: duty.start ?? heat.air,
  }
}

function jobOf(read: ReadScenario): Job {
  const { supply, controller, winding, rotor, belt, machine, heat, cutoff, plate } = read
  const lumpy =
    plate.amps !== undefined && plate.speed !== undefined ? { amps: plate.amps, speed: plate.speed } : null
  return frozen({
    parts: { supply, controller, winding, rotor, belt, machine, heat, cutoff, lumpy },
    plate,
    duty: dutyOf(read),
    accuracy: 'default',
  })
}
