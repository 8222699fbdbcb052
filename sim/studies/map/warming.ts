// A motor held at one spindle speed from standing and cold: how long until its cutoff opens, at any torque.
import { classLimitC } from '../../handbook/insulation.ts'
import { type Air, airAt, type Heat } from '../../parts/heat.ts'
import { senseRate } from '../../parts/cutoff.ts'
import { constantAt } from '../../parts/winding.ts'
import { assemble, type Parts } from '../../plant.ts'
import { DESTROYED_C } from '../../run.ts'
import { advance, type Crossing } from '../../solve/advance.ts'
import { root } from '../../solve/root.ts'
import { rosenbrock } from '../../solve/rosenbrock.ts'
import type { Stepper } from '../../solve/stepper.ts'
import { balance, type Left, leftOver } from '../../steady/balance.ts'
import { type DriveLimit, driveAt } from '../../steady/drive.ts'
import { feltC, lumpiness, type Warm } from '../../steady/operating.ts'
import { warmingDrive } from './drive.ts'

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
  /** When the current limit is reached and the speed goes, s; 0: from the start; Infinity: never. */
  readonly limitedAt: number
  /** Where it would settle with no cutoff, °C; null: it does not, or not at its speed. */
  readonly settled: Warm | null
}

/** A motor at one asked speed, to be asked torque after torque. */
export interface Warming {
  point(torque: number): MapPoint
  /** Where it settles at its speed within the current limit, °C; null: it does not. */
  settles(torque: number): Warm | null
  /** Amps over the current limit, cold; below 0: within. */
  overAmps(torque: number): number
  /** True where cold volts do not reach the asked speed. */
  short(torque: number): boolean
  /** Evaluations of the drive at its temperatures so far: what a map costs. */
  readonly evaluations: number
}

const TOLERANCE = 1e-4
const CLOSE_K = 1e-3
const TYPICAL = Float64Array.of(50, 50, 50, 10)
const THREE = { relative: TOLERANCE, absolute: Float64Array.of(CLOSE_K, CLOSE_K, CLOSE_K) }
const FOUR = { relative: TOLERANCE, absolute: Float64Array.of(CLOSE_K, CLOSE_K, CLOSE_K, 0.01) }
/** First steps, s, of a warming and of a speed that gives way. */
const FIRST_STEP = 5
const FIRST_SLIP = 0.01
/** Nothing that happens later than a month is looked for, s. */
const MONTH = 30 * 86400
/** Times the speed may give way and come back; more is to and fro about the limit. */
const TURNS = 20
/** A cut that has let go: under this share of its torque (steady/drive.ts). */
const STALL = 0.95

/** The parts held at spindle speed `speed` (rad/s), with another cooling if one is named, from `parts.heat.air`. */
export function warming(parts: Parts, speed: number, cooling?: Heat['cooling']): Warming {
  const plant = assemble(cooling ? { ...parts, heat: { ...parts.heat, cooling } } : parts)
  const { winding, rotor, heat, cutoff, controller, machine, ratio } = plant
  const asked = speed * ratio
  const inertia = rotor.inertia + rotor.flywheel + machine.inertia / (ratio * ratio)
  const most = controller.currentLimit
  const coldC = heat.air
  const limitC = classLimitC(winding.insulation)
  const fitted = cutoff.fitted !== 'none'
  const rampEnds = asked / controller.ramp
  const air: Air = { windingToAir: 0, frameToAir: 0 }
  const drive = warmingDrive(plant)
  let asks = 0
  // How the run-up of this moment goes: asked speed grows by `slope`, and inertia takes `extra` N·m.
  let slope = 0
  let extra = 0

  const left = (motor: number, amps: number, windingC: number, frameC: number): Left => {
    airAt(heat, plant.fan, motor, air)
    const running = { speed: motor, amps, formFactorSquared: lumpiness(plant, amps, motor) }
    return leftOver(winding, rotor, heat, air, heat.air, running, windingC, frameC)
  }
  const find = (at: number, windingC: number, frameC: number) => {
    asks++
    drive.find(at, extra, windingC, frameC)
  }
  const heats = (y: Float64Array, motor: number, amps: number, out: Float64Array) => {
    const [w, f] = left(motor, amps, y[0], y[1])
    out[0] = w / heat.windingCapacity
    out[1] = f / heat.frameCapacity
    out[2] = senseRate(cutoff, y[0], y[1], y[2])
  }
  /** At the speed that amps and volts give. */
  const runs = rosenbrock(
    {
      size: 3,
      typical: TYPICAL.subarray(0, 3),
      get autonomous() {
        return slope === 0
      },
      rates(t, y, out) {
        find(slope === 0 ? asked : slope * t, y[0], y[1])
        heats(y, drive.speed, drive.amps, out)
      },
    },
    THREE,
  )
  /** At the current limit: the speed is what is left of the torque once inertia has had its say. */
  const gives = rosenbrock(
    {
      size: 4,
      typical: TYPICAL,
      autonomous: true,
      rates(_, y, out) {
        asks++
        drive.load(y[3])
        heats(y, y[3], most, out)
        out[3] = (constantAt(winding, y[1]) * most - drive.atShaft) / inertia
      },
    },
    FOUR,
  )

  const begin = (torque: number) => {
    drive.torque = torque
    drive.speed = asked
    slope = 0
    extra = 0
  }
  const settles = (torque: number): Warm | null => {
    begin(torque)
    const found = balance((windingC, frameC) => {
      find(asked, windingC, frameC)
      return left(drive.speed, drive.amps, windingC, frameC)
    }, coldC)
    if (!found) return null
    find(asked, found.windingC, found.frameC)
    return drive.amps > most ? null : { ...found, switchC: feltC(cutoff, found.windingC, found.frameC) }
  }
  const overAmps = (torque: number): number => {
    begin(torque)
    find(asked, coldC, coldC)
    return drive.amps - most
  }

  const destroyed: Crossing = { state: 0, level: DESTROYED_C, direction: 1 }
  const opens: Crossing = { state: 2, level: cutoff.opensAt, direction: 1 }
  const passes: Crossing = { state: 0, level: limitC, direction: 1 }

  function point(torque: number): MapPoint {
    const over = overAmps(torque)
    const running = drive.speed
    let { limit, spindle } = coldDrive(over, torque)
    const settled = over > 0 ? null : settles(torque)
    const found = { speed: spindle, limit, settled }
    const stays = settled !== null && settled.windingC < DESTROYED_C && !(fitted && settled.switchC >= cutoff.opensAt)
    if (fitted && coldC >= cutoff.opensAt)
      return { ...found, seconds: 0, ends: 'opens', classAt: Infinity, limitedAt: Infinity }
    if (stays && settled.windingC <= limitC)
      return { ...found, seconds: Infinity, ends: null, classAt: Infinity, limitedAt: Infinity }

    let classAt = Infinity
    let limitedAt = Infinity
    const end = (seconds: number, ends: MapEnd): MapPoint => ({ ...found, seconds, ends, classAt, limitedAt })
    begin(torque)
    let t = 0
    let y = Float64Array.of(coldC, coldC, coldC)
    // Running up: by the ramp where the amps allow it, else by what amps there are.
    extra = inertia * controller.ramp
    find(asked, coldC, coldC)
    let atLimit = drive.amps > most
    let w = 0
    if (!atLimit) slope = controller.ramp
    else if (over > 0) limitedAt = 0
    for (let turn = 0; turn < TURNS; turn++) {
      const stepper = atLimit ? gives : runs
      const ramping = slope !== 0
      const until = ramping ? rampEnds : MONTH
      if (atLimit) stepper.start(t, Float64Array.of(y[0], y[1], y[2], w), FIRST_SLIP)
      else stepper.start(t, y, ramping ? rampEnds : FIRST_STEP)
      const back: Crossing = { state: 3, level: running, direction: 1 }
      for (;;) {
        const watch = [destroyed, ...(fitted ? [opens] : []), ...(classAt < Infinity ? [] : [passes]), ...(atLimit ? [back] : [])]
        const move = advance(stepper, until, watch)
        const gone = move.kind === 'failed' ? Infinity : atLimit || ramping ? Infinity : gaveWay(stepper)
        const now = move.kind === 'crossing' ? move.t : stepper.t
        if (gone < now) {
          t = gone
          stepper.interpolate(t, y)
          find(asked, y[0], y[1])
          w = drive.speed
          atLimit = true
          limitedAt = Math.min(limitedAt, t)
          break
        }
        if (move.kind === 'failed') return end(Infinity, null)
        if (move.kind === 'step') continue
        if (move.kind === 'edge') {
          if (!ramping) return end(Infinity, null)
          t = rampEnds
          y.set(stepper.y)
          slope = 0
          extra = 0
          break
        }
        const what = watch[move.index]
        if (what === destroyed) return end(move.t, 'burns')
        if (what === opens) return end(move.t, 'opens')
        if (what === back) {
          t = move.t
          y = move.y.slice(0, 3)
          atLimit = false
          drive.speed = running
          extra = 0
          break
        }
        classAt = move.t
        if (!fitted) return end(move.t, 'class')
        if (stays) return end(Infinity, null)
        stepper.start(move.t, move.y, Math.max(stepper.nextStep, FIRST_SLIP))
      }
    }
    return end(Infinity, null)
  }

  /** When the current limit was reached in the last step, s; Infinity: not yet. */
  function gaveWay(stepper: Stepper): number {
    const spare = (y: Float64Array) => {
      find(asked, y[0], y[1])
      return drive.amps - most
    }
    const atEnd = spare(stepper.y)
    if (!(atEnd > 0)) return Infinity
    const at = new Float64Array(3)
    const over = (t: number) => {
      stepper.interpolate(t, at)
      return spare(at)
    }
    const atStart = over(stepper.tOld)
    if (atStart >= 0) return stepper.tOld
    return root(over, stepper.tOld, stepper.t, atStart, atEnd, 1e-9 * (stepper.t - stepper.tOld))
  }

  /** What the cold motor comes to: by the quick drive where amps allow it. */
  function coldDrive(over: number, torque: number): { limit: DriveLimit; spindle: number } {
    if (over > 0 || plant.slip) return driveAt(plant, asked, torque, coldC, coldC)
    const spindle = drive.speed / ratio
    const stands = drive.short && Math.tanh(spindle) < STALL
    return { spindle, limit: stands ? 'stall' : drive.short ? 'voltage' : 'none' }
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
      return asks
    },
  }
}
