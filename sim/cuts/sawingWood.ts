// Sawing wood, band or circular: energy of the kerf turned to dust.
import * as v from 'valibot'
import { choiceOr, quantity, quantityOr } from '../field.ts'
import { WOOD } from '../handbook/roughLoads.ts'
import { answered, type CutKind, length, power, speed, sum, type Worked } from './answer.ts'
import { loadOf } from './band.ts'
import { optionsOf } from './options.ts'
import { atSpeed, speedFields } from './spindle.ts'

const fields = v.object({
  wood: choiceOr('softwood', { label: 'Wood', options: optionsOf(WOOD) }),
  energy: v.optional(
    quantity({
      label: 'Energy for each cm³ of kerf',
      dimension: 'energy',
      low: '1 J',
      high: '1 kJ',
      help: 'Instead of the wood’s row.',
    }),
  ),
  kerf: quantityOr('1.5 mm', {
    label: 'Width of the kerf',
    dimension: 'length',
    low: '0.3 mm',
    high: '10 mm',
  }),
  height: quantity({ label: 'Height of the wood', dimension: 'length', low: '1 mm', high: '1 m' }),
  feed: quantity({ label: 'Feed', dimension: 'speed', low: '0.0001 m/s', high: '2 m/s' }),
  diameter: quantity({
    label: 'Diameter of the blade or band wheel',
    dimension: 'length',
    low: '20 mm',
    high: '2 m',
  }),
  ...speedFields,
})

function work(values: v.InferOutput<typeof fields>): Worked {
  const { wood, energy, kerf, height, feed, diameter } = values
  return atSpeed(values, diameter, (spindle) => {
    const own = energy === undefined ? undefined : energy * 1e6
    const { value, ...row } = loadOf(WOOD[wood], own, 'Energy of the kerf, as given')
    const needed = value * kerf * height * feed
    return answered(
      needed / spindle,
      spindle,
      row,
      sum`A kerf of ${length(kerf)} through ${length(height)} at ${speed(feed)} takes ${power(needed)}.`,
      null,
      // The wood is fed as fast.
      'power',
    )
  })
}

export const sawingWood: CutKind = { label: 'Sawing wood', fields, work }
