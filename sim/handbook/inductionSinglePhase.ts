// Single-phase induction motors with a start winding: least breakdown and locked-rotor torques, and service factors.
import { fromUnit, toUnit } from '../quantity.ts'
import { along, type MainsHertz, type Poles, type Rows } from './induction.ts'
import type { Sourced } from './source.ts'

/** The tables print torques: small motors in ounce-feet, larger ones in pound-feet. N·m */
const oz = (printed: number): number => fromUnit(printed / 16, 'lbf·ft')
const lb = (printed: number): number => fromUnit(printed, 'lbf·ft')

type Table = Sourced & { readonly rows: Readonly<Record<2 | 4 | 6, Rows>> }

/** Breakdown torque, N·m, 60 Hz: the low end of the range that makes a motor one of its horsepower. */
export const SINGLE_PHASE_BREAKDOWN: Table = {
  source: 'NEMA MG 1, 12.32 and Table 10-5, from memory',
  standing: 'memory',
  rows: {
    2: [
      [1 / 8, oz(6)],
      [1 / 6, oz(8.7)],
      [1 / 4, oz(11.5)],
      [1 / 3, oz(16.5)],
      [1 / 2, oz(21.5)],
      [3 / 4, oz(31.5)],
      [1, oz(44)],
      [1.5, lb(3.6)],
      [2, lb(4.6)],
      [3, lb(6)],
      [5, lb(8.6)],
    ],
    4: [
      [1 / 8, oz(11.5)],
      [1 / 6, oz(16.5)],
      [1 / 4, oz(21.5)],
      [1 / 3, oz(31.5)],
      [1 / 2, oz(40.5)],
      [3 / 4, oz(58)],
      [1, lb(5.16)],
      [1.5, lb(6.8)],
      [2, lb(10.1)],
      [3, lb(13)],
      [5, lb(19)],
    ],
    6: [
      [1 / 8, oz(16.5)],
      [1 / 6, oz(24.1)],
      [1 / 4, oz(31.5)],
      [1 / 3, oz(44)],
      [1 / 2, oz(58)],
      [3 / 4, lb(5.16)],
      [1, lb(6.9)],
    ],
  },
}

/** Locked-rotor torque of general-purpose motors, N·m, 60 Hz, at least. One with a capacitor meets it; a bare split-phase one may not. */
export const SINGLE_PHASE_LOCKED: Table = {
  source: 'NEMA MG 1, 12.32.2, from memory',
  standing: 'memory',
  rows: {
    2: [
      [1 / 6, oz(15)],
      [1 / 4, oz(21)],
      [1 / 3, oz(26)],
      [1 / 2, oz(37)],
      [3 / 4, oz(50)],
      [1, oz(61)],
      [1.5, lb(4.5)],
      [2, lb(5.5)],
      [3, lb(7.5)],
      [5, lb(11)],
    ],
    4: [
      [1 / 8, oz(24)],
      [1 / 6, oz(33)],
      [1 / 4, oz(46)],
      [1 / 3, oz(57)],
      [1 / 2, oz(85)],
      [3 / 4, oz(119)],
      [1, lb(9)],
      [1.5, lb(12.5)],
      [2, lb(16)],
      [3, lb(22)],
      [5, lb(33)],
    ],
    6: [
      [1 / 8, oz(32)],
      [1 / 6, oz(43)],
      [1 / 4, oz(59)],
      [1 / 3, oz(73)],
      [1 / 2, oz(100)],
      [3 / 4, lb(8)],
      [1, lb(9.5)],
    ],
  },
}

/**
 * A torque of the tables for any power (W), N·m: as torque per horsepower straight between rows. Eight poles, which have
 * no rows here, as six at three quarters of the speed; other mains as 60 Hz at that speed.
 */
export function fromTable(table: Table, power: number, poles: Poles, hertz: MainsHertz): number {
  const hp = toUnit(power, 'hp')
  const per = table.rows[poles === 8 ? 6 : poles].map(([row, torque]) => [row, torque / row] as const)
  return along(per, hp) * hp * (poles === 8 ? 8 / 6 : 1) * (60 / hertz)
}

/** Service factor of open general-purpose motors: load that may be carried for long, at the price of life. */
export const SERVICE_FACTOR: Sourced & { readonly rows: Readonly<Record<Poles, Rows>> } = {
  source: 'NEMA MG 1, 12.51, as quoted on a public reference page (source incomplete)',
  standing: 'read',
  rows: {
    2: [
      [1 / 3, 1.35],
      [1 / 2, 1.25],
      [1, 1.25],
      [1.5, 1.15],
    ],
    4: [
      [1 / 3, 1.35],
      [1 / 2, 1.25],
      [3 / 4, 1.25],
      [1, 1.15],
    ],
    6: [
      [1 / 3, 1.35],
      [1 / 2, 1.25],
      [3 / 4, 1.15],
    ],
    8: [
      [1 / 3, 1.35],
      [1 / 2, 1.25],
      [3 / 4, 1.15],
    ],
  },
}
