// Insulation classes: hot spot, rise by resistance, and where damage is likely.
import type { Sourced } from './source.ts'

export type InsulationClass = 'A' | 'E' | 'B' | 'F' | 'H'

export interface ClassRow extends Sourced {
  /** Hottest spot the class allows, °C. */
  readonly hotSpotC: number
  /** Rise of the average winding by resistance over 40 °C air, K. */
  readonly rise: number
}

const HOT_SPOT = 'hot spot: EASA handbook; rise: maker’s manual quoting IEC 60034-1'

export const INSULATION: Readonly<Record<InsulationClass, ClassRow>> = {
  A: { hotSpotC: 105, rise: 60, source: 'hot spot: EASA handbook; rise: from memory', standing: 'memory' },
  E: { hotSpotC: 120, rise: 75, source: 'hot spot: EASA handbook; rise: from memory', standing: 'memory' },
  B: { hotSpotC: 130, rise: 80, source: HOT_SPOT, standing: 'read' },
  F: { hotSpotC: 155, rise: 105, source: HOT_SPOT, standing: 'read' },
  H: { hotSpotC: 180, rise: 125, source: HOT_SPOT, standing: 'read' },
}

/** Air that ratings are made for, °C (IEC 60034-1). */
export const RATED_AIR_C = 40

/** Over its hot-spot limit by this much, solder and slot insulation go, K (common practice, no source). */
const DAMAGE_OVER = 50

/** Limit of the average winding temperature, °C. The hot spot lies 10 to 15 K above it. */
export const classLimitC = (insulation: InsulationClass): number => RATED_AIR_C + INSULATION[insulation].rise

/** Where the winding is damaged whatever the hours, °C. */
export const damageC = (insulation: InsulationClass): number => INSULATION[insulation].hotSpotC + DAMAGE_OVER
