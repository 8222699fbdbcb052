// Which inputs stand at which station, under which heading: paths of the field tables, none left out.
import { MOTOR_PATHS } from '../../sim/fill.ts'
import type { Station } from '../../sim/say/stations.ts'

export interface Group {
  readonly heading: string
  readonly about: string
  /** Paths, or the name of a part with all its inputs. */
  readonly paths: readonly string[]
  /** Behind a lid: numbers most people leave alone. */
  readonly detail?: boolean
  /** The lid stands open where one of them is given. */
  readonly openWhenGiven?: boolean
  /** Of the columns of its station, where they are laid out; without one it stands across the sheet. */
  readonly column?: 1 | 2 | 3
}

/** Groups of each station, in order. A path named on its own is left out where its whole part is named later. */
export const GROUPS: Readonly<Record<Station, readonly Group[]>> = {
  supply: [
    {
      heading: 'Supply',
      about: 'What feeds the motor, and what it can give.',
      paths: ['supply.kind', 'supply.volts', 'supply.resistance', 'supply.formFactor'],
    },
    {
      heading: 'Capacitors',
      about: 'In the supply or the controller. They say how long it stays charged after the plug is out.',
      paths: ['supply.capacitance', 'supply.bleeder'],
      detail: true,
      openWhenGiven: true,
    },
    { heading: 'Outlet', about: 'What all of it is plugged into.', paths: ['supply'] },
    { heading: 'Controller', about: 'The box with the knob.', paths: ['controller'] },
  ],
  motor: [
    {
      heading: 'From the plate',
      about: 'Copy what you can read. Leave a field empty if the plate is worn.',
      paths: ['volts', 'amps', 'power', 'speed', 'continuousPower', 'mass'].map((name) => `plate.${name}`),
      column: 1,
    },
    {
      heading: 'More from the plate',
      about: 'Rarely printed, and worth copying where it is.',
      paths: ['plate', 'winding.insulation', 'winding.magnets'],
      column: 1,
      detail: true,
    },
    {
      heading: 'Cutoff',
      about: 'The small switch on or in the motor.',
      paths: ['fitted', 'leads', 'opensAt', 'reclosesAt', 'place'].map((name) => `cutoff.${name}`),
      column: 1,
    },
    {
      heading: 'More about the cutoff',
      about: 'Where its place does not say it well enough.',
      paths: ['cutoff'],
      column: 1,
      detail: true,
    },
    {
      heading: 'From the bench',
      about:
        'Each reading replaces an estimate; how to take it stands under J. They are the motor’s: every variant has them.',
      paths: ['bench.ohms', 'bench.running', 'bench.spin'],
      column: 2,
    },
    {
      heading: 'More readings',
      about: 'For those who want to know better.',
      paths: [
        'bench.locked',
        'bench.coast',
        'bench.coastedWith',
        'bench.flywheelMass',
        'bench.flywheelDiameter',
        'bench.flywheelShape',
        'bench.clamp',
        'bench.leadOhms',
        'bench.roomC',
      ],
      column: 2,
      detail: true,
    },
    {
      heading: 'Cooling',
      about: 'Look at the shaft end opposite the brushes.',
      paths: ['heat.cooling', 'heat.air'],
      column: 3,
    },
    {
      heading: 'The numbers that follow',
      about:
        'Worked out from plate and bench: pale where a field is open. Type one in and it is taken instead; empty it and it is worked out again.',
      paths: [...Object.values(MOTOR_PATHS), 'winding', 'rotor', 'heat'],
      detail: true,
    },
  ],
  belt: [
    {
      heading: 'Pulleys',
      about: 'Diameters where the belt runs.',
      paths: ['belt.motorPulley', 'belt.machinePulley', 'belt.centreDistance', 'belt.length'],
    },
    {
      heading: 'Belt',
      about: 'Whether it slips, and what it loses on the way.',
      paths: ['belt.section', 'belt.ribs', 'belt.carries', 'belt.efficiency'],
    },
    {
      heading: 'Step pulleys',
      about:
        'Further pairs of diameters on the same two shafts. The pulleys above are step 1; one belt serves all.',
      paths: ['belt.step', 'belt.steps'],
      detail: true,
      openWhenGiven: true,
    },
    {
      heading: 'A second stage',
      about: 'A jackshaft between motor and machine. Leave these empty if there is none.',
      paths: ['belt'],
      detail: true,
      openWhenGiven: true,
    },
  ],
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
  bench: 'motor',
  belt: 'belt',
  machine: 'machine',
  duty: 'machine',
}

/** The station a path belongs to; null for what stands at none. */
export const stationOf = (path: string): Station | null => PARTS[path.split('.')[0]] ?? null
