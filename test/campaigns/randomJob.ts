// Legal jobs drawn from a seed: motors from toys to three horsepower, every controller, cooling, supply and kind of cut.
import type { Job } from '../../sim/job.ts'
import type { Scenario } from '../../sim/scenario.ts'
import { type Chance, seeded } from '../seeded.ts'
import { jobOf } from '../jobs.ts'
import { type Drawn, metric, type Tree } from './written.ts'

const of =
  (dimension: Drawn['of']) =>
  (si: number): Drawn => ({ si, of: dimension })
const volts = of('voltage')
const amps = of('current')
const ohms = of('resistance')
const torque = of('torque')
const speed = of('angular speed')
const inertia = of('inertia')
const viscous = of('viscous friction')
const share = of('share')
const celsius = of('temperature')
const seconds = of('time')
const conductance = of('thermal conductance')
const capacity = of('heat capacity')
const length = of('length')
const number = of('number')

/** Numbers of the motor a job is drawn around. */
interface Rating {
  readonly volts: number
  readonly amps: number
  readonly speed: number
  readonly torque: number
  readonly resistance: number
  readonly constant: number
  readonly brushes: number
}

function rating({ size, even }: Chance): Rating {
  const [v, a, w] = [size(12, 180), size(1.5, 25), size(150, 700)]
  const resistance = (v / a) * size(0.04, 0.25)
  const brushes = Math.min(even(0, 2.5), 0.1 * v)
  const constant = (v - resistance * a - brushes) / w
  return { volts: v, amps: a, speed: w, torque: constant * a, resistance, constant, brushes }
}

/** A phase of work or rest; spindle speeds and torques behind a belt of ratio n. */
function phase(chance: Chance, motor: Rating, n: number, name: string): Tree {
  const { size, even, pick, happens } = chance
  const lasts = size(4, 400)
  if (happens(0.25)) return { name, lasts: seconds(lasts) }
  const asked = (motor.speed * even(0.15, 1)) / n
  const most = motor.torque * n * size(0.03, 1.3)
  const kind = pick(['torque', 'torque', 'power', 'fanTorque', 'idle'] as const)
  const every = even(4, 40)
  return {
    name,
    lasts: seconds(lasts),
    speed: speed(asked),
    ...(kind === 'torque' && { torque: torque(most) }),
    ...(kind === 'power' && { power: { si: most * asked, of: 'power' } }),
    ...(kind === 'fanTorque' && { fanTorque: torque(most) }),
    ...(happens(0.2) && {
      surge: {
        torque: torque(motor.torque * n * even(0.1, 0.8)),
        every: seconds(every),
        lasts: seconds(every * even(0.1, 0.8)),
      },
    }),
  }
}

/** The scenario of a seed, every number given, as a tree of quantities in SI. */
export function randomTree(seed: number): Tree {
  const chance = seeded(seed)
  const { size, even, pick, happens } = chance
  const motor = rating(chance)
  const rotor = (size(0.01, 0.2) * motor.constant ** 2) / motor.resistance
  const stages = happens(0.25) ? 2 : 1
  const ratios = Array.from({ length: stages }, () => size(0.9, stages === 2 ? 4 : 8))
  const n = ratios.reduce((product, each) => product * each, 1)
  const pulley = size(0.04, 0.1)
  const small = size(0.04, 0.1)
  const kind = pick(['battery', 'pwm', 'phase control with choke', 'phase control', 'bare bridge'] as const)
  const form = kind === 'phase control' || kind === 'bare bridge' ? even(1.1, 1.7) : even(1, 1.1)
  // Air and heat so that the rating, for good, with its fan, warms the motor by 40 to 140 K.
  const lost = 1.3 * form ** 2 * motor.amps ** 2 * motor.resistance + 0.05 * motor.torque * motor.speed
  const whole = lost / even(40, 140)
  const heat = whole * size(200, 2000)
  const inWinding = even(0.12, 0.4)
  const air = even(0, 40)
  const opens = even(50, 120)
  const phases = Array.from({ length: 1 + Math.floor(even(0, 4)) }, (_, index) =>
    phase(chance, motor, n, `step ${index}`),
  )
  const cycle = phases.reduce((sum, { lasts }) => sum + (lasts as Drawn).si, 0)
  return {
    format: 1,
    name: `seed ${seed}`,
    plate: { amps: amps(motor.amps), speed: speed(motor.speed) },
    supply: {
      kind,
      volts: volts(motor.volts * even(0.9, 1.4)),
      resistance: ohms(happens(0.5) ? 0 : (motor.volts / motor.amps) * even(0, 0.05)),
      formFactor: number(form),
    },
    controller: {
      holds: pick(['fixed voltage', 'sag compensation', 'speed feedback'] as const),
      compensation: share(even(0, 0.95)),
      currentLimit: amps(motor.amps * even(1, 3)),
      ramp: { si: motor.speed * size(0.1, 5), of: 'angular acceleration' },
      response: seconds(size(0.04, 0.5)),
    },
    winding: {
      resistance: ohms(motor.resistance),
      inductance: { si: motor.resistance * size(1e-3, 0.02), of: 'inductance' },
      constant: { si: motor.constant, of: 'motor constant' },
      magnets: pick(['ferrite', 'NdFeB', 'AlNiCo'] as const),
      brushDrop: volts(motor.brushes),
      insulation: pick(['A', 'B', 'F', 'H'] as const),
    },
    rotor: {
      inertia: inertia(rotor),
      flywheel: inertia(happens(0.5) ? 0 : rotor * size(0.5, 20)),
      dryFriction: torque(motor.torque * size(0.005, 0.06)),
      windage: viscous((motor.torque / motor.speed) * size(0.002, 0.04)),
    },
    belt: {
      motorPulley: length(pulley),
      ...(stages === 2 && {
        jackshaftLarge: length(pulley * ratios[0]),
        jackshaftSmall: length(small),
      }),
      machinePulley: length((stages === 2 ? small : pulley) * ratios[stages - 1]),
      efficiency: share(even(0.8, 0.99)),
    },
    machine: {
      inertia: inertia(rotor * n ** 2 * size(0.02, 8)),
      drag: torque(motor.torque * n * size(0.001, 0.1)),
      windage: viscous(((motor.torque * n ** 2) / motor.speed) * size(1e-4, 0.05)),
    },
    heat: {
      cooling: pick(['shaft fan', 'blower', 'none', 'enclosed', 'enclosed, outer fan'] as const),
      air: celsius(air),
      airflow: share(even(0.2, 1.5)),
      airPath: share(even(0.4, 1)),
      stir: share(even(0, 0.4)),
      windingCapacity: capacity(heat * inWinding),
      frameCapacity: capacity(heat * (1 - inWinding)),
      windingToFrame: conductance(whole * size(0.1, 1)),
      windingToAir: conductance(whole * size(0.02, 0.2)),
      windingToFanAir: conductance(whole * size(0.3, 1)),
      frameToAir: conductance(whole * size(0.1, 0.4)),
      frameToFanAir: conductance(whole * size(0.05, 0.4)),
      fanSpeed: speed(motor.speed * even(0.8, 1.2)),
      fanExponent: number(even(0.4, 0.95)),
      frictionShare: share(even(0, 1)),
      brushShare: share(even(0, 1)),
    },
    cutoff: {
      fitted: pick(['self-reset', 'self-reset', 'manual reset', 'none'] as const),
      opensAt: celsius(opens),
      reclosesAt: celsius(opens - even(6, 40)),
      place: pick(['shell', 'brush end', 'magnet'] as const),
      ...(happens(0.3) && { windingShare: share(even(0, 1)), lag: seconds(size(3, 120)) }),
    },
    duty: {
      phases,
      repeatFor: seconds(Math.max(300, Math.min(1800, cycle * even(1, 12)))),
      ...(happens(0.4) && { start: celsius(even(air, 110)) }),
    },
  }
}

/** The scenario of a seed in metric units, or with part of it changed. */
export const randomScenario = (seed: number): Scenario => metric(randomTree(seed))

/** The job of a seed, read from its text, at the "precise" tolerance. Throws where the reader refuses it. */
export const randomJob = (seed: number): Job => ({ ...jobOf(randomScenario(seed)), accuracy: 'precise' })
