// Wheel grinding: by hand, the pull of the pressed work; on a table, the energy of what comes off.
import * as v from 'valibot'
import { choiceOr, quantity } from '../field.ts'
import { GRIP, GROUND_OFF } from '../handbook/roughLoads.ts'
import { answered, type CutKind, force, length, power, refused, speed, sum, type Worked } from './answer.ts'
import { loadOf } from './band.ts'
import { optionsOf } from './options.ts'
import { atSpeed, speedFields, surfaceSpeed } from './spindle.ts'

const fields = v.object({
  press: v.optional(
    quantity({
      label: 'Force that presses the work on',
      dimension: 'force',
      low: '1 N',
      high: '2000 N',
      help: 'Grinding by hand. On a table, give width, depth and feed.',
    }),
  ),
  material: choiceOr('low-carbon steel', { label: 'Material', options: optionsOf(GROUND_OFF) }),
  energy: v.optional(
    quantity({
      label: 'Energy for each cm³ ground off',
      dimension: 'energy',
      low: '1 kJ',
      high: '1000 kJ',
      help: 'Instead of the material’s row. 1 hp·min/in³ is 2.73 kJ.',
    }),
  ),
  width: v.optional(
    quantity({ label: 'Width of the cut', dimension: 'length', low: '0.1 mm', high: '500 mm' }),
  ),
  depth: v.optional(
    quantity({ label: 'Depth of the cut', dimension: 'length', low: '0.001 mm', high: '10 mm' }),
  ),
  feed: v.optional(
    quantity({ label: 'Speed of the work', dimension: 'speed', low: '0.0001 m/s', high: '2 m/s' }),
  ),
  diameter: quantity({ label: 'Diameter of the wheel', dimension: 'length', low: '10 mm', high: '1 m' }),
  ...speedFields,
})
type Values = v.InferOutput<typeof fields>

/** Rims of common vitrified wheels stand this, m/s (ANSI B7.1 and EN 12413 mark 33 to 35, from memory). */
const WHEEL_SPEED = 35

/** A wheel that turns too fast bursts: said with every wheel, and plainly where this one does. */
const caution = (rim: number): string =>
  `${rim > WHEEL_SPEED ? 'This rim runs faster than common wheels stand: they burst. ' : ''}Never turn a wheel faster than the speed printed on it; common ones stand 33 to 35 m/s (about 6500 to 6900 ft/min) at the rim. Guard it, ring-test it, and stand aside as it starts.`

function byHand(press: number, diameter: number, spindle: number): Worked {
  const { value, ...row } = loadOf(GRIP, undefined, '')
  const pull = value * press
  return answered(
    (pull * diameter) / 2,
    spindle,
    row,
    sum`Pressed on with ${force(press)}, the work holds the wheel back with ${force(pull)} at ${speed(surfaceSpeed(spindle, diameter))}.`,
    caution(surfaceSpeed(spindle, diameter)),
  )
}

function work(values: Values): Worked {
  const { press, material, energy, width, depth, feed, diameter } = values
  return atSpeed(values, diameter, (spindle) => {
    if (press !== undefined) return byHand(press, diameter, spindle)
    if (width === undefined || depth === undefined || feed === undefined)
      return refused(
        'press',
        'The load is missing.',
        'Give the force that presses, or width, depth and feed.',
      )
    const own = energy === undefined ? undefined : energy * 1e6
    const { value, ...row } = loadOf(GROUND_OFF[material], own, 'Energy of what is ground off, as given')
    const needed = value * width * depth * feed
    const pull = needed / surfaceSpeed(spindle, diameter)
    return answered(
      needed / spindle,
      spindle,
      row,
      sum`A cut of ${length(width)} by ${length(depth)} at ${speed(feed)} takes ${power(needed)}, a pull of ${force(pull)} at the rim.`,
      caution(surfaceSpeed(spindle, diameter)),
      // The table goes on as fast.
      'power',
    )
  })
}

export const wheelGrinding: CutKind = { label: 'Wheel grinding', fields, work }
