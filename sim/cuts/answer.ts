// What a cut comes to: torque, power and speed at the spindle, the row used, and the sum in words and quantities.
import type { GenericSchema } from 'valibot'
import type { Sourced } from '../handbook/source.ts'
import type { Problem } from '../problem.ts'
import type { Dimension } from '../quantity.ts'

/** A quantity in a sentence, SI: written in the reader’s units only when it is said. */
export interface Amount {
  readonly value: number
  readonly dimension: Dimension
}

/** A sentence in pieces. */
export type Sum = readonly (string | Amount)[]

/** How the torque goes on when the spindle turns at another speed: it stays; its power stays; it grows as speed squared. */
export type Law = 'torque' | 'power' | 'fan'

export interface CutAnswer {
  /** At the spindle, N·m. */
  readonly torque: number
  /** At the spindle, W. */
  readonly power: number
  /** Of the spindle, rad/s. */
  readonly speed: number
  readonly law: Law
  /** The torque lies between these 8 times in 10, N·m; both are the torque where it was given. */
  readonly low: number
  readonly high: number
  /** The handbook row used. */
  readonly row: string
  readonly source: string
  /** How well the row is known; 'given': the number came with the question. */
  readonly standing: Sourced['standing'] | 'given'
  /** One sentence of the sum. */
  readonly how: Sum
  /** What must be known before using it; null: nothing. */
  readonly caution: string | null
}

/** A cut worked out; or refused, with what it would ask all the same where that is known. */
export type Worked =
  | { readonly ok: true; readonly answer: CutAnswer }
  | { readonly ok: false; readonly problems: readonly Problem[]; readonly asked: CutAnswer | null }

/** A kind of cut: its inputs, and the sum over them once they are read. */
export interface CutKind {
  readonly label: string
  readonly fields: GenericSchema
  /** Takes what `fields` gives. Its own type is kept in its file: `never` lets all of them into one table. */
  readonly work: (values: never) => Worked
}

/** The row, and how far the truth may lie from it, as shares of the torque. */
export interface Row extends Pick<CutAnswer, 'row' | 'source' | 'standing'> {
  readonly low: number
  readonly high: number
}

/** A number that came with the question. */
export const given = (row: string): Row => ({ row, source: 'given', standing: 'given', low: 1, high: 1 })

/** An answer from torque (N·m) and spindle speed (rad/s). */
export const answered = (
  torque: number,
  speed: number,
  row: Row,
  how: Sum,
  caution: string | null = null,
  law: Law = 'torque',
): Worked => ({
  ok: true,
  answer: {
    torque,
    power: torque * speed,
    speed,
    law,
    low: torque * row.low,
    high: torque * row.high,
    row: row.row,
    source: row.source,
    standing: row.standing,
    how,
    caution,
  },
})

/** A refusal at an input. */
export const refused = (
  path: string,
  wrong: string,
  wouldDo: string,
  asked: CutAnswer | null = null,
): Worked => ({
  ok: false,
  problems: [{ path, wrong, wouldDo }],
  asked,
})

/** Writes a sum: quantities in place, words between. */
export const sum = (words: TemplateStringsArray, ...amounts: readonly Amount[]): Sum =>
  words.flatMap((word, n) => (n < amounts.length ? [word, amounts[n]] : [word]))

const amount =
  (dimension: Dimension) =>
  (value: number): Amount => ({ value, dimension })

export const force = amount('force')
export const length = amount('length')
export const power = amount('power')
export const speed = amount('speed')
export const tableFeed = amount('feed')
export const torque = amount('torque')
export const energy = amount('energy')
export const mass = amount('mass')
export const time = amount('time')
export const turning = amount('angular speed')
