// Advice on a job: what is wrong, by how much, and the cures, each run before it is offered.
import { doubt } from './advise/doubt.ts'
import { lessReduction, tooSmall } from './advise/afterwards.ts'
import { type Case, caseOf } from './advise/case.ts'
import { bench, curesOf, together, withOthers } from './advise/cures.ts'
import { find } from './advise/find.ts'
import { type Cure, type Cured, type Draft, type Finding, isSevere } from './advise/finding.ts'
import { ends, ordered } from './advise/order.ts'
import { type Outcome, outcomeOf } from './advise/outcome.ts'
import { type Diagnosis, diagnose } from './advise/symptoms.ts'
import { SYMPTOMS, type Symptom } from './advise/symptoms/names.ts'
import { type Accepted, read, type Refused } from './read.ts'
import type { Job } from './job.ts'
import type { Progress } from './run.ts'
import { type Scenario, type Variant, withVariant } from './scenario.ts'

export interface Advice {
  readonly ok: true
  readonly job: Job
  readonly now: Outcome
  /** Most urgent first; empty where there is nothing to say. */
  readonly findings: readonly Finding[]
  /** What each symptom may come from in this job. */
  readonly diagnoses: Readonly<Record<Symptom, Diagnosis>>
}

export interface AdviseOptions {
  /** The job is as it is with this variant; cures come on top of it. */
  readonly variant?: Variant
  /** What the job came to, where it has been run. */
  readonly now?: Outcome
  /** Whether to find out which measurement would decide. */
  readonly measure?: boolean
}

/** Runs that advice usually takes, for the progress told. */
const USUAL_RUNS = 10

/** The case of a scenario, run; or why it does not read. */
export function* caseFor(
  scenario: Scenario,
  { variant, now }: AdviseOptions = {},
): Generator<Progress, Case | Refused> {
  const whole = variant ? withVariant(scenario, variant) : scenario
  const reading: Accepted | Refused = read(whole)
  if (!reading.ok) return reading
  return caseOf(whole, reading, now ?? (yield* outcomeOf(reading)))
}

/** Advises on a scenario's job. Yields progress in seconds of all its runs together. Refuses what the reader refuses. */
export function* advise(
  scenario: Scenario,
  options: AdviseOptions = {},
): Generator<Progress, Advice | Refused> {
  const one = yield* caseFor(scenario, options)
  if ('ok' in one) return one
  const runs = bench(one)
  const { seconds } = one.job.duty
  let furthest = 0
  /** Tells how far all runs together have come. */
  const told = function* <T>(work: Generator<Progress, T>): Generator<Progress, T> {
    for (;;) {
      const next = work.next()
      if (next.done) return next.value
      const part = Math.min(1, next.value.t / seconds)
      furthest = Math.max(furthest, runs.runs() + part)
      yield { t: furthest * seconds, of: Math.max(USUAL_RUNS, furthest + 1) * seconds }
    }
  }

  const drafts = find(one)
  const all: Cured[] = []
  for (const draft of drafts.filter(({ consequence }) => !consequence))
    all.push({ draft, cures: yield* told(curesOf(one, runs, draft)) })
  // What one of those cures makes an end of is not cured a second time, unless it is there to keep hands whole.
  const heads = [...all]
  for (const draft of drafts.filter(({ consequence }) => consequence)) {
    const healed = draft.kind !== 'Safety' && heads.some((head) => ends(head, draft, one))
    all.push({ draft, cures: healed ? [] : yield* told(curesOf(one, runs, draft)) })
  }

  let kept = all.filter(({ draft, cures }) => isWorthIt(draft, cures, one.now))
  if (one.now.faults.length > 0 && !kept.some(curesAll)) {
    const wanted = kept.flatMap(({ draft }) => (draft.wanted ? draft.levers.slice(0, 1) : []))
    const cure = yield* told(together(one, runs, wanted))
    const small = cure ? null : tooSmall(one)
    if (cure) kept = withTogether(kept, cure)
    else if (small) kept.push({ draft: small, cures: [] })
  }
  const cures = kept.flatMap((each) => each.cures)
  for (const [index, each] of kept.entries()) {
    const cure = yield* told(withOthers(one, runs, each, cures))
    if (cure) kept[index] = { ...each, cures: [...each.cures, cure] }
  }
  const later = [
    yield* told(lessReduction(one, runs)),
    options.measure === false ? null : yield* told(doubt(one, runs)),
  ]
  for (const draft of later) if (draft) kept.push({ draft, cures: [] })
  const findings = ordered(kept, one)
  const diagnoses = Object.fromEntries(
    SYMPTOMS.map((symptom) => [symptom, diagnose(one, findings, symptom)]),
  ) as Advice['diagnoses']
  return { ok: true, job: one.job, now: one.now, findings, diagnoses }
}

/** A cure that leaves no fault at all. */
const curesAll = ({ cures }: Cured): boolean =>
  cures.some(({ whole, outcome }) => whole && outcome !== null && outcome.faults.length === 0)

/** What only could be better has to be clearly better. */
function isWorthIt({ leastGain }: Draft, cures: readonly Cure[], now: Outcome): boolean {
  if (leastGain === undefined) return true
  return cures.some(
    ({ whole, outcome }) =>
      whole && outcome !== null && now.hottestWindingC - outcome.hottestWindingC >= leastGain,
  )
}

/** The combination goes to the first finding that is about the job not getting done. */
function withTogether(all: readonly Cured[], cure: Cure): Cured[] {
  const about = ({ draft }: Cured) => isSevere(draft.severity) && draft.faults.length > 0
  const first = all.find((each) => about(each) && !each.draft.consequence) ?? all.find(about)
  return all.map((each) => (each === first ? { ...each, cures: [cure, ...each.cures].slice(0, 3) } : each))
}
