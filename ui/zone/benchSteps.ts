// What can be measured at a bench, in the order worth doing: what, how, which fields, and the number it tells.
import type { MotorNumber, MotorReadings } from '../../sim/identify/motor.ts'
import type { ReadingPath } from '../edit/readings.ts'

export interface BenchStep {
  readonly title: string
  readonly how: string
  /** Kind of reading; the flywheel is weighed once and has single inputs only. */
  readonly reading: ReadingPath | null
  /** Single inputs that go with it. */
  readonly inputs: readonly string[]
  readonly tells: MotorNumber
  /** What is left out to see what the motor was taken for before. */
  readonly leave: ReadingPath | 'bench.flywheelMass'
}

export const BENCH_STEPS: readonly BenchStep[] = [
  {
    title: 'Winding ohms',
    how: 'Supply unplugged. Ohmmeter across the two motor leads; turn the shaft a little between readings and keep the lowest of ten. Touch the probes together first: that much is taken off.',
    reading: 'bench.ohms',
    inputs: ['bench.leadOhms', 'bench.roomC'],
    tells: 'resistance',
    leave: 'bench.ohms',
  },
  {
    title: 'Volts made by turning',
    how: 'Leads off the controller, nothing on them but the meter, on DC. Turn the shaft with a drill; read volts and the shaft’s own speed together.',
    reading: 'bench.spin',
    inputs: [],
    tells: 'constant',
    leave: 'bench.spin',
  },
  {
    title: 'Amps running free',
    how: 'Belt off, at full voltage, after five minutes. Clamp round one motor lead, on DC. The leads are at mains potential: set the clamp first, touch nothing after.',
    reading: 'bench.running',
    inputs: ['bench.clamp'],
    tells: 'dryFriction',
    leave: 'bench.running',
  },
  {
    title: 'Volts with the shaft held',
    how: 'Better than ohms where you have a bench supply: shaft held in a vice, 2 to 5 A for a few seconds, volts at the leads. Three readings well apart tell the brushes from the winding.',
    reading: 'bench.locked',
    inputs: [],
    tells: 'resistance',
    leave: 'bench.locked',
  },
  {
    title: 'Coast-down',
    how: 'Belt off. Switch off from speed with a stopwatch running: the speed at once, and again some seconds on, before it stops.',
    reading: 'bench.coast',
    inputs: ['bench.coastedWith'],
    tells: 'inertia',
    leave: 'bench.coast',
  },
  {
    title: 'Flywheel',
    how: 'If one stays on the shaft: weigh it and measure across.',
    reading: null,
    inputs: ['bench.flywheelMass', 'bench.flywheelDiameter', 'bench.flywheelShape'],
    tells: 'flywheel',
    leave: 'bench.flywheelMass',
  },
]

/** True where a step has been done. */
export function isDone({ reading }: BenchStep, { bench }: MotorReadings): boolean {
  if (reading === null) return bench.flywheelMass !== undefined && bench.flywheelDiameter !== undefined
  const least = reading === 'bench.coast' ? 2 : 1
  return (
    bench[reading.slice('bench.'.length) as 'ohms' | 'spin' | 'running' | 'locked' | 'coast'].length >= least
  )
}
