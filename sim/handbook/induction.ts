// Three-phase induction motors: least starting, pull-up and breakdown torques by horsepower and poles; usual speeds.
import type { Sourced } from './source.ts'

export type Poles = 2 | 4 | 6 | 8

/** Rows of horsepower and a value, in the order of horsepower. */
export type Rows = readonly (readonly [hp: number, value: number])[]

/** A column for each number of poles. */
export interface ByPoles extends Sourced {
  readonly rows: Readonly<Record<Poles, Rows>>
}

const HP = [0.5, 0.75, 1, 1.5, 2, 3, 5, 7.5, 10, 15, 20]

/** A column of per cents whose first row is at `from` hp. */
const column = (from: number, ...percents: number[]): Rows => {
  const first = HP.indexOf(from)
  return percents.map((percent, n) => [HP[first + n], percent / 100])
}

/** Locked-rotor torque over full-load torque, at least: design A and B, 60 Hz. */
export const LOCKED_ROTOR: ByPoles = {
  source: 'NEMA MG 1, 12.38, from memory',
  standing: 'memory',
  rows: {
    2: column(1.5, 175, 170, 160, 150, 140, 135, 130, 130),
    4: column(1, 275, 250, 235, 215, 185, 175, 165, 160, 150),
    6: column(0.75, 175, 170, 165, 160, 155, 150, 150, 150, 140, 135),
    8: column(0.5, 140, 135, 135, 130, 130, 130, 130, 125, 125, 125, 125),
  },
}

/** Breakdown torque over full-load torque, at least: design A and B, 60 Hz. */
export const BREAKDOWN: ByPoles = {
  source: 'NEMA MG 1, 12.39, from memory',
  standing: 'memory',
  rows: {
    2: column(1.5, 250, 240, 230, 215, 200, 200, 200, 200),
    4: column(1, 300, 280, 270, 250, 225, 215, 200, 200, 200),
    6: column(0.75, 275, 265, 250, 240, 230, 215, 205, 200, 200, 200),
    8: column(0.5, 225, 220, 215, 210, 210, 205, 205, 200, 200, 200, 200),
  },
}

/** Pull-up torque over full-load torque, at least: design A and B, 60 Hz. */
export const PULL_UP: ByPoles = {
  source: 'NEMA MG 1, 12.40, from memory',
  standing: 'memory',
  rows: {
    2: column(1.5, 120, 120, 110, 105, 100, 100, 100, 100),
    4: column(1, 190, 175, 165, 150, 130, 120, 115, 110, 105),
    6: column(0.75, 120, 120, 115, 110, 110, 105, 105, 105, 100, 100),
    8: column(0.5, 100, 100, 100, 90, 90, 90, 90, 90, 90, 90, 90),
  },
}

/**
 * Small three-phase motors that have no row: breakdown at least this many times that of the single-phase motor of the
 * same horsepower and speed.
 */
export const SMALL_THREE_PHASE: Sourced & { readonly overSinglePhase: number } = {
  overSinglePhase: 1.4,
  source: 'NEMA MG 1, 12.37, from memory',
  standing: 'memory',
}

/** What design B motors of all sizes come to, over full-load torque; the high ends belong to the small ones. */
export const DESIGN_B: Sourced & {
  readonly locked: readonly [low: number, high: number]
  readonly breakdown: readonly [low: number, high: number]
  /** Slip at full load, at most. */
  readonly slip: number
} = {
  locked: [0.7, 2.75],
  breakdown: [1.75, 3],
  slip: 0.05,
  source: 'EASA electrical engineering handbook, speed–torque characteristics (NEMA MG 10, Table 2-1)',
  standing: 'read',
}

export type MainsHertz = 50 | 60

/** Usual full-load speeds on plates, rpm. */
export const FULL_LOAD_RPM: Sourced & {
  readonly rows: Readonly<Record<MainsHertz, Readonly<Record<Poles, number>>>>
} = {
  rows: { 60: { 2: 3450, 4: 1725, 6: 1140, 8: 850 }, 50: { 2: 2850, 4: 1425, 6: 940, 8: 700 } },
  source: 'common practice, no source',
  standing: 'practice',
}

/** The value at `hp`, straight between rows; beyond an end, the end's. */
export function along(rows: Rows, hp: number): number {
  const above = rows.findIndex(([row]) => row >= hp)
  if (above === 0) return rows[0][1]
  if (above < 0) return rows[rows.length - 1][1]
  const [[h0, v0], [h1, v1]] = [rows[above - 1], rows[above]]
  return v0 + ((v1 - v0) * (hp - h0)) / (h1 - h0)
}
