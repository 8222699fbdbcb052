// From what a drive does to what it may be: causes that fit this job, ranked, and whether its numbers explain it at all.
import type { Case } from './case.ts'
import type { Evidence, Finding, FindingName } from './finding.ts'
import { candidatesFor, type Cause } from './symptoms/causes.ts'
import { explained, type Explained } from './symptoms/explained.ts'
import type { Symptom } from './symptoms/names.ts'

export interface Suspect {
  readonly cause: Cause
  /** The finding of this job that speaks for it; null: none does. */
  readonly finding: FindingName | null
  /** True of what no number of the job can show: a part that is worn, loose or broken. */
  readonly fault: boolean
  /** Share of what speaks for all of them. */
  readonly share: number
}

export interface Diagnosis {
  readonly symptom: Symptom
  /** Whether this job's numbers come to that; where they do not, it is a fault and not the load. Null: it does not say. */
  readonly explained: boolean | null
  readonly evidence: Readonly<Record<string, Evidence>>
  /** Likeliest first. */
  readonly suspects: readonly Suspect[]
}

/** A finding of this job speaks for its cause so many times as loud. */
const FOUND = 6
/** A fault, where the numbers explain nothing; and a load, where nothing shows it. */
const UNEXPLAINED = 5
const NOT_SHOWN = 0.25

function weightOf(explained: boolean | null, found: boolean, fault: boolean): number {
  if (explained === null) return found ? FOUND : 1
  if (fault) return explained ? 1 : UNEXPLAINED
  if (!found) return NOT_SHOWN
  return explained ? FOUND : 1
}

/** What may be behind a symptom, seen `after` so many seconds (null: not said), given the job's findings. */
export function diagnose(
  one: Case,
  findings: readonly Pick<Finding, 'name'>[],
  symptom: Symptom,
  after: number | null = null,
): Diagnosis {
  const told: Explained = explained(one, symptom, after)
  const names = new Set(findings.map(({ name }) => name))
  const scored = candidatesFor(symptom, one.now.guarded).map(({ cause, weight, findings: mine, fault }) => {
    const finding = mine.find((name) => names.has(name)) ?? null
    const times = weightOf(told.explained, finding !== null, fault)
    return { cause, finding, fault, share: weight * times }
  })
  const sum = scored.reduce((total, { share }) => total + share, 0)
  const suspects = scored
    .map((each) => ({ ...each, share: each.share / sum }))
    .sort((a, b) => b.share - a.share)
  return { symptom, explained: told.explained, evidence: told.evidence, suspects }
}
