// Full-load amperes of direct-current motors, NEC Table 430.247: a plausible amperage for a plate's horsepower.

/** Horsepower → amperes, by armature volts. Values read in a public source file that encodes the table. */
export const NEC_430_247: Readonly<Record<90 | 120 | 180, readonly (readonly [hp: number, amps: number])[]>> =
  {
    90: [
      [0.25, 4],
      [1 / 3, 5.2],
      [0.5, 6.8],
      [0.75, 9.6],
      [1, 12.2],
    ],
    120: [
      [0.25, 3.1],
      [1 / 3, 4.1],
      [0.5, 5.4],
      [0.75, 7.6],
      [1, 9.5],
      [1.5, 13.2],
      [2, 17],
      [3, 25],
    ],
    180: [
      [0.25, 2],
      [1 / 3, 2.6],
      [0.5, 3.4],
      [0.75, 4.8],
      [1, 6.1],
      [1.5, 8.3],
      [2, 10.8],
      [3, 16],
    ],
  }

/** Within this share of a table's volts its amperes are scaled by volts; further off there is no row. */
const NEAR = 0.25

/**
 * Table amperes for a power (hp) at a voltage, scaled from the nearest column by volts and drawn straight between
 * rows; null where the table has nothing near.
 */
export function necAmperes(hp: number, volts: number): number | null {
  const columns = ([90, 120, 180] as const).toSorted(
    (a, b) => Math.abs(Math.log(a / volts)) - Math.abs(Math.log(b / volts)),
  )
  const column = columns[0]
  if (Math.abs(column / volts - 1) > NEAR) return null
  const rows = NEC_430_247[column]
  for (let n = 1; n < rows.length; n++) {
    const [p0, a0] = rows[n - 1]
    const [p1, a1] = rows[n]
    if (hp >= p0 && hp <= p1) return ((a0 + ((a1 - a0) * (hp - p0)) / (p1 - p0)) * column) / volts
  }
  return null
}
