// Cures: each lever is run on the whole job before it is offered; levers together where none is enough alone.
import type { Progress } from '../run.ts'
import { read } from '../read.ts'
import { withVariant } from '../scenario.ts'
import type { Case } from './case.ts'
import type { Changes, Cure, Draft } from './finding.ts'
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
      const outcome = reading.ok ? yield* outcomeOf(reading.job) : null
      kept.set(key, outcome)
      return outcome
    },
  }
}

/** True where a change ends all that a finding is about, and brings nothing new. */
export function isWhole({ heals, faults }: Draft, now: Outcome, then: Outcome): boolean {
  if (heals) return heals(then)
  const news = then.faults.some((fault) => !now.faults.includes(fault))
  return !news && !then.faults.some((fault) => faults.includes(fault))
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
  const whole: Cure[] = []
  const partial: Cure[] = []
  for (const name of draft.levers) {
    if (whole.length >= OFFERED) break
    const pulled = LEVERS[name](one)
    if (!pulled || whole.some(({ changes }) => JSON.stringify(changes) === JSON.stringify(pulled.changes)))
      continue
    const outcome = yield* run(pulled.changes)
    if (!outcome) continue
    const cure = { ...pulled, levers: [name], outcome }
    if (isWhole(draft, one.now, outcome)) whole.push({ ...cure, whole: true })
    else if (isBetter(one.now, outcome)) partial.push({ ...cure, whole: false })
  }
  return whole.length > 0 ? whole : partial.slice(0, OFFERED)
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

/** The first of them that does the whole job; null: none. */
export function* together(one: Case, { run }: Bench): Generator<Progress, Cure | null> {
  let tried = 0
  for (const levers of TOGETHER) {
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

const nameOf = (all: readonly Pulled[]): string =>
  all.map(({ name }, index) => (index === 0 ? name : name.charAt(0).toLowerCase() + name.slice(1))).join(', ')
