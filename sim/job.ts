// A job: everything one run needs, in SI; frozen, and safe to send to a worker.
import type { Duty } from './duty.ts'
import type { Plate } from './parts/plate.ts'
import type { Parts } from './plant.ts'

/**
 * 'rough' for hundreds of runs whose inputs are doubtful anyway, 'default' for answers, 'precise' for checks,
 * 'reference' for a second opinion that must not show errors of its own.
 */
export type Accuracy = 'rough' | 'default' | 'precise' | 'reference'

export interface Job {
  readonly parts: Parts
  readonly plate: Partial<Plate>
  readonly duty: Duty
  readonly accuracy: Accuracy
}

/** Text that is equal for equal jobs, or other plain data: keys sorted at every level. */
export function canonical(data: unknown): string {
  return JSON.stringify(data, (_key, value: unknown) =>
    typeof value === 'object' && value !== null && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
      : value,
  )
}

/** Freezes a job all the way down. */
export function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value)
    Object.values(value).forEach(frozen)
  }
  return value
}
