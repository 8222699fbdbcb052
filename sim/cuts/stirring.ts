// Stirring a thin liquid: power number times density, speed cubed and diameter to the fifth.
import * as v from 'valibot'
import { choiceOr, quantity, quantityOr } from '../field.ts'
import { PADDLES } from '../handbook/roughLoads.ts'
import { answered, type CutKind, length, power, sum, turning, type Worked } from './answer.ts'
import { loadOf } from './band.ts'
import { optionsOf } from './options.ts'
import { spindleField } from './spindle.ts'

const fields = v.object({
  paddle: choiceOr('pitched blades', { label: 'Paddle', options: optionsOf(PADDLES) }),
  diameter: quantity({ label: 'Diameter of the paddle', dimension: 'length', low: '10 mm', high: '2 m' }),
  weight: quantityOr('1', { label: 'Times as heavy as water', dimension: 'number', low: '0.5', high: '4' }),
  spindle: spindleField,
})

/** Density of water, kg/m³. */
const WATER = 1000

function work({ paddle, diameter, weight, spindle }: v.InferOutput<typeof fields>): Worked {
  const { value, ...row } = loadOf(PADDLES[paddle], undefined, '')
  const needed = value * weight * WATER * (spindle / (2 * Math.PI)) ** 3 * diameter ** 5
  return answered(
    needed / spindle,
    spindle,
    row,
    sum`A paddle of ${length(diameter)} at ${turning(spindle)} takes ${power(needed)}.`,
    'Thin liquids only: thick ones take more at low speed. Torque grows as speed squared.',
    'fan',
  )
}

export const stirring: CutKind = { label: 'Stirring a thin liquid', fields, work }
