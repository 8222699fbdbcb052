// A finding: what is amiss or could be better, its numbers with their source, and the changes that were run to cure it.
import type { Dimension } from '../quantity.ts'
import type { LeverName } from './levers.ts'
import type { Fault, Outcome } from './outcome.ts'

/** Fix: it does not do the job. Safety: it hurts. Avoid: it would get worse. Better: it could be better. Measure: look. */
export type FindingKind = 'Fix' | 'Safety' | 'Avoid' | 'Better' | 'Measure'

/** Worst first: people, people perhaps, the motor, the job, what comes short, what could be gained, what is worth knowing. */
export const SEVERITIES = ['danger', 'unknown', 'damage', 'fails', 'short', 'gain', 'note'] as const
export type Severity = (typeof SEVERITIES)[number]

/** True of what should not stay as it is. What nobody knows yet is not amiss. */
export const isSevere = (severity: Severity): boolean => !['unknown', 'gain', 'note'].includes(severity)

/** True of what hurts people, or may: told before anything else, and never left out. */
export const isPerilous = (severity: Severity): boolean => severity === 'danger' || severity === 'unknown'

export type FindingName =
  | 'ac'
  | 'bareBridge'
  | 'underVolts'
  | 'overVolts'
  | 'lumpy'
  | 'socket'
  | 'weakSupply'
  | 'bigBreaker'
  | 'noEarth'
  | 'earthUnknown'
  | 'hunts'
  | 'limitHigh'
  | 'limited'
  | 'notConnected'
  | 'noCutoff'
  | 'motorLead'
  | 'enableOnly'
  | 'restarts'
  | 'lateCutoff'
  | 'fanMissing'
  | 'fanUseless'
  | 'enclosed'
  | 'dirty'
  | 'tooHot'
  | 'touch'
  | 'range'
  | 'horsepower'
  | 'peak'
  | 'overspeeds'
  | 'flywheelRim'
  | 'wheelUnknown'
  | 'wheelSpeed'
  | 'reach'
  | 'stalls'
  | 'sags'
  | 'slips'
  | 'beltLimit'
  | 'tooSmall'
  | 'plate'
  | 'lessReduction'
  | 'doubt'

/** A number of the finding, SI or °C, and where it comes from. */
export interface Evidence {
  readonly value: number
  readonly dimension: Dimension
  readonly source: string
}

/** Changes by path, as a variant has them. */
export type Changes = Readonly<Record<string, string | null>>

/** A change that was run: what it comes to, and whether it cures all that the finding is about. */
export interface Cure {
  /** Names for a variant: "With the shaft fan". */
  readonly name: string
  /** What it is made of, on top of the variant the advice is about. */
  readonly levers: readonly string[]
  readonly changes: Changes
  readonly whole: boolean
  /** What the job comes to with it; null: wiring or a measurement, which changes no number. */
  readonly outcome: Outcome | null
}

export interface Finding {
  readonly name: FindingName
  readonly kind: FindingKind
  readonly severity: Severity
  readonly evidence: Readonly<Record<string, Evidence>>
  /** Words from the job or another check that the sentence quotes. */
  readonly quotes: readonly string[]
  readonly cures: readonly Cure[]
  /** The finding whose cure makes an end of this one too. */
  readonly after: FindingName | null
}

/** A finding before its cures were run. */
export interface Draft extends Omit<Finding, 'cures' | 'after'> {
  /** Faults that it is about: a cure is whole when none of them is left and no other came. */
  readonly faults: readonly Fault[]
  /** Levers to pull for it, likeliest first; together, if none is enough alone. */
  readonly levers: readonly LeverName[]
  /** Stands where something is missing or wrong, and not only could be better: told first among equals. */
  readonly defect: boolean
  /** A finding told only where a cure makes it so much cooler, K. */
  readonly leastGain?: number
  /** What a cure must come to, where faults do not say it; no cure brings a new fault. */
  readonly heals?: (outcome: Outcome, changes: Changes) => boolean
  /** What a change must come to that is offered though it does not heal; else it has to make the job better. */
  readonly helps?: (outcome: Outcome) => boolean
  /** Has to be done in any case: offered though it is not enough, and then with what is. */
  readonly wanted?: boolean
  /** Lets another finding go first where that one's cure makes an end of it. */
  readonly consequence?: boolean
}

/** A finding with what was run for it. */
export interface Cured {
  readonly draft: Draft
  readonly cures: readonly Cure[]
}

/** A draft with what most of them have: no faults of its own, no quotes. */
export const draft = (
  name: FindingName,
  kind: FindingKind,
  severity: Severity,
  evidence: Finding['evidence'],
  levers: readonly LeverName[],
  more: Partial<
    Pick<Draft, 'faults' | 'quotes' | 'defect' | 'leastGain' | 'heals' | 'helps' | 'wanted' | 'consequence'>
  > = {},
): Draft => ({ name, kind, severity, evidence, levers, quotes: [], faults: [], defect: false, ...more })

/** Evidence, put down in a line. */
export const number = (value: number, dimension: Dimension, source: string): Evidence => ({
  value,
  dimension,
  source,
})
export const RUN = 'this run'
export const JOB = 'the job file'
export const LIVE = 'the battery’s volts, or the peak of the mains'
export const PLATE = 'the plate'
export const STEADY = 'steady state, worked out'
