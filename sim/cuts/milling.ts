// Milling metal: energy of the volume removed, from width, depth and table feed.
import * as v from 'valibot'
import { quantity, quantityOr } from '../field.ts'
import { answered, type CutKind, length, power, refused, sum, tableFeed, type Worked } from './answer.ts'
import { metalEnergy, metalFields } from './metal.ts'
import { atSpeed, speedFields } from './spindle.ts'

const fields = v.object({
  ...metalFields,
  width: quantity({ label: 'Width of the cut', dimension: 'length', low: '0.1 mm', high: '500 mm' }),
  depth: quantity({ label: 'Depth of the cut', dimension: 'length', low: '0.01 mm', high: '100 mm' }),
  diameter: quantity({ label: 'Diameter of the cutter', dimension: 'length', low: '1 mm', high: '500 mm' }),
  teeth: quantityOr('4', { label: 'Teeth of the cutter', dimension: 'number', low: '1', high: '100' }),
  tooth: v.optional(
    quantity({
      label: 'Feed for each tooth',
      dimension: 'length',
      low: '0.001 mm',
      high: '2 mm',
      help: 'Or give the table feed.',
    }),
  ),
  feed: v.optional(
    quantity({
      label: 'Table feed',
      dimension: 'feed',
      low: '0.6 mm/min',
      high: '60000 mm/min',
      help: 'Or give the feed for each tooth.',
    }),
  ),
  ...speedFields,
})

/** The chip is taken as thick as the feed of a tooth. */
function work(values: v.InferOutput<typeof fields>): Worked {
  const { width, depth, diameter, teeth, tooth, feed } = values
  if (tooth !== undefined && feed !== undefined)
    return refused(
      'feed',
      'Table feed and feed for each tooth are both given.',
      'Give one: the other follows.',
    )
  return atSpeed(values, diameter, (spindle) => {
    const teethASecond = (teeth * spindle) / (2 * Math.PI)
    const along = feed ?? (tooth === undefined ? undefined : tooth * teethASecond)
    if (along === undefined)
      return refused('feed', 'The feed is missing.', 'Give the table feed or the feed for each tooth.')
    const { energy, ...row } = metalEnergy(values, along / teethASecond)
    const needed = energy * width * depth * along
    return answered(
      needed / spindle,
      spindle,
      row,
      sum`A cut of ${length(width)} by ${length(depth)} at a table feed of ${tableFeed(along)} takes ${power(needed)}.`,
      null,
      // The table goes on as fast.
      'power',
    )
  })
}

export const milling: CutKind = { label: 'Milling metal', fields, work }
