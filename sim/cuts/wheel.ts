// A wheel on a slope: weight times slope and rolling drag, on level ground and uphill.
import * as v from 'valibot'
import { choiceOr, quantity, quantityOr } from '../field.ts'
import { GROUND } from '../handbook/roughLoads.ts'
import { answered, type CutKind, force, refused, speed, sum, type Worked } from './answer.ts'
import { loadOf } from './band.ts'
import { optionsOf } from './options.ts'
import { FALL, NEEDS_BRAKE } from './overhauling.ts'
import { atSpeed, speedFields, surfaceSpeed } from './spindle.ts'

const fields = v.object({
  mass: quantity({ label: 'Mass, all told', dimension: 'mass', low: '1 kg', high: '5000 kg' }),
  ground: choiceOr('road', { label: 'Ground', options: optionsOf(GROUND) }),
  rolling: v.optional(
    quantity({
      label: 'Rolling drag, of the weight',
      dimension: 'share',
      low: '0.1 %',
      high: '50 %',
      help: 'Instead of the ground’s row.',
    }),
  ),
  slope: quantityOr('0 %', {
    label: 'Slope',
    dimension: 'share',
    low: '-70 %',
    high: '70 %',
    help: 'Rise for each length of road, below 0 downhill; 15° is 25.9 %.',
  }),
  diameter: quantity({ label: 'Diameter of the wheel', dimension: 'length', low: '20 mm', high: '2 m' }),
  ...speedFields,
})

/** Rolling drag is taken of the whole weight, as on the level: up to 4 % too much of it at 15°. */
function work(values: v.InferOutput<typeof fields>): Worked {
  const { mass, ground, rolling, slope, diameter } = values
  return atSpeed(values, diameter, (spindle) => {
    const { value, low, high, ...known } = loadOf(GROUND[ground], rolling, 'Rolling drag, as given')
    // The load could drive the motor as soon as the ground rolls as well as it may.
    if (value * low + slope <= 0)
      return refused('slope', NEEDS_BRAKE, 'Level ground and uphill can be worked out.')
    const weight = mass * FALL
    const push = weight * (value + slope)
    const row = {
      ...known,
      low: (value * low + slope) / (value + slope),
      high: (value * high + slope) / (value + slope),
    }
    return answered(
      (push * diameter) / 2,
      spindle,
      row,
      sum`A weight of ${force(weight)} takes a push of ${force(push)} at ${speed(surfaceSpeed(spindle, diameter))}.`,
      slope > 0
        ? 'Uphill it rolls back when the drive lets go: it needs a brake that holds by itself.'
        : null,
    )
  })
}

export const wheel: CutKind = { label: 'A wheel on a slope', fields, work }
