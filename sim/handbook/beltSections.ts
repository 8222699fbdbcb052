// Belt sections: groove, mass, smallest pulley, usual friction; and the sizes that are sold.
import type { Sourced } from './source.ts'

export interface BeltSection extends Sourced {
  readonly label: string
  /** Included angle of the groove, rad; π: a flat rim. */
  readonly groove: number
  /** kg/m of one belt, or of one rib. */
  readonly mass: number
  /** Smallest pulley it bends round without early cracking, m. */
  readonly smallest: number
  /** Ribs that one belt usually has; 1 for plain belts. */
  readonly ribs: number
  /** Greatest pull that a strand of one belt, or one rib, stands for long, N: from usual power ratings, from memory. */
  readonly stands: number
  /** Friction of rubber on the pulley. */
  readonly friction: number
  /** True where teeth carry the load: it jumps rather than slips. */
  readonly toothed: boolean
}

const degrees = (angle: number): number => (angle * Math.PI) / 180
const inch = 0.0254

const vee = (label: string, mass: number, smallest: number, stands: number, row: Sourced): BeltSection => ({
  label,
  groove: degrees(38),
  mass,
  smallest,
  stands,
  ribs: 1,
  friction: 0.3,
  toothed: false,
  ...row,
})
const ribbed = (
  label: string,
  ribs: number,
  mass: number,
  smallest: number,
  stands: number,
  row: Sourced,
): BeltSection => ({
  ...vee(label, mass, smallest, stands, row),
  groove: degrees(40),
  ribs,
})

const READ = 'smallest pulley: makers’ tables; mass, friction and what it stands from memory'
const MEMORY: Sourced = { source: 'from memory', standing: 'memory' }
const read: Sourced = { source: READ, standing: 'read' }

export const BELT_SECTIONS = {
  '3L': vee('Light-duty V, 3L (3/8 in)', 0.06, 0.038, 110, MEMORY),
  '4L': vee('Light-duty V, 4L (1/2 in)', 0.1, 0.063, 190, MEMORY),
  '5L': vee('Light-duty V, 5L (21/32 in)', 0.17, 0.09, 300, MEMORY),
  Z: vee('Classical V, Z (10 mm)', 0.06, 0.05, 150, read),
  A: vee('Classical V, A (13 mm)', 0.105, 0.071, 300, read),
  B: vee('Classical V, B (17 mm)', 0.17, 0.112, 500, read),
  PH: ribbed('Ribbed, PH (1.60 mm ribs)', 6, 0.005, 0.013, 30, MEMORY),
  PJ: ribbed('Ribbed, PJ (2.34 mm ribs)', 6, 0.009, 0.02, 45, read),
  PK: ribbed('Ribbed, PK (3.56 mm ribs)', 6, 0.02, 0.045, 90, read),
  PL: ribbed('Ribbed, PL (4.70 mm ribs)', 6, 0.036, 0.075, 130, MEMORY),
  PM: ribbed('Ribbed, PM (9.40 mm ribs)', 6, 0.12, 0.18, 380, MEMORY),
  round: { ...vee('Round cord, 6 mm', 0.035, 0.04, 60, MEMORY), groove: degrees(60) },
  timing: { ...vee('Timing belt', 0.08, 0.03, 300, MEMORY), groove: Math.PI, toothed: true },
} as const satisfies Readonly<Record<string, BeltSection>>

export type BeltSectionName = keyof typeof BELT_SECTIONS

/** Pulley diameters that are sold for light V-belts, m (common practice, no source). */
export const STOCK_PULLEYS: readonly number[] = [
  1.5, 1.75, 2, 2.25, 2.5, 2.75, 3, 3.5, 4, 4.5, 5, 6, 7, 8, 9, 10, 12, 14, 15, 16, 18,
].map((size) => size * inch)

const everyInch = (from: number, to: number, by = 1): readonly number[] =>
  Array.from({ length: Math.floor((to - from) / by) + 1 }, (_, n) => (from + n * by) * inch)

/** Belt lengths that are sold, m: every inch to 80 in, and on to 180 in by fives (common practice, no source). */
export const STOCK_LENGTHS: readonly number[] = [...everyInch(15, 80), ...everyInch(85, 180, 5)]

/** Over this belts and pulleys need balancing, m/s (maker’s manual); a cast rim's limit, m/s (from memory). */
export const BALANCED_SPEED = 30
export const CAST_RIM_SPEED = 33
/** Under this wrap a V-belt loses its grip, rad (common practice). */
export const LEAST_WRAP = degrees(120)
