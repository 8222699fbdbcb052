// Sawing metal on a band saw: energy of the kerf, in the thin chips a saw tooth takes.
import * as v from 'valibot'
import { quantity, quantityOr } from '../field.ts'
import { answered, type CutKind, length, power, sum, time, type Worked } from './answer.ts'
import { metalEnergy, metalFields } from './metal.ts'
import { atSpeed, speedFields, surfaceSpeed } from './spindle.ts'

const fields = v.object({
  ...metalFields,
  kerf: quantityOr('0.9 mm', {
    label: 'Width of the kerf',
    dimension: 'length',
    low: '0.3 mm',
    high: '5 mm',
  }),
  pitch: quantityOr('2.5 mm', {
    label: 'From tooth to tooth',
    dimension: 'length',
    low: '0.5 mm',
    high: '30 mm',
  }),
  width: quantity({
    label: 'Width of the bar along the blade',
    dimension: 'length',
    low: '1 mm',
    high: '500 mm',
  }),
  height: quantity({ label: 'Height sawn through', dimension: 'length', low: '1 mm', high: '500 mm' }),
  lasts: quantity({ label: 'Time to saw through', dimension: 'time', low: '5 s', high: '4 h' }),
  diameter: quantity({ label: 'Diameter of the band wheel', dimension: 'length', low: '50 mm', high: '1 m' }),
  ...speedFields,
})

function work(values: v.InferOutput<typeof fields>): Worked {
  const { kerf, pitch, width, height, lasts, diameter } = values
  return atSpeed(values, diameter, (spindle) => {
    const chip = ((height / lasts) * pitch) / surfaceSpeed(spindle, diameter)
    const { energy, ...row } = metalEnergy(values, chip)
    const needed = (energy * kerf * width * height) / lasts
    return answered(
      needed / spindle,
      spindle,
      row,
      sum`A kerf of ${length(kerf)} through ${length(width)} by ${length(height)} in ${time(lasts)} takes ${power(needed)}.`,
    )
  })
}

export const sawingMetal: CutKind = { label: 'Sawing metal, band saw', fields, work }
