// A torque that is known.
import * as v from 'valibot'
import { quantity } from '../field.ts'
import { answered, type CutKind, given, sum, torque as asTorque, turning, type Worked } from './answer.ts'
import { spindleField } from './spindle.ts'

const fields = v.object({
  torque: quantity({
    label: 'Torque at the spindle',
    dimension: 'torque',
    low: '0 N·m',
    high: '10000 N·m',
    below: 'less than nothing: a load that drives the motor needs a brake',
  }),
  spindle: spindleField,
})

const work = ({ torque, spindle }: v.InferOutput<typeof fields>): Worked =>
  answered(torque, spindle, given('Torque, as given'), sum`${asTorque(torque)} at ${turning(spindle)}.`)

export const torque: CutKind = { label: 'A torque', fields, work }
