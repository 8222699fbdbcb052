// Which trouble a job is in, and how bad that is.
import type { Case } from './case.ts'
import type { Severity } from './finding.ts'
import type { Fault } from './outcome.ts'

/** Faults of heat, and of a drive short of torque. */
export const HEAT: readonly Fault[] = ['destroyed', 'opens', 'hot']
export const TORQUE: readonly Fault[] = ['stalls', 'limited', 'sags']

/** How bad the heat is; null: it is in order. */
export function heatSeverity(one: Case): Severity | null {
  if (one.has('destroyed', 'hot')) return 'damage'
  return one.has('opens') ? 'fails' : null
}

/** How bad it all is; null: it does the job. */
export function severityOf(one: Case): Severity | null {
  const heat = heatSeverity(one)
  if (heat === 'damage' || one.has('stalls')) return 'damage'
  return heat ?? (one.has('slips', 'limited', 'sags', 'reach') ? 'fails' : null)
}
