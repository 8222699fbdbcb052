// The drive while it warms: speed and amps at temperatures that are on their way, found from the ones before.
import { slipCapacity } from '../../belting/slip.ts'
import { wish } from '../../parts/controller.ts'
import { ceiling } from '../../parts/supply.ts'
import { brushOhms, brushVolts, constantAt, resistanceAt } from '../../parts/winding.ts'
import type { Plant } from '../../plant.ts'

/** A drive that holds a torque; what `find` and `load` found last stands in it. */
export interface WarmingDrive {
  /** Torque of the cut held at the spindle, N·m. */
  torque: number
  /** Motor speed, rad/s, and amps: as much as it takes, whatever the current limit. */
  speed: number
  amps: number
  /** The supply has fewer volts than the controller wishes for. */
  short: boolean
  /** Torque at the motor's shaft, N·m, its own friction with it, at the speed last looked at. */
  atShaft: number
  /** Speed and amps asked for motor speed `asked` (rad/s), with `extra` N·m more at the shaft, at temperatures in °C. */
  find(asked: number, extra: number, windingC: number, frameC: number): void
  /** The torque at the shaft at motor speed `w`, rad/s. */
  load(w: number): void
  /** Amps that the volts drive at motor speed `w`, rad/s, which need not be the one they settle at. */
  driven(asked: number, w: number, windingC: number, frameC: number): number
  /** How the speed last found, rad/s, and its amps change with each kelvin of winding and frame. Written anew each time. */
  perKelvin(): PerKelvin
  /** How fast the speed last found changes, rad/s², while temperatures rise by so much a second, K/s. */
  drift(windingRate: number, frameRate: number): number
}

export interface PerKelvin {
  speedByWinding: number
  speedByFrame: number
  ampsByWinding: number
  ampsByFrame: number
}

/** Newton's rounds at most; a move of less than this, rad/s and share, is the last: what is left goes by its square. */
const ROUNDS = 60
const CLOSE = 1e-6
/** Speeds below which dry friction and drag fade out, rad/s (rotor.ts, machine.ts). */
const FADES = 0.5

/**
 * The steady drive of a plant, as `driveAt` has it but for the current limit, quick enough to be asked at every
 * evaluation: Newton's method from the speed before, kept in a bracket. A belt that cannot carry the load lets go.
 */
export function warmingDrive(plant: Plant): WarmingDrive {
  const { supply, controller, winding, rotor, machine, ratio, belt, slip } = plant
  const through = 1 / (ratio * belt.efficiency)
  const feedback = controller.holds === 'speed feedback'
  // What the last speed was found with: N·m for each rad/s more, volts lost for each rad/s and for each amp more.
  const at = { steepness: 0.5, fall: 0.5, perAmp: 0.5, constant: 0.5 }
  const perKelvinR = resistanceAt(winding, 1) - resistanceAt(winding, 0)
  const perKelvinK = constantAt(winding, 1) - constantAt(winding, 0)

  const per: PerKelvin = { speedByWinding: 0.5, speedByFrame: 0.5, ampsByWinding: 0.5, ampsByFrame: 0.5 }

  const drive: WarmingDrive = {
    torque: 0,
    speed: 0,
    amps: 0,
    short: false,
    atShaft: 0,
    load(w) {
      const spindle = w / ratio
      const cut = Math.tanh(spindle)
      const drags = Math.tanh(spindle / FADES)
      let load = drive.torque * cut + machine.drag * drags + machine.windage * spindle
      let slope =
        drive.torque * (1 - cut * cut) + (machine.drag / FADES) * (1 - drags * drags) + machine.windage
      if (slip) {
        const most = slipCapacity(slip, w)
        if (load > most) {
          load = most
          slope = 0
        }
      }
      const rubs = Math.tanh(w / FADES)
      drive.atShaft = load * through + rotor.dryFriction * rubs + rotor.windage * w
      at.steepness =
        (slope * through) / ratio + (rotor.dryFriction / FADES) * (1 - rubs * rubs) + rotor.windage
    },
    find(asked, extra, windingC, frameC) {
      const resistance = resistanceAt(winding, windingC)
      const constant = constantAt(winding, frameC)
      at.constant = constant
      const highest = feedback ? asked : supply.volts / constant + 1
      let low = 0
      let high = highest
      let w = Math.min(highest, drive.speed > 0 ? drive.speed : asked)
      for (let n = 0; n < ROUNDS; n++) {
        drive.load(w)
        const i = (drive.atShaft + extra) / constant
        const perSpeed = at.steepness / constant
        const most = ceiling(supply, i)
        const wished = feedback
          ? Infinity
          : wish(
              controller,
              plant.gains,
              asked,
              0,
              i,
              0,
              winding.constant,
              winding.resistance,
              winding.brushDrop,
            )
        const short = wished >= most
        const volts = short ? most : wished
        const brushes = brushVolts(winding, i)
        const spare = volts - resistance * i - constant * w - brushes
        drive.amps = i
        drive.speed = w
        drive.short = short && w < asked
        // Volts given grow with the amps by so much.
        const given = short
          ? -supply.resistance
          : controller.holds === 'sag compensation'
            ? controller.compensation * winding.resistance
            : 0
        at.perAmp = resistance - given + brushOhms(winding, brushes)
        at.fall = at.perAmp * perSpeed + constant
        if (spare === 0 || (spare > 0 && w === highest)) return
        const by = spare / at.fall
        if (Math.abs(by) <= CLOSE * (1 + w)) {
          drive.speed = Math.min(highest, Math.max(0, w + by))
          drive.amps = i + perSpeed * by
          drive.atShaft += at.steepness * by
          return
        }
        if (spare > 0) low = w
        else high = w
        let next = w + by
        if (!(next > low && next < high)) next = spare > 0 && next >= high ? high : (low + high) / 2
        w = next
      }
    },
    driven(asked, w, windingC, frameC) {
      const resistance = resistanceAt(winding, windingC)
      const back = constantAt(winding, frameC) * w + winding.brushDrop
      const most = (supply.volts - back) / (resistance + supply.resistance)
      if (feedback) return Math.max(0, most)
      const compensated = controller.holds === 'sag compensation'
      const made = compensated ? controller.compensation * winding.resistance : 0
      const wished = winding.constant * asked + (compensated ? winding.brushDrop : 0) - back
      // More made up for than is lost: the volts run up to what there is.
      const driven = resistance > made ? wished / (resistance - made) : wished > 0 ? Infinity : 0
      return Math.max(0, Math.min(most, driven))
    },
    perKelvin() {
      const { amps, speed } = drive
      const held = feedback && !drive.short
      per.speedByWinding = held ? 0 : (-perKelvinR * amps) / at.fall
      per.speedByFrame = held ? 0 : (-perKelvinK * (speed - (at.perAmp * amps) / at.constant)) / at.fall
      const perSpeed = at.steepness / at.constant
      per.ampsByWinding = perSpeed * per.speedByWinding
      per.ampsByFrame = perSpeed * per.speedByFrame - (perKelvinK * amps) / at.constant
      return per
    },
    drift(windingRate, frameRate) {
      const { speedByWinding, speedByFrame } = drive.perKelvin()
      return speedByWinding * windingRate + speedByFrame * frameRate
    },
  }
  return drive
}
