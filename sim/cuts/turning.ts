// Turning: force on the chip times its distance from the axis.
import * as v from 'valibot'
import { quantity } from '../field.ts'
import { answered, type CutKind, force, length, refused, sum, type Worked } from './answer.ts'
import { metalEnergy, metalFields } from './metal.ts'
import { atSpeed, speedFields } from './spindle.ts'

const fields = v.object({
  ...metalFields,
  depth: quantity({
    label: 'Depth of cut',
    dimension: 'length',
    low: '0.01 mm',
    high: '50 mm',
    help: 'On the radius: the diameter shrinks by twice as much.',
  }),
  feed: quantity({ label: 'Feed for each turn', dimension: 'length', low: '0.005 mm', high: '5 mm' }),
  diameter: quantity({ label: 'Diameter before the cut', dimension: 'length', low: '1 mm', high: '3 m' }),
  ...speedFields,
})

/** The chip’s section times its specific force acts at its middle. */
function work(values: v.InferOutput<typeof fields>): Worked {
  const { depth, feed, diameter } = values
  if (depth > diameter / 2)
    return refused('depth', 'The cut is deeper than half the diameter.', 'Give the depth on the radius.')
  return atSpeed(values, diameter, (spindle) => {
    const { energy, ...row } = metalEnergy(values, feed)
    const along = energy * depth * feed
    const arm = (diameter - depth) / 2
    return answered(
      along * arm,
      spindle,
      row,
      sum`A chip of ${length(depth)} by ${length(feed)} takes ${force(along)}, acting ${length(arm)} from the axis.`,
    )
  })
}

export const turning: CutKind = { label: 'Turning metal', fields, work }
