// Drilling metal with a twist drill: torque as d^1.80 f^0.80.
import * as v from 'valibot'
import { choiceOr, quantity } from '../field.ts'
import { DRILL, DRILL_LAW, DRILL_SPREAD, DRILLING } from '../handbook/drilling.ts'
import { EDGES } from '../handbook/unitPower.ts'
import { toUnit } from '../quantity.ts'
import { answered, type CutKind, length, sum, torque, type Worked } from './answer.ts'
import { edgeField } from './metal.ts'
import { optionsOf } from './options.ts'
import { atSpeed, speedFields } from './spindle.ts'

const fields = v.object({
  material: choiceOr('low-carbon steel HB 160', { label: 'Material', options: optionsOf(DRILLING) }),
  edge: edgeField,
  diameter: quantity({ label: 'Diameter of the drill', dimension: 'length', low: '0.5 mm', high: '100 mm' }),
  feed: quantity({ label: 'Feed for each turn', dimension: 'length', low: '0.005 mm', high: '2 mm' }),
  ...speedFields,
})

function work(values: v.InferOutput<typeof fields>): Worked {
  const { material, edge, diameter, feed } = values
  return atSpeed(values, diameter, (spindle) => {
    const { label, torque: known, source, standing } = DRILLING[material]
    const worn = EDGES[edge].factor
    const asked =
      known * (diameter / DRILL.diameter) ** DRILL_LAW.diameter * (feed / DRILL.feed) ** DRILL_LAW.feed * worn
    const row = {
      row: `${label}: ${known.toFixed(1)} N·m (${toUnit(known, 'lbf·ft').toFixed(1)} lbf·ft) for a sharp 10 mm (0.39 in) drill at 0.2 mm (0.008 in) a turn; × ${worn} for the edge`,
      source: `${source}; growth with size: ${DRILL_LAW.source}; edge factor from memory`,
      standing,
      ...DRILL_SPREAD,
    }
    return answered(
      asked,
      spindle,
      row,
      sum`A ${length(DRILL.diameter)} drill at ${length(DRILL.feed)} a turn takes ${torque(known * worn)}; torque grows as diameter to the 1.8 and feed to the 0.8, here to ${length(diameter)} and ${length(feed)}.`,
    )
  })
}

export const drilling: CutKind = { label: 'Drilling metal', fields, work }
