// A speed and torque of the map made a variant: the step that heats most, held there without its surges.
import { toUnit } from '../../sim/quantity.ts'
import { told } from '../../sim/say/number.ts'
import { type Units, unitFor } from '../../sim/say/units.ts'
import { givenAt, type Scenario } from '../../sim/scenario.ts'
import type { Cooling } from '../../sim/studies/map.ts'
import type { Try } from './tries.ts'

/** What a step's cut may be given as besides its torque: that goes. */
const OTHERS = ['surge', 'power', 'fanTorque', 'cut'] as const

/**
 * The try: step `phase` of the scenario at a spindle speed (rad/s) and torque (N·m) as one would set them, with
 * another cooling if one is named.
 */
export function mapTry(
  scenario: Scenario,
  phase: number,
  speed: number,
  torque: number,
  cooling: Cooling | null,
  units: Units,
): Try {
  const path = `duty.phases.${phase}`
  const unit = unitFor('torque', units)
  const gone = OTHERS.filter((key) => givenAt(scenario, `${path}.${key}`) !== undefined)
  const name = `${told(speed, 'angular speed', units)}, ${told(torque, 'torque', units)}`
  return {
    label: `Try ${name}`,
    wish: {
      kind: 'try',
      name,
      changes: {
        ...Object.fromEntries(gone.map((key) => [`${path}.${key}`, null])),
        [`${path}.speed`]: `${Math.round(toUnit(speed, 'rpm'))} rpm`,
        [`${path}.torque`]: `${Number(toUnit(torque, unit).toPrecision(3))} ${unit}`,
        ...(cooling ? { 'heat.cooling': cooling } : {}),
      },
    },
  }
}
