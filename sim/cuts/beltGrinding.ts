// Belt grinding: the pull of the work on the belt, or the usual power of the belt’s width.
import * as v from 'valibot'
import { quantity } from '../field.ts'
import { BELT, GRIP } from '../handbook/roughLoads.ts'
import { answered, type CutKind, force, length, power, speed, sum, type Worked } from './answer.ts'
import { loadOf } from './band.ts'
import { atSpeed, speedFields, surfaceSpeed } from './spindle.ts'

const fields = v.object({
  width: quantity({ label: 'Width of the belt', dimension: 'length', low: '5 mm', high: '500 mm' }),
  press: v.optional(
    quantity({
      label: 'Force that presses the work on',
      dimension: 'force',
      low: '1 N',
      high: '2000 N',
      help: 'Left open: the usual power of a working belt this wide.',
    }),
  ),
  diameter: quantity({
    label: 'Diameter of the drive wheel',
    dimension: 'length',
    low: '10 mm',
    high: '1 m',
  }),
  ...speedFields,
})

function work(values: v.InferOutput<typeof fields>): Worked {
  const { width, press, diameter } = values
  return atSpeed(values, diameter, (spindle) => {
    const surface = surfaceSpeed(spindle, diameter)
    if (press !== undefined) {
      const { value, ...row } = loadOf(GRIP, undefined, '')
      const pull = value * press
      return answered(
        (pull * diameter) / 2,
        spindle,
        row,
        sum`Pressed on with ${force(press)}, the work holds the belt back with ${force(pull)} at ${speed(surface)}.`,
      )
    }
    const { value, ...row } = loadOf(BELT, undefined, '')
    const needed = value * width
    return answered(
      needed / spindle,
      spindle,
      row,
      sum`A working belt ${length(width)} wide takes ${power(needed)}.`,
    )
  })
}

export const beltGrinding: CutKind = { label: 'Belt grinding', fields, work }
