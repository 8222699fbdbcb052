// So much material in so much time, at an energy for each kilogram: mills and kneaders alike.
import * as v from 'valibot'
import { choiceOr, quantity } from '../field.ts'
import type { Band } from '../handbook/roughLoads.ts'
import { answered, type CutKind, energy, mass, sum, time } from './answer.ts'
import { loadOf } from './band.ts'
import { optionsOf } from './options.ts'
import { spindleField } from './spindle.ts'

/** A kind of cut that puts a band of energy (J/kg) into a mass, over a time, at a spindle speed. */
export function batch<K extends string>(
  label: string,
  rows: Readonly<Record<K, Band>>,
  usual: NoInfer<K>,
): CutKind {
  const fields = v.object({
    material: choiceOr<Record<K, string>>(usual, { label: 'Material', options: optionsOf(rows) }),
    energy: v.optional(
      quantity({
        label: 'Energy for each kilogram',
        dimension: 'energy',
        low: '100 J',
        high: '1000 kJ',
        help: 'Instead of the material’s row.',
      }),
    ),
    mass: quantity({ label: 'Goes through', dimension: 'mass', low: '0.01 kg', high: '10000 kg' }),
    lasts: quantity({ label: 'In this time', dimension: 'time', low: '10 s', high: '24 h' }),
    spindle: spindleField,
  })
  type Values = { material: K; energy?: number; mass: number; lasts: number; spindle: number }
  const work = (values: Values) => {
    const { value, ...row } = loadOf(
      rows[values.material],
      values.energy,
      'Energy for each kilogram, as given',
    )
    const whole = value * values.mass
    return answered(
      whole / values.lasts / values.spindle,
      values.spindle,
      row,
      sum`${mass(values.mass)} takes ${energy(whole)}, in ${time(values.lasts)}.`,
    )
  }
  return { label, fields, work }
}
