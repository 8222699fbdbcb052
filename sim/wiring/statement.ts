// A statement of the wiring checklist: what it is about, for whom, its numbers, and who says so.
import { SAFETY } from '../handbook/safety.ts'
import type { Dimension } from '../quantity.ts'

/** In the order of the work: connect, protect, before a hand goes in, moving parts, use. */
export const GROUPS = ['connect', 'protect', 'touch', 'moving', 'use'] as const
export type Group = (typeof GROUPS)[number]

export type StatementName =
  | 'electrician'
  | 'earth'
  | 'earthOpen'
  | 'notIsolated'
  | 'noEarthedMeter'
  | 'residual'
  | 'insulation'
  | 'wireSize'
  | 'rotation'
  | 'ac'
  | 'fuse'
  | 'batteryFuse'
  | 'release'
  | 'cutoffInCoil'
  | 'cutoffInMotorLead'
  | 'cutoffLoose'
  | 'enableAlone'
  | 'contacts'
  | 'outlet'
  | 'discharge'
  | 'dischargeUnknown'
  | 'pins'
  | 'unplug'
  | 'charger'
  | 'guards'
  | 'thread'
  | 'reverse'
  | 'knob'
  | 'overspeed'
  | 'bridge'
  | 'flywheel'
  | 'wheelMark'
  | 'eyes'
  | 'chips'
  | 'sparks'
  | 'frame'
  | 'noLifting'

/** A number of a statement, SI or °C. */
export interface Fact {
  readonly value: number
  readonly dimension: Dimension
}

export interface Statement {
  readonly name: StatementName
  readonly group: Group
  /** The standard, with its clause, or "common practice, no source". "from memory": nobody here had the page. */
  readonly source: string
  readonly facts: Readonly<Record<string, Fact>>
  /** What this job has wrong as it stands: told first. */
  readonly wrong: boolean
}

export const PRACTICE = SAFETY.practice
