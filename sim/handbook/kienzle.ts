// Specific cutting force where no unit power was read: Kienzle’s law kc = kc1.1·h^−mc, and one table of cast iron.
import type { Sourced } from './source.ts'

export interface KienzleRow extends Sourced {
  readonly label: string
  /** Force over chip section at a chip of 1 mm by 1 mm, Pa. */
  readonly kc11: number
  readonly mc: number
}

const row = (label: string, printed: number, mc: number): KienzleRow => ({
  label,
  kc11: printed * 1e6,
  mc,
  source: 'Kienzle constants, from memory',
  standing: 'memory',
})

/** By material; the steels are here to be compared with the unit power that was read. */
export const KIENZLE = {
  St37: row('Structural steel St37', 1780, 0.17),
  C45: row('Carbon steel C45', 2220, 0.14),
  '42CrMo4': row('Alloy steel 42CrMo4', 2500, 0.26),
  'GG-25': row('Grey cast iron GG-25', 1160, 0.26),
  aluminium: row('Wrought aluminium (700 to 830)', 765, 0.23),
  brass: row('Brass', 780, 0.18),
} as const satisfies Readonly<Record<string, KienzleRow>>

/** Grey cast iron EN-GJL-250, HB 200–250: feed (m) → force over chip section (Pa), the edge at 45° to the feed. */
export const CAST_IRON: Sourced & {
  readonly label: string
  readonly chipOverFeed: number
  readonly rows: readonly (readonly [feed: number, force: number])[]
} = {
  label: 'Grey cast iron EN-GJL-250, HB 200–250',
  chipOverFeed: Math.SQRT1_2,
  rows: [
    [0.16e-3, 2.05e9],
    [0.25e-3, 1.8e9],
    [0.4e-3, 1.6e9],
    [0.63e-3, 1.45e9],
    [1e-3, 1.3e9],
    [1.6e-3, 1.15e9],
  ],
  source: 'lathe-chuck manual, table of specific cutting force (source incomplete: maker and date not given)',
  standing: 'read',
}

/** Force over chip section (Pa) by Kienzle’s law at a chip thickness (m). */
export const kienzle = ({ kc11, mc }: Pick<KienzleRow, 'kc11' | 'mc'>, chip: number): number =>
  kc11 * (chip / 1e-3) ** -mc

/** Force over chip section (Pa) of the cast iron at a chip thickness (m): straight in logarithms, ends drawn on. */
export function castIron(chip: number): number {
  const { rows, chipOverFeed } = CAST_IRON
  const feed = chip / chipOverFeed
  const last = rows.findIndex(([f], n) => n > 0 && (feed <= f || n === rows.length - 1))
  const [f0, k0] = rows[last - 1]
  const [f1, k1] = rows[last]
  return k0 * (feed / f0) ** (Math.log(k1 / k0) / Math.log(f1 / f0))
}
