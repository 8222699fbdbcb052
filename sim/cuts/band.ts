// An answer from a rough load: a band of values turned into a row, or the number given in its place.
import type { Band } from '../handbook/roughLoads.ts'
import { given, type Row } from './answer.ts'

export interface Load extends Row {
  /** In the unit of the band. */
  readonly value: number
}

/** The band’s middle and its two ends as shares of it; or the number given (in the band’s unit). */
export function loadOf(band: Band, own: number | undefined, words: string): Load {
  if (own !== undefined) return { ...given(words), value: own }
  const { label, low, value, high, source, standing } = band
  return { value, row: label, source, standing, low: low / value, high: high / value }
}
