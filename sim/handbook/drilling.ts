// Drilling: torque as d^1.80 f^0.80, from the torque of one drill in each material.
import { fromUnit } from '../quantity.ts'
import type { Sourced } from './source.ts'

/** Torque grows as diameter^1.80 and feed^0.80. */
export const DRILL_LAW: Sourced & { readonly diameter: number; readonly feed: number } = {
  diameter: 1.8,
  feed: 0.8,
  source: 'Machinery’s Handbook, 31st ed., Tables 8 and 9, p. 1153',
  standing: 'read',
}

/** The drill the rows are for: 10 mm, 0.2 mm a turn. */
export const DRILL = { diameter: 10e-3, feed: 0.2e-3 } as const

export interface DrillRow extends Sourced {
  readonly label: string
  /** Torque of that drill, sharp, N·m. */
  readonly torque: number
}

/** Chisel edge factor of a drill of standard design (Machinery’s Handbook, 31st ed., Table 7, p. 1152). */
const CHISEL = 1.085

/** N·m from a work material factor in inch units: lbf·in = K f^0.8 d^1.8 A (same, p. 1152). */
const fromFactor = (factor: number): number =>
  fromUnit(
    factor *
      (DRILL.feed / fromUnit(1, 'in')) ** DRILL_LAW.feed *
      (DRILL.diameter / fromUnit(1, 'in')) ** DRILL_LAW.diameter *
      CHISEL,
    'lbf·in',
  )

/** N·m from a maker’s constant: K d² (0.630 + 16.84 f)/100 with d and f in mm. */
const fromConstant = (constant: number): number =>
  (constant * (DRILL.diameter * 1e3) ** 2 * (0.63 + 16.84 * DRILL.feed * 1e3)) / 100

const factor = (label: string, value: number): DrillRow => ({
  label,
  torque: fromFactor(value),
  source: 'Machinery’s Handbook, Table 6, work material factor, from memory',
  standing: 'memory',
})
const constant = (label: string, value: number): DrillRow => ({
  label,
  torque: fromConstant(value),
  source: 'tool maker’s catalogue 2020–21, twist drill torque (source incomplete: maker not named here)',
  standing: 'read',
})

/** Rows by material. */
export const DRILLING = {
  'low-carbon steel HB 160': constant('Low-carbon steel, HB 160', 2.22),
  'free machining HB 183': constant('Free-machining steel, HB 183', 1.42),
  'alloy HB 200': {
    label: 'Alloy steel, HB 200',
    torque: fromFactor(23300),
    source: 'Fundamentals of Tool Design, 6th ed., p. 83 (Shaw and Oxford, 1957)',
    standing: 'read',
  },
  'alloy HB 269': constant('Chromium-molybdenum steel, HB 269', 2.41),
  'stainless steel': factor('Austenitic stainless steel', 24000),
  'cast iron HB 177': constant('Cast iron, HB 177', 1),
  'cast iron HB 224': constant('Cast iron, HB 224', 1.88),
  aluminium: constant('Aluminium, HB 100', 1.01),
  brass: factor('Brass', 14000),
  'leaded brass': factor('Leaded brass', 7000),
} as const satisfies Readonly<Record<string, DrillRow>>

/** 8 times in 10 within these shares: two sources read differ by a quarter on the same steel. */
export const DRILL_SPREAD = { low: 0.7, high: 1.35 } as const
