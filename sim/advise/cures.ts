// Cures: each lever is run on the whole job before it is offered; levers together where none is enough alone.
import type { Progress } from '../run.ts'
import { read } from '../read.ts'
import { withVariant } from '../scenario.ts'
import type { Case } from './case.ts'
import type { Changes, Cure, Cured, Draft } from './finding.ts'
import { LEVERS, type LeverName, type Pulled } from './levers.ts'
import { type Outcome, outcomeOf } from './outcome.ts'

/** Cures offered for one finding, and whole ones after which no more are looked for. */
const OFFERED = 2
/** A change that is to be offered though it is not enough has to bring so much, K or share of the time to an opening. */
const LEAST_K = 3
const LATER = 1.1

/** Runs changes, each once however often it is asked for. */
export interface Bench {
  run(changes: Changes): Generator<Progress, Outcome | null>
  /** Runs made so far. */
  readonly runs: () => number
}

export function bench(one: Case): Bench {
  const kept = new Map<string, Outcome | null>()
  return {
    runs: () => kept.size,
    *run(changes) {
      const key = JSON.stringify(Object.entries(changes).sort())
      const before = kept.get(key)
      if (before !== undefined) return before
      const reading = read(withVariant(one.scenario, { name: 'tried', changes }))
      const outcome = reading.ok ? yield* outcomeOf(reading) : null
      kept.set(key, outcome)
      return outcome
    },
  }
}

/** True where a change ends all that a finding is about, and brings nothing new. */
export function isWhole({ heals, faults }: Draft, now: Outcome, then: Outcome, changes: Changes): boolean {
  if (then.faults.some((fault) => !now.faults.includes(fault))) return false
  return heals ? heals(then, changes) : !then.faults.some((fault) => faults.includes(fault))
}

/** True where it is better for a change, though not cured. */
function isBetter(now: Outcome, then: Outcome): boolean {
  const order = (outcome: Outcome) => outcome.firstOpening ?? Number.POSITIVE_INFINITY
  if (then.faults.some((fault) => !now.faults.includes(fault))) return false
  return (
    then.faults.length < now.faults.length ||
    order(then) > LATER * order(now) ||
    then.hottestWindingC < now.hottestWindingC - LEAST_K
  )
}

/** Runs what a finding has a use for: whole cures, or else what helps some. */
export function* curesOf(one: Case, { run }: Bench, draft: Draft): Generator<Progress, Cure[]> {
  const { now } = one
  const helps = draft.wanted ? () => true : (draft.helps ?? ((then: Outcome) => isBetter(now, then)))
  const found: Cure[] = []
  for (const name of draft.levers) {
    if (found.filter(({ whole }) => whole).length >= OFFERED) break
    const pulled = LEVERS[name](one)
    if (!pulled || found.some(({ changes }) => isSame(changes, pulled.changes))) continue
    const outcome = yield* run(pulled.changes)
    if (!outcome) continue
    const whole = isWhole(draft, now, outcome, pulled.changes)
    if (whole || helps(outcome)) found.push({ ...pulled, levers: [name], whole, outcome })
  }
  const whole = found.filter((cure) => cure.whole)
  return (draft.wanted || whole.length === 0 ? found : whole).slice(0, OFFERED)
}

const isSame = (one: Changes, other: Changes): boolean => JSON.stringify(one) === JSON.stringify(other)

/** Cures of other findings that are tried together with one that has to be done in any case. */
const MOST_WITH = 3

/** What has to be done in any case, together with the first of some cures that makes it whole; null: none, or not needed. */
export function* withOthers(
  one: Case,
  { run }: Bench,
  { draft, cures: [own, ...more] }: Cured,
  others: readonly Cure[],
): Generator<Progress, Cure | null> {
  if (!draft.wanted || !own || [own, ...more].some(({ whole }) => whole)) return null
  for (const other of others.filter(({ whole }) => whole).slice(0, MOST_WITH)) {
    const changes = { ...other.changes, ...own.changes }
    const outcome = yield* run(changes)
    if (!outcome || !isWhole(draft, one.now, outcome, changes)) continue
    const both = isSame(changes, other.changes) ? [other] : [own, other]
    return { name: nameOf(both), levers: both.flatMap(({ levers }) => levers), changes, whole: true, outcome }
  }
  return null
}

/** Two or three levers together, in the order they are tried. */
const TOGETHER: readonly (readonly LeverName[])[] = [
  ['shaft fan', 'more reduction'],
  ['outer fan', 'more reduction'],
  ['blower', 'more reduction'],
  ['shaft fan', 'most reduction'],
  ['outer fan', 'most reduction'],
  ['blower', 'most reduction'],
  ['blower', 'jackshaft'],
  ['outer fan', 'jackshaft'],
  ['blower', 'most reduction', 'shorter work'],
  ['outer fan', 'jackshaft', 'shorter work'],
]
/** So many are run at most. */
const MOST_TOGETHER = 5

/** The first of them that does the whole job, with what has to be done in any case; null: none. */
export function* together(
  one: Case,
  { run }: Bench,
  wanted: readonly LeverName[],
): Generator<Progress, Cure | null> {
  let tried = 0
  for (const combined of TOGETHER) {
    const levers = [...wanted, ...combined]
    const pulled = levers.map((name) => LEVERS[name](one))
    if (pulled.some((each) => each === null) || tried >= MOST_TOGETHER) continue
    const all = pulled as Pulled[]
    const changes = Object.assign({}, ...all.map((each) => each.changes)) as Changes
    const outcome = yield* run(changes)
    tried++
    if (outcome && outcome.faults.length === 0)
      return { name: nameOf(all), levers, changes, whole: true, outcome }
  }
  return null
}

const nameOf = (all: readonly { readonly name: string }[]): string =>
  all
    .map(({ name }, index) =>
      index === 0
        ? name
        : name.replace(/^Jackshaft/, 'With a jackshaft').replace(/^./, (first) => first.toLowerCase()),
    )
    .join(', ')
