// A motor held at one spindle speed from standing and cold: how long until its cutoff opens, at any torque.
import { classLimitC } from '../../handbook/insulation.ts'
import type { Heat } from '../../parts/heat.ts'
import { assemble, type Parts } from '../../plant.ts'
import { DESTROYED_C } from '../../run.ts'
import { advance, type Crossing } from '../../solve/advance.ts'
import { root } from '../../solve/root.ts'
import type { Stepper } from '../../solve/stepper.ts'
import { balance } from '../../steady/balance.ts'
import { type DriveLimit, driveAt } from '../../steady/drive.ts'
import { feltC, type Warm } from '../../steady/operating.ts'
import { heating } from './heating.ts'
import { runUp } from './runUp.ts'

/** What ends it: the cutoff opens; without one, the winding passes its class; or the winding burns first; null: nothing. */
export type MapEnd = 'opens' | 'class' | 'burns' | null

/** One speed and torque held from standing and cold. */
export interface MapPoint {
  /** When it ends, s; Infinity: never. */
  readonly seconds: number
  readonly ends: MapEnd
  /** When the winding passes its class, s; Infinity: never, or not before the end. */
  readonly classAt: number
  /** Spindle speed it comes to while cold, rad/s, and what keeps it from the asked one. */
  readonly speed: number
  readonly limit: DriveLimit
  /** When the current limit is reached for good and the speed gives way, s; 0: it never came up; Infinity: never. */
  readonly limitedAt: number
  /** Where it would settle with the cutoff left alone, °C; null: it does not, or not at its speed. */
  readonly settled: Warm | null
}

/** A motor at one asked speed, to be asked torque after torque. N·m of the cut at the spindle. */
export interface Warming {
  point(torque: number): MapPoint
  /** Where it settles at its speed within the current limit, °C; null: it does not. */
  settles(torque: number): Warm | null
  /** Amps over the current limit, cold; below 0: within. */
  overAmps(torque: number): number
  /** True where cold volts do not reach the asked speed. */
  short(torque: number): boolean
  /** Looks at the drive so far: what a map costs. */
  readonly evaluations: number
}

/** First steps, s: of a warming, and of a speed that gives way. */
const FIRST_STEP = 40
const FIRST_SLIP = 0.01
/** Nothing that happens later than a month is looked for, s. */
const MONTH = 30 * 86400
/** Ways it may run one after the other: up by the ramp or the amps, at its speed, giving way. */
const TURNS = 4
/** A cut that has let go: under this share of its torque (as in steady/drive.ts). */
const STALL = 0.95

const destroyed: Crossing = { state: 0, level: DESTROYED_C, direction: 1 }

/** The parts held at spindle speed `speed` (rad/s), with another cooling if one is named; as cold as the air. */
export function warming(parts: Parts, speed: number, cooling?: Heat['cooling']): Warming {
  const plant = assemble(cooling ? { ...parts, heat: { ...parts.heat, cooling } } : parts)
  const { winding, heat, cutoff, controller, ratio } = plant
  const asked = speed * ratio
  const coldC = heat.air
  const limitC = classLimitC(winding.insulation)
  const fitted = cutoff.fitted !== 'none'
  const rampEnds = asked / controller.ramp
  const motor = heating(plant, asked)
  const { drive, runs, gives } = motor
  const opens: Crossing = { state: 2, level: cutoff.opensAt, direction: 1 }
  const passes: Crossing = { state: 0, level: limitC, direction: 1 }

  const overAmps = (torque: number): number => {
    motor.hold(torque)
    motor.at(coldC, coldC)
    return drive.amps - controller.currentLimit
  }
  /** Least torque found not to settle: with more of it nothing does either. */
  let away = Infinity
  const settles = (torque: number): Warm | null => {
    if (torque >= away) return null
    motor.hold(torque)
    const found = balance((windingC, frameC) => {
      motor.at(windingC, frameC)
      return motor.left(drive.speed, drive.amps, windingC, frameC)
    }, coldC)
    if (!found || motor.at(found.windingC, found.frameC)) {
      away = torque
      return null
    }
    return { ...found, switchC: feltC(cutoff, found.windingC, found.frameC) }
  }

  /** What the cold motor comes to, just looked at: spindle and motor speed, rad/s. */
  function coldDrive(over: boolean, torque: number): { limit: DriveLimit; spindle: number; motor: number } {
    if (over || plant.slip) return driveAt(plant, asked, torque, coldC, coldC)
    const spindle = drive.speed / ratio
    const stands = drive.short && Math.tanh(spindle) < STALL
    return { spindle, motor: drive.speed, limit: stands ? 'stall' : drive.short ? 'voltage' : 'none' }
  }

  /** When the current limit was reached in the last step, s. */
  function gaveWay(): number {
    const at = new Float64Array(3)
    const over = (t: number) => {
      runs.interpolate(t, at)
      motor.at(at[0], at[1])
      return drive.amps - controller.currentLimit
    }
    const before = over(runs.tOld)
    if (before >= 0) return runs.tOld
    return root(over, runs.tOld, runs.t, before, over(runs.t), 1e-6 * (runs.t - runs.tOld))
  }

  /** When the winding passed its class in the last step, up to `until`, s; Infinity: not in it. From cold it only warms. */
  function classPassed(stepper: Stepper, until: number): number {
    const over = (t: number) => stepper.value(0, t) - limitC
    const [before, after] = [over(stepper.tOld), over(until)]
    if (before >= 0 || after < 0) return Infinity
    return root(over, stepper.tOld, until, before, after, 1e-12 * (stepper.t - stepper.tOld))
  }

  /** In sight of its speed, with amps to spare. */
  const cameUp = ([windingC, frameC, , w]: Float64Array) =>
    w > asked / 2 && drive.driven(asked, w, windingC, frameC) < controller.currentLimit

  function point(torque: number): MapPoint {
    const over = overAmps(torque) > 0
    const running = drive.speed
    const atShaft = drive.atShaft
    const cold = coldDrive(over, torque)
    const settled = over ? null : settles(torque)
    let classAt = Infinity
    let limitedAt = Infinity
    const end = (seconds: number, ends: MapEnd): MapPoint => ({
      seconds,
      ends,
      classAt,
      limitedAt,
      settled,
      speed: cold.spindle,
      limit: cold.limit,
    })
    if (fitted && coldC >= cutoff.opensAt) return end(0, 'opens')
    // Running up at one go where it is soon over; else by the ramp, or by what amps there are.
    const up = over ? null : runUp(plant, running, atShaft, motor.inertia, motor.left)
    // A long run-up may be too much for a motor that would bear the speed once it has it.
    const stays =
      up !== null &&
      settled !== null &&
      settled.windingC < DESTROYED_C &&
      !(fitted && settled.switchC >= cutoff.opensAt)
    if (stays && settled.windingC <= limitC) return end(Infinity, null)

    motor.hold(torque)
    let t = 0
    const y = Float64Array.of(coldC, coldC, coldC, 0)
    let ramping = false
    let atLimit = over
    let comingUp = !over
    if (over) {
      limitedAt = 0
      if (cold.limit === 'stall') y[3] = cold.motor
    } else {
      motor.ramp(up ? 0 : controller.ramp)
      if (up) y.set([up.windingC, up.frameC, up.switchC])
      t = up?.seconds ?? 0
      atLimit = motor.look(coldC, coldC)
      ramping = !up && !atLimit
      if (atLimit) {
        motor.hold(torque)
        limitedAt = 0
      }
    }
    for (let turn = 0; turn < TURNS; turn++) {
      const stepper = atLimit ? gives : runs
      const until = ramping ? rampEnds : MONTH
      const watch = fitted ? [destroyed, opens] : [destroyed, passes]
      const firstStep = ramping ? rampEnds : atLimit && cold.limit !== 'stall' ? FIRST_SLIP : FIRST_STEP
      stepper.start(t, atLimit ? y : y.subarray(0, 3), firstStep)
      for (;;) {
        const move = advance(stepper, until, watch)
        if (move.kind === 'failed') return end(Infinity, null)
        // It only warms: where the step ends short of the class it was not passed in it.
        if (classAt === Infinity && stepper.y[0] >= limitC)
          classAt = classPassed(stepper, move.kind === 'crossing' ? move.t : stepper.t)
        if (stays && classAt < Infinity) return end(Infinity, null)
        const gone = !atLimit && !ramping && motor.look(stepper.y[0], stepper.y[1]) ? gaveWay() : Infinity
        if (gone <= (move.kind === 'crossing' ? move.t : stepper.t)) {
          t = gone
          stepper.interpolate(t, y.subarray(0, 3))
          motor.hold(torque)
          motor.look(y[0], y[1])
          y[3] = drive.speed
          atLimit = true
          comingUp = false
          limitedAt = Math.min(limitedAt, t)
          break
        }
        if (move.kind === 'step') {
          // Held up by the amps it has come to its speed once the volts drive fewer.
          if (!(atLimit && comingUp && cameUp(stepper.y))) continue
          t = stepper.t
          y.set(stepper.y)
          atLimit = false
          limitedAt = Infinity
          motor.hold(torque)
          break
        }
        if (move.kind === 'edge') {
          if (!ramping) return end(Infinity, null)
          t = rampEnds
          y.set(stepper.y)
          ramping = false
          motor.hold(torque)
          break
        }
        const what = watch[move.index]
        if (what === destroyed) return end(move.t, 'burns')
        if (what === opens) return end(move.t, 'opens')
        classAt = move.t
        return end(move.t, 'class')
      }
    }
    return end(Infinity, null)
  }

  return {
    point,
    settles,
    overAmps,
    short(torque) {
      overAmps(torque)
      return drive.short
    },
    get evaluations() {
      return motor.evaluations
    },
  }
}
