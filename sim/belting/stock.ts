// The belt that is sold nearest to the centres that are wanted.
import { STOCK_LENGTHS } from '../handbook/beltSections.ts'
import { beltLength, centresFor } from './geometry.ts'

/** A belt that is sold, and the centres it runs at on two pulleys, m. */
export interface StockBelt {
  readonly length: number
  readonly centres: number
}

/** Lengths looked at on the way to the nearest. */
const LOOKS = 3

/** Stock belt whose centres come nearest to the wanted ones, m; null where none of the nearest goes round. */
export function stockBelt(driving: number, driven: number, wanted: number): StockBelt | null {
  const exact = beltLength(driving, driven, Math.max(wanted, (driving + driven) / 2))
  let best: StockBelt | null = null
  for (const length of [...STOCK_LENGTHS]
    .sort((a, b) => Math.abs(a - exact) - Math.abs(b - exact))
    .slice(0, LOOKS)) {
    const centres = centresFor(length, driving, driven)
    if (centres === null) continue
    if (!best || Math.abs(centres - wanted) < Math.abs(best.centres - wanted)) best = { length, centres }
  }
  return best
}
