// What cannot be told field by field: inputs that are each in order, and do not go together.
import { beltAmiss } from './drive/amiss.ts'
import { phaseSeconds } from './duty.ts'
import { LEAST_HYSTERESIS } from './parts/cutoff.ts'
import type { Problem } from './problem.ts'
import { givenAt } from './scenario.ts'

/** Time constants L/R that a winding can have, s. */
const LEAST_TIME_CONSTANT = 1e-4
const LONGEST_TIME_CONSTANT = 1

/**
 * Every mismatch in a scenario as read, SI. Inputs that could not be read are still texts in it: they are told by
 * their own field, and whatever else they touch is left alone.
 */
export function mismatches(read: unknown): Problem[] {
  const given = (path: string) => givenAt(read, path) !== undefined
  const number = (path: string): number => {
    const value = givenAt(read, path)
    return typeof value === 'number' ? value : Number.NaN
  }
  const found: Problem[] = []
  const tell = (path: string, wrong: string, wouldDo: string) => found.push({ path, wrong, wouldDo })

  const hysteresis = number('cutoff.opensAt') - number('cutoff.reclosesAt')
  if (givenAt(read, 'cutoff.fitted') === 'self-reset' && hysteresis < LEAST_HYSTERESIS - 1e-9)
    tell(
      'cutoff.reclosesAt',
      hysteresis > 0
        ? `It would reclose ${Number(hysteresis.toPrecision(3))} °C under its opening temperature.`
        : 'It would reclose no cooler than it opens.',
      `At least ${LEAST_HYSTERESIS} °C lower; 20 to 40 °C is usual.`,
    )

  const time = number('winding.inductance') / number('winding.resistance')
  if (time < LEAST_TIME_CONSTANT || time > LONGEST_TIME_CONSTANT)
    tell(
      'winding.inductance',
      `With this resistance its time constant is ${Number((time * 1000).toPrecision(2))} ms.`,
      '1 to 20 ms is usual: check the unit, or leave it open.',
    )

  const [large, small] = ['belt.jackshaftLarge', 'belt.jackshaftSmall']
  if (given(large) !== given(small))
    tell(
      given(large) ? small : large,
      'A jackshaft needs two pulleys, and only one is given.',
      'Give the other too, or neither for a single stage.',
    )

  found.push(...beltAmiss(givenAt(read, 'belt')))

  if (givenAt(read, 'supply.kind') === 'phase control')
    for (const path of ['plate.amps', 'plate.speed'])
      if (!given(path))
        tell(
          path,
          'How lumpy the current is follows from the plate, and this is not given.',
          'Give plate amps and plate speed, or choose phase control with a choke.',
        )

  const phases = givenAt(read, 'duty.phases')
  if (!Array.isArray(phases)) return found
  let cycle = 0
  phases.forEach((_, index) => {
    const path = `duty.phases.${index}`
    cycle += phaseSeconds({ seconds: number(`${path}.lasts`) })
    if (['torque', 'power', 'fanTorque', 'cut'].filter((cut) => given(`${path}.${cut}`)).length > 1)
      tell(
        given(`${path}.cut`) ? `${path}.cut` : `${path}.torque`,
        'This step has more than one kind of cut.',
        'Keep one of torque, power, fanTorque and cut.',
      )
    if (number(`${path}.fanTorque`) > 0 && number(`${path}.speed`) === 0)
      tell(
        `${path}.fanTorque`,
        'A fan’s torque is given at the asked speed, and that is 0.',
        'Ask for a speed, or leave this out.',
      )
    if (number(`${path}.surge.lasts`) >= number(`${path}.surge.every`))
      tell(
        `${path}.surge.lasts`,
        'The surge lasts as long as the time between surges, or longer.',
        'Shorter than "every"; or add it to the cut.',
      )
  })
  if (phases.length > 0 && cycle === 0)
    tell('duty.phases', 'Every step lasts no time at all.', 'Give at least one step a length.')
  if (number('duty.repeatFor') === 0)
    tell('duty.repeatFor', 'The job lasts no time at all.', 'For example "3 h".')
  return found
}
