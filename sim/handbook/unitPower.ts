// Unit power of steels: the energy a sharp tool takes to remove a volume, and what chip and edge do to it.
import type { Sourced } from './source.ts'

export interface UnitPowerRow extends Sourced {
  readonly label: string
  /** At a chip of 0.3 mm, J/m³. One kW·s/cm³, as the table prints it, is 1e9 J/m³. */
  readonly energy: number
}

const TABLE = 'Machinery’s Handbook, 31st ed., Table 1b, p. 1147'

const row = (label: string, printed: number): UnitPowerRow => ({
  label,
  energy: printed * 1e9,
  source: TABLE,
  standing: 'read',
})

/** Rows of the table by steel and Brinell hardness, sharp tools. */
export const UNIT_POWER = {
  'plain carbon HB 80-100': row('Plain carbon steel, HB 80–100', 1.72),
  'plain carbon HB 100-120': row('Plain carbon steel, HB 100–120', 1.8),
  'plain carbon HB 120-140': row('Plain carbon steel, HB 120–140 (mild steel)', 1.88),
  'plain carbon HB 140-160': row('Plain carbon steel, HB 140–160', 2.02),
  'plain carbon HB 160-180': row('Plain carbon steel, HB 160–180', 2.13),
  'plain carbon HB 180-200': row('Plain carbon steel, HB 180–200', 2.24),
  'plain carbon HB 200-220': row('Plain carbon steel, HB 200–220', 2.32),
  'plain carbon HB 260-280': row('Plain carbon steel, HB 260–280', 2.59),
  'plain carbon HB 300-320': row('Plain carbon steel, HB 300–320', 2.81),
  'free machining HB 100-120': row('Free-machining steel, HB 100–120', 1.12),
  'free machining HB 180-200': row('Free-machining steel, HB 180–200 (1.36 to 1.39 by group)', 1.39),
  'free machining HB 240-260': row('Free-machining steel, HB 240–260', 1.69),
  'alloy HB 140-160': row('Alloy steel of the 4140 group, HB 140–160', 1.69),
  'alloy HB 200-220': row('Alloy steel of the 4140 group, HB 200–220', 1.97),
  'alloy HB 300-320': row('Alloy steel of the 4140 group, HB 300–320', 2.48),
  'alloy HB 340-360': row('Alloy steel of the 4140 group, HB 340–360', 2.73),
} as const satisfies Readonly<Record<string, UnitPowerRow>>

/** Thinner chips take more: unit power grows as chip^−0.2 from the table’s 0.3 mm (0.012 in). */
export const CHIP: Sourced & { readonly table: number; readonly exponent: number } = {
  table: 0.3e-3,
  exponent: 0.2,
  source: 'fit to the feed factors of the same chapter, from memory',
  standing: 'memory',
}

/** Thinnest and thickest chip the rows are stretched to, m: outside, the nearer one counts. */
export const CHIPS = { thinnest: 0.02e-3, thickest: 1e-3 } as const

export type Edge = 'sharp' | 'used' | 'dull'

/** How much more an edge takes than a sharp one. */
export const EDGES: Readonly<Record<Edge, Sourced & { readonly label: string; readonly factor: number }>> = {
  sharp: { label: 'Sharp', factor: 1, source: TABLE, standing: 'read' },
  used: {
    label: 'In fair use',
    factor: 1.3,
    source: 'same chapter, normal wear, from memory',
    standing: 'memory',
  },
  dull: { label: 'Dull', factor: 1.8, source: 'same chapter, 1.6 to 2.0, from memory', standing: 'memory' },
}

/**
 * 8 times in 10 the true cutting force lies within these shares of the handbook’s: so do 44 of the 55 values in a tool
 * maker’s table of eleven steels (source incomplete: maker not named here).
 */
export const METAL_SPREAD = { low: 0.75, high: 1.4 } as const
