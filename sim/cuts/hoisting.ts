// Hoisting: weight times the drum’s radius, upwards only, with something else that holds the load.
import * as v from 'valibot'
import { choiceOr, quantity } from '../field.ts'
import {
  answered,
  type CutKind,
  force,
  length,
  refused,
  type Row,
  speed,
  sum,
  type Worked,
} from './answer.ts'
import { FALL, NEEDS_BRAKE } from './overhauling.ts'
import { atSpeed, speedFields, surfaceSpeed } from './spindle.ts'

const fields = v.object({
  lifts: choiceOr('goods', { label: 'What hangs on it', options: { goods: 'Goods', people: 'People' } }),
  way: choiceOr('up', { label: 'Way', options: { up: 'Up', down: 'Down' } }),
  holds: choiceOr('nothing', {
    label: 'What holds the load when the drive lets go',
    options: { nothing: 'Nothing', brake: 'A brake or gear that holds by itself' },
  }),
  mass: quantity({ label: 'Mass', dimension: 'mass', low: '0.1 kg', high: '5000 kg' }),
  diameter: quantity({ label: 'Diameter of the drum', dimension: 'length', low: '10 mm', high: '2 m' }),
  ...speedFields,
})

const LIFT: Row = {
  row: 'Mass × 9.80665 m/s² (32.174 ft/s²) × half the drum’s diameter; up to a quarter more for rope and bearings',
  source: 'standard fall, exact; rope and bearings: common practice, no source',
  standing: 'practice',
  low: 1,
  high: 1.25,
}

function work(values: v.InferOutput<typeof fields>): Worked {
  const { lifts, way, holds, mass, diameter } = values
  if (lifts === 'people')
    return refused(
      'lifts',
      'This is no drive for lifting people.',
      'Lifts for people are built and inspected as such.',
    )
  return atSpeed(values, diameter, (spindle) => {
    const weight = mass * FALL
    const up = answered(
      (weight * diameter) / 2,
      spindle,
      LIFT,
      sum`A weight of ${force(weight)} on a drum of ${length(diameter)}, at ${speed(surfaceSpeed(spindle, diameter))}.`,
      'Up only, and never people: a brake or a gear that holds by itself must take the load when the drive lets go.',
    )
    if (!up.ok || (way === 'up' && holds === 'brake')) return up
    return way === 'down'
      ? refused('way', NEEDS_BRAKE, 'Lower it by the brake, with the motor off.', up.answer)
      : refused('holds', NEEDS_BRAKE, 'Give a brake or a gear that holds by itself: "brake".', up.answer)
  })
}

export const hoisting: CutKind = { label: 'Hoisting', fields, work }
