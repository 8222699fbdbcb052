// A force at a radius.
import * as v from 'valibot'
import { quantity } from '../field.ts'
import { answered, type CutKind, force as asForce, given, length, sum, type Worked } from './answer.ts'
import { spindleField } from './spindle.ts'

const fields = v.object({
  force: quantity({
    label: 'Force',
    dimension: 'force',
    low: '0 N',
    high: '100000 N',
    below: 'less than nothing: a load that drives the motor needs a brake',
  }),
  radius: quantity({ label: 'Distance from the axis', dimension: 'length', low: '1 mm', high: '5 m' }),
  spindle: spindleField,
})

const work = ({ force, radius, spindle }: v.InferOutput<typeof fields>): Worked =>
  answered(
    force * radius,
    spindle,
    given('Force, as given'),
    sum`${asForce(force)} acting ${length(radius)} from the axis.`,
  )

export const force: CutKind = { label: 'A force at a radius', fields, work }
