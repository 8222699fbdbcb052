// Books each step of a run: rows for the recorder, sums over time, and states at asked moments.
import { evaluate, FLOWS, INSTANT, type Mode, type Plant, readings, STATE } from './plant.ts'
import { type Recorder, recorder } from './recorder.ts'
import { summit } from './solve/summit.ts'
import type { Stepper } from './solve/stepper.ts'
import { CHANNELS, type Peaks } from './trace.ts'
import type { Seen, Watch } from './watch.ts'

/** The three temperatures whose peaks are kept, in the order of PEAKS. */
const HOT = [STATE.windingC, STATE.frameC, STATE.switchC] as const

export interface Bookkeeper {
  /** Highest temperatures so far and when, exact within steps too. */
  readonly peaks: Peaks
  readonly sums: Float64Array
  readonly samples: readonly Float64Array[]
  readonly rows: Recorder
  /** Instants at which meters were read: each costs one evaluation of the plant. */
  readonly readings: number
  /** A segment begins at `start` (s of the job) in state y. */
  begin(start: number, y: Float64Array): void
  /** The last step, up to `local` (s of the segment) where the state is y. */
  step(local: number, y: Float64Array): void
}

/**
 * Books for a plant under a mode that the driver changes between segments. `wanted`: moments (s) to sample.
 * Unless `meters`, none is read: no rows and no sums.
 */
export function bookkeeper(
  plant: Plant,
  mode: Mode,
  stepper: Stepper,
  seconds: number,
  sums: Float64Array,
  wanted: readonly number[],
  meters: boolean,
  eye: Watch,
): Bookkeeper {
  const rows = recorder(seconds)
  const samples: Float64Array[] = []
  const middle = new Float64Array(plant.states)
  const rates = new Float64Array(plant.states)
  const channels = new Float64Array(CHANNELS.length)
  const seen: Seen = { t: 0, asked: 0, target: 0, speed: 0, spindle: 0, current: 0, windingC: 0 }
  let before = readings()
  const between = readings()
  let after = readings()
  let count = 0
  let start = 0

  const keep = (local: number, y: Float64Array, { instant }: typeof before) => {
    channels[0] = instant[INSTANT.asked]
    channels[1] = y[STATE.speed]
    channels[2] = y[STATE.current]
    channels[3] = instant[INSTANT.volts]
    channels[4] = instant[INSTANT.load]
    channels[5] = y[STATE.windingC]
    channels[6] = y[STATE.frameC]
    channels[7] = y[STATE.switchC]
    channels[8] = instant[INSTANT.spindle]
    channels[9] = mode.target
    seen.t = start + local
    seen.asked = instant[INSTANT.asked]
    seen.target = mode.target
    seen.speed = y[STATE.speed]
    seen.spindle = instant[INSTANT.spindle]
    seen.current = y[STATE.current]
    seen.windingC = y[STATE.windingC]
    eye.row(seen)
    rows.push(start + local, channels, sums)
  }
  const peaks = {
    windingC: { value: -Infinity, t: 0 },
    frameC: { value: -Infinity, t: 0 },
    switchC: { value: -Infinity, t: 0 },
  }
  const hottest = [peaks.windingC, peaks.frameC, peaks.switchC]
  const peak = (h: number, value: number, local: number) => {
    if (value > hottest[h].value) {
      hottest[h].value = value
      hottest[h].t = start + local
    }
  }
  const read = (local: number, y: Float64Array, into: typeof before) => {
    evaluate(plant, mode, local, y, rates, into)
    count++
  }

  return {
    peaks,
    sums,
    samples,
    rows,
    get readings() {
      return count
    },
    begin(at, y) {
      start = at
      if (meters) {
        read(0, y, before)
        keep(0, y, before)
      }
      for (let h = 0; h < HOT.length; h++) peak(h, y[HOT[h]], 0)
      while (samples.length < wanted.length && wanted[samples.length] <= at) samples.push(y.slice())
    },
    step(local, y) {
      while (samples.length < wanted.length && wanted[samples.length] <= start + local) {
        const state = new Float64Array(plant.states)
        stepper.interpolate(Math.max(stepper.tOld, wanted[samples.length] - start), state)
        samples.push(state)
      }
      for (let h = 0; h < HOT.length; h++) {
        const top = summit(stepper, HOT[h], local)
        if (top !== null) peak(h, stepper.value(HOT[h], top), top)
        peak(h, y[HOT[h]], local)
      }
      if (!meters) return
      const span = local - stepper.tOld
      const half = stepper.tOld + span / 2
      stepper.interpolate(half, middle)
      read(half, middle, between)
      read(local, y, after)
      // Simpson's parabola through the step's ends and middle, integrated half by half.
      const [f0, fm, f1] = [before.flows, between.flows, after.flows]
      for (let f = 0; f < FLOWS; f++) sums[f] += (span / 24) * (5 * f0[f] + 8 * fm[f] - f1[f])
      keep(half, middle, between)
      for (let f = 0; f < FLOWS; f++) sums[f] += (span / 24) * (5 * f1[f] + 8 * fm[f] - f0[f])
      keep(local, y, after)
      ;[before, after] = [after, before]
    },
  }
}
