// Which inputs stand at which station, under which heading: paths of the field tables, none left out.
import type { Station } from '../../sim/say/stations.ts'

export interface Group {
  readonly heading: string
  readonly about: string
  /** Paths, or the name of a part with all its inputs. */
  readonly paths: readonly string[]
  /** Behind a lid: numbers most people leave alone. */
  readonly detail?: boolean
}

/** Groups of each station, in order. A path named on its own is left out where its whole part is named later. */
export const GROUPS: Readonly<Record<Station, readonly Group[]>> = {
  supply: [
    { heading: 'Supply', about: 'What feeds the controller, and what it can give.', paths: ['supply'] },
    { heading: 'Controller', about: 'The box with the knob.', paths: ['controller'] },
  ],
  motor: [
    {
      heading: 'From the plate',
      about: 'Copy what you can read. Leave a field empty if the plate is worn.',
      paths: ['plate'],
    },
    {
      heading: 'Cooling',
      about: 'Look at the shaft end opposite the brushes.',
      paths: ['heat.cooling', 'heat.air'],
    },
    { heading: 'Cutoff', about: 'The small switch on or in the motor.', paths: ['cutoff'] },
    { heading: 'Winding', about: 'What the meter and the drill say.', paths: ['winding'] },
    {
      heading: 'Rotor and flywheel',
      about: 'What turns with the shaft, and what it loses.',
      paths: ['rotor'],
    },
    {
      heading: 'Heat in detail',
      about:
        'How much heat the motor stores and sheds. Estimated from plate and mass; change one only if you measured it.',
      paths: ['heat'],
      detail: true,
    },
  ],
  belt: [{ heading: 'Pulleys and belt', about: 'Diameters where the belt runs.', paths: ['belt'] }],
  machine: [
    { heading: 'Machine', about: 'What is heavy and what drags, at the spindle.', paths: ['machine'] },
  ],
}

const PARTS: Readonly<Record<string, Station>> = {
  supply: 'supply',
  controller: 'supply',
  plate: 'motor',
  winding: 'motor',
  rotor: 'motor',
  heat: 'motor',
  cutoff: 'motor',
  belt: 'belt',
  machine: 'machine',
  duty: 'machine',
}

/** The station a path belongs to; null for what stands at none. */
export const stationOf = (path: string): Station | null => PARTS[path.split('.')[0]] ?? null
