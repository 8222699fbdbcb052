// The four stations along the drive in a few rows each.
import type { Job } from '../job.ts'
import { assemble } from '../plant.ts'
import { meanTorque } from '../duty.ts'
import { duration, percent, platePower, ratioText, told } from './number.ts'
import type { Units } from './units.ts'

export type Station = 'supply' | 'motor' | 'belt' | 'machine'

export interface Row {
  readonly label: string
  readonly value: string
}

export const STATIONS: Readonly<Record<Station, string>> = {
  supply: 'Supply and controller',
  motor: 'Motor',
  belt: 'Belt',
  machine: 'Machine',
}

const HOLDS = {
  'fixed voltage': 'fixed voltage',
  'sag compensation': 'sag compensation',
  'speed feedback': 'speed feedback',
} as const
const COOLING = {
  'shaft fan': 'fan on the shaft',
  blower: 'separate blower',
  none: 'no fan',
  enclosed: 'enclosed',
  'enclosed, outer fan': 'enclosed, outer fan',
} as const

/** Summary rows of a station. */
export function stationRows(station: Station, job: Job, units: Units): readonly Row[] {
  const { supply, controller, winding, belt, heat, cutoff } = job.parts
  const { plate, duty } = job
  if (station === 'supply')
    return [
      {
        label: 'Outlet',
        value: `${told(supply.lineVolts, 'voltage', units)}, ${told(supply.breaker, 'current', units)}`,
      },
      { label: 'To the motor', value: `up to ${told(supply.volts, 'voltage', units)}` },
      { label: 'Current limit', value: told(controller.currentLimit, 'current', units) },
      {
        label: 'Holds speed by',
        value:
          HOLDS[controller.holds] +
          (controller.holds === 'sag compensation' ? `, ${percent(controller.compensation)}` : ''),
      },
    ]
  if (station === 'motor') {
    const printed = [
      plate.power === undefined ? null : platePower(plate.power, units),
      plate.speed === undefined ? null : told(plate.speed, 'angular speed', units),
      plate.volts === undefined ? null : told(plate.volts, 'voltage', units),
      plate.amps === undefined ? null : told(plate.amps, 'current', units),
    ].filter((text) => text !== null)
    return [
      { label: 'Plate', value: printed.length > 0 ? printed.join(', ') : 'not read' },
      {
        label: 'Winding',
        value: `${told(winding.resistance, 'resistance', units)}, ${told(winding.constant, 'motor constant', units)}`,
      },
      { label: 'Cooling', value: COOLING[heat.cooling] },
      {
        label: 'Cutoff',
        value:
          cutoff.fitted === 'none'
            ? 'none'
            : `${told(cutoff.opensAt, 'temperature', units)}, ${cutoff.fitted === 'self-reset' ? 'recloses itself' : 'manual reset'}`,
      },
    ]
  }
  if (station === 'belt') {
    const rows = [
      { label: 'Motor pulley', value: told(belt.motorPulley, 'length', units) },
      { label: 'Machine pulley', value: told(belt.machinePulley, 'length', units) },
      { label: 'Ratio', value: ratioText(assemble(job.parts).ratio) },
      { label: 'Belt loss', value: percent(1 - belt.efficiency) },
    ]
    if (belt.jackshaftLarge === undefined || belt.jackshaftSmall === undefined) return rows
    return [
      ...rows.slice(0, 1),
      {
        label: 'Jackshaft',
        value: `${told(belt.jackshaftLarge, 'length', units)}, then ${told(belt.jackshaftSmall, 'length', units)}`,
      },
      ...rows.slice(1),
    ]
  }
  const fastest = Math.max(...duty.phases.map((phase) => phase.speed))
  const hardest = duty.phases.reduce((a, b) => (meanTorque(b) * b.speed > meanTorque(a) * a.speed ? b : a))
  const steps = duty.phases.slice(0, 4).map((phase) => `${phase.name || 'step'} ${duration(phase.seconds)}`)
  return [
    { label: 'Wanted', value: `${told(fastest, 'angular speed', units)} at the spindle` },
    {
      label: 'The cut',
      value: `${told(meanTorque(hardest), 'torque', units)}${hardest.surge ? ' on average, with surges' : ''}`,
    },
    { label: 'Duty', value: steps.join(', ') + (duty.phases.length > 4 ? ', …' : '') },
    { label: 'Repeated', value: `for ${duration(duty.seconds)}` },
  ]
}
