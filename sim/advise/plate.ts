// Findings about the plate: where it disagrees with itself or with the bench, in the words of that check.
import { complaints } from '../identify/complaints.ts'
import { allGiven } from '../fill.ts'
import { USUAL } from '../identify/assume.ts'
import { pointOf } from '../identify/point.ts'
import type { Case } from './case.ts'
import { type Draft, draft } from './finding.ts'

/** Every complaint about plate and bench is a thing to look at. */
export function plateFindings({ motor }: Case): Draft[] {
  // A plate that says nothing is no complaint where every number is given.
  if (allGiven(motor) && !pointOf(motor.plate, USUAL)) return []
  const told = complaints(motor)
  if (told.length === 0) return []
  return told.map(({ path, wrong, wouldDo }) =>
    draft('plate', 'Measure', 'note', {}, [], { quotes: [path, wrong, wouldDo] }),
  )
}
