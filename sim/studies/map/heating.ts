// What warms at a held speed and torque: three temperatures, and the speed as well where amps or volts let it go.
import { type Air, airAt, flowPerSpeed } from '../../parts/heat.ts'
import { senseRate } from '../../parts/cutoff.ts'
import { friction } from '../../parts/rotor.ts'
import { constantAt, resistanceAt } from '../../parts/winding.ts'
import type { Plant } from '../../plant.ts'
import { rosenbrock } from '../../solve/rosenbrock.ts'
import type { Stepper } from '../../solve/stepper.ts'
import { type Left, leftOver } from '../../steady/balance.ts'
import { lumpiness } from '../../steady/operating.ts'
import { type WarmingDrive, warmingDrive } from './drive.ts'

/** Relative, and in K and rad/s: times are good to a thousandth with these (the campaign `map` tells). */
const RELATIVE = 3e-4
const KELVIN = 0.01
const SPEED = 0.1
const TYPICAL = Float64Array.of(50, 50, 50, 10)
const ABSOLUTE = Float64Array.of(KELVIN, KELVIN, KELVIN, SPEED)

/** Everything that turns, at the motor's shaft, kg·m²: a belt that may slip carries it all the same. */
export const turning = ({ rotor, machine, ratio }: Plant): number =>
  rotor.inertia + rotor.flywheel + machine.inertia / (ratio * ratio)

/** The motor of a plant held at an asked motor speed, rad/s. States: winding, frame, switch, °C; and motor speed. */
export interface Heating {
  readonly drive: WarmingDrive
  /** Inertia at the shaft, kg·m². */
  readonly inertia: number
  /** At the speed that volts give, whatever the amps: three states. */
  readonly runs: Stepper
  /** At the current limit, the speed what inertia makes of the torque there is: four. */
  readonly gives: Stepper
  /** Takes up a torque of the cut, N·m at the spindle: the motor runs at its speed. */
  hold(torque: number): void
  /** The asked speed grows from rest at so much, rad/s²; 0: it is there. */
  ramp(slope: number): void
  /** The drive at temperatures; true where its amps are over the limit. */
  at(windingC: number, frameC: number): boolean
  /** The same, and from now on it lends the torque of slowing down as it does there, warming. */
  look(windingC: number, frameC: number): boolean
  /** Heat left over in winding and frame, W. */
  left(motor: number, amps: number, windingC: number, frameC: number): Left
  /** Looks at the drive so far: what it all costs. */
  readonly evaluations: number
}

export function heating(plant: Plant, asked: number): Heating {
  const { winding, rotor, heat, cutoff, controller } = plant
  const perKelvinR = resistanceAt(winding, 1) - resistanceAt(winding, 0)
  const inertia = turning(plant)
  const most = controller.currentLimit
  const air: Air = { windingToAir: 0, frameToAir: 0 }
  const drive = warmingDrive(plant)
  const moved = new Float64Array(4)
  const probe = new Float64Array(3)
  // Written anew at every look: what is asked so often makes nothing to be cleared away.
  const state = { speed: 0.5, amps: 0.5, formFactorSquared: 1.5 }
  const over: [winding: number, frame: number] = [0.5, 0.5]
  let evaluations = 0
  let slope = 0
  /** Torque at the shaft that the change of speed takes, N·m. */
  let extra = 0

  const left = (motor: number, amps: number, windingC: number, frameC: number): Left => {
    airAt(heat, plant.fan, motor, air)
    state.speed = motor
    state.amps = amps
    state.formFactorSquared = lumpiness(plant, amps, motor)
    return leftOver(winding, rotor, heat, air, heat.air, state, windingC, frameC, over)
  }
  const warms = (y: Float64Array, motor: number, amps: number, out: Float64Array) => {
    left(motor, amps, y[0], y[1])
    out[0] = over[0] / heat.windingCapacity
    out[1] = over[1] / heat.frameCapacity
    out[2] = senseRate(cutoff, y[0], y[1], y[2])
  }
  const find = (at: number, windingC: number, frameC: number) => {
    evaluations++
    drive.find(at, extra, windingC, frameC)
  }
  const running = (t: number, y: Float64Array, out: Float64Array) => {
    find(slope === 0 ? asked : slope * t, y[0], y[1])
    warms(y, drive.speed, drive.amps, out)
  }

  const runs = rosenbrock(
    {
      size: 3,
      typical: TYPICAL.subarray(0, 3),
      get autonomous() {
        return slope === 0
      },
      rates: running,
      // Where the rates were just asked for. Of what makes amps lumpy the change is left aside: it costs steps, not truth.
      jacobian(_, y, out) {
        const { amps, speed } = drive
        const per = drive.perKelvin()
        const square = state.formFactorSquared
        const byAmps = 2 * square * resistanceAt(winding, y[0]) * amps
        const byTorque = friction(rotor, speed) + rotor.windage * speed
        const flow = flowPerSpeed(heat, speed)
        const closed = air.windingToAir === 0 ? 0 : heat.airPath * heat.windingToAir
        const windingAir = (air.windingToAir - closed) * flow * (y[0] - heat.air)
        const frameAir = (air.frameToAir - heat.frameToAir) * flow * (y[1] - heat.air)
        const windingHeat = (ampsPer: number, speedPer: number) =>
          (byAmps + heat.brushShare * winding.brushDrop) * ampsPer +
          (heat.frictionShare * byTorque - windingAir) * speedPer
        const frameHeat = (ampsPer: number, speedPer: number) =>
          (1 - heat.brushShare) * winding.brushDrop * ampsPer +
          ((1 - heat.frictionShare) * byTorque - frameAir) * speedPer
        const inward = heat.windingToFrame
        const copper = square * perKelvinR * amps * amps
        const { windingCapacity: cw, frameCapacity: cf } = heat
        out[0] =
          (copper - inward - air.windingToAir + windingHeat(per.ampsByWinding, per.speedByWinding)) / cw
        out[1] = (inward + windingHeat(per.ampsByFrame, per.speedByFrame)) / cw
        out[2] = 0
        out[3] = (inward + frameHeat(per.ampsByWinding, per.speedByWinding)) / cf
        out[4] = (frameHeat(per.ampsByFrame, per.speedByFrame) - inward - air.frameToAir) / cf
        out[5] = 0
        out[6] = senseRate(cutoff, 1, 0, 0)
        out[7] = senseRate(cutoff, 0, 1, 0)
        out[8] = senseRate(cutoff, 0, 0, 1)
      },
    },
    { relative: RELATIVE, absolute: ABSOLUTE.subarray(0, 3) },
  )
  const gives = rosenbrock(
    {
      size: 4,
      typical: TYPICAL,
      autonomous: true,
      rates(_, y, out) {
        evaluations++
        drive.load(y[3])
        const amps = Math.min(most, drive.driven(asked, y[3], y[0], y[1]))
        warms(y, y[3], amps, out)
        out[3] = (constantAt(winding, y[1]) * amps - drive.atShaft) / inertia
      },
    },
    { relative: RELATIVE, absolute: ABSOLUTE },
  )

  return {
    drive,
    inertia,
    runs,
    gives,
    left,
    hold(torque) {
      drive.torque = torque
      drive.speed = asked
      slope = 0
      extra = 0
    },
    ramp(by) {
      slope = by
      extra = inertia * by
    },
    at(windingC, frameC) {
      find(asked, windingC, frameC)
      return drive.amps > most
    },
    look(windingC, frameC) {
      find(asked, windingC, frameC)
      const over = drive.amps > most
      if (slope === 0) {
        probe[0] = windingC
        probe[1] = frameC
        warms(probe, drive.speed, drive.amps, moved)
        extra = inertia * drive.drift(moved[0], moved[1])
      }
      return over
    },
    get evaluations() {
      return evaluations
    },
  }
}
