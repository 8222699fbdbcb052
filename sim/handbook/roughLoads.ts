// Rough loads of the workshop: a low and a high value, and the middle between them by ratio.
import type { Sourced } from './source.ts'

/** Low and high hold 8 times in 10. */
export interface Band extends Sourced {
  readonly label: string
  readonly low: number
  readonly value: number
  readonly high: number
}

const PRACTICE = 'common practice, no source: order of magnitude only'

const band = (label: string, low: number, high: number, sourced?: Sourced): Band => ({
  label,
  low,
  value: Math.sqrt(low * high),
  high,
  source: PRACTICE,
  standing: 'practice',
  ...sourced,
})

/** Energy of the kerf, J/m³. */
export const WOOD = {
  softwood: band('Softwood, ripping: 10 to 50 J/cm³', 10e6, 50e6),
  hardwood: band('Hardwood, ripping: twice softwood, 20 to 100 J/cm³', 20e6, 100e6),
} as const satisfies Readonly<Record<string, Band>>

/** Power of a working abrasive belt over its width, W/m. */
export const BELT: Band = band(
  'Abrasive belt: 0.75 to 1.5 kW for each 50 mm (2 in) of width',
  750 / 0.05,
  1500 / 0.05,
)

/** Force along an abrasive belt or wheel over the force that presses the work on. */
export const GRIP: Band = band('Abrasive on work: pull 0.3 to 0.8 of the press', 0.3, 0.8)

const GRINDING: Sourced = {
  source: 'Kalpakjian & Schmid, specific energies of surface grinding, from memory',
  standing: 'memory',
}

/** Energy of what a wheel takes off, J/m³. */
export const GROUND_OFF = {
  aluminium: band('Aluminium: 7 to 27 J/mm³', 7e9, 27e9, GRINDING),
  'cast iron': band('Cast iron: 12 to 60 J/mm³', 12e9, 60e9, GRINDING),
  'low-carbon steel': band('Low-carbon steel: 14 to 68 J/mm³', 14e9, 68e9, GRINDING),
  'tool steel': band('Tool steel, hard: 18 to 82 J/mm³', 18e9, 82e9, GRINDING),
} as const satisfies Readonly<Record<string, Band>>

/** Energy of crushing and milling, J/kg. */
export const CRUSHING = {
  apples: band('Apples, crushed: 3 to 10 kJ/kg', 3e3, 10e3),
  malt: band('Malt or grain, cracked between rollers: 5 to 15 kJ/kg', 5e3, 15e3),
  flour: band('Grain to flour between stones or plates: 80 to 250 kJ/kg', 80e3, 250e3),
  'wheat, hammer mill': band('Wheat, hammer mill with a 1 mm screen: 120 to 159 kJ/kg', 120e3, 159e3, {
    source: 'Dziki et al., J. Food Sci. Technol., 2012, nineteen wheats, abstract',
    standing: 'read',
  }),
} as const satisfies Readonly<Record<string, Band>>

const DOUGH: Sourced = {
  source: 'maker of continuous dough mixers, 2025 (source incomplete: maker not named here)',
  standing: 'read',
}

/** Energy of kneading, J/kg. */
export const KNEADING = {
  'bread dough': band('Bread dough: 10 to 12 Wh/kg', 10 * 3600, 12 * 3600, DOUGH),
  'biscuit dough': band('Biscuit dough: 1 to 1.5 Wh/kg', 3600, 1.5 * 3600, DOUGH),
} as const satisfies Readonly<Record<string, Band>>

const STIRRING: Sourced = {
  source: 'power numbers on a public page on mixing (source incomplete: author and date not given)',
  standing: 'read',
}

/** Power number P/(ρ n³ D⁵) in thin liquids, n in turns a second. */
export const PADDLES = {
  propeller: band('Propeller: power number 0.3 to 0.75', 0.3, 0.75, STIRRING),
  'pitched blades': band('Paddle or pitched blades: power number 0.75 to 3', 0.75, 3, STIRRING),
  'flat blades': band('Flat upright blades: power number 3 to 6', 3, 6, STIRRING),
} as const satisfies Readonly<Record<string, Band>>

const ROLLING: Sourced = {
  source:
    'Carvill, Mechanical Engineer’s Data Handbook, as quoted in a public manual; spread: common practice',
  standing: 'read',
}
const ground = (label: string, low: number, value: number, high: number): Band => ({
  label,
  low,
  value,
  high,
  ...ROLLING,
})

/** Rolling drag of air-filled tyres over the weight. */
export const GROUND = {
  road: ground('Worn road: 2 % of the weight', 0.01, 0.02, 0.03),
  gravel: ground('Loose gravel: 4 % of the weight', 0.03, 0.04, 0.06),
  soil: ground('Soft flat ground: 8 % of the weight', 0.05, 0.08, 0.12),
  sand: ground('Sand: 10 to 20 % of the weight', 0.1, 0.15, 0.2),
} as const satisfies Readonly<Record<string, Band>>

/** Torque at a potter’s wheel, N·m. */
export const CLAY: Band = band('Centring clay on a potter’s wheel: 10 to 30 N·m (7 to 22 lbf·ft)', 10, 30)
