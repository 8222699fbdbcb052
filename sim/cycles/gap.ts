// The turns between two that were run: where each starts, how hot it gets, and how far it lies between the two.
import { type Defect, type Model, reach, walk } from './model.ts'
import { HEAT, heatOf, type Turn } from './turn.ts'

/** Skipped turns: `from` and `to` were run, `turns` apart; the model at `from`, and its defect at `to`, tell the rest. */
export interface Gap {
  readonly from: Turn
  readonly to: Turn
  readonly turns: number
  readonly model: Model
  readonly defect: Defect
}

/** A skipped turn, in live buffers. */
export interface Skipped {
  /** Its number after `from`: 1 … turns − 1. */
  turn: number
  /** 0: like `from`, 1: like `to`; its rows are a mixture of theirs. */
  share: number
  /** Temperatures at its start, °C, and its highest. */
  readonly heat: Float64Array
  readonly peaks: Float64Array
  /** How far its temperatures lie off the mixture at its start and at its end, K. */
  readonly off: Float64Array
  readonly offEnd: Float64Array
}

/** How temperatures run together within a turn: what a fading wants to know, `through` (a share) of the way. */
export interface Fading {
  readonly through: number
  /** What is left of the winding's and of the switch's own start by then. */
  readonly winding: number
  readonly switch: number
}

export function fadings({ model: { slope } }: Gap, through: number): Fading {
  const left = (h: number) => Math.min(1, Math.max(0, slope[(HEAT + 1) * h])) ** through
  return { through, winding: left(0), switch: left(HEAT - 1) }
}

/** What the switch listens to. */
const heard = (share: number, winding: number, frame: number): number => share * winding + (1 - share) * frame

/**
 * How far a skipped turn lies off the mixture at a moment of it, K: the frame changes evenly, the winding draws to the
 * frame and the switch to what it listens to, each at its own rate; what then is missing at the end, evenly too.
 */
export function offAt(
  turn: Skipped,
  now: Fading,
  end: Fading,
  windingShare: number,
  out: Float64Array,
): void {
  const { off, offEnd } = turn
  const { through } = now
  const frame = off[1] + through * (offEnd[1] - off[1])
  const apart = off[0] - off[1]
  const winding = frame + apart * now.winding + through * (offEnd[0] - offEnd[1] - apart * end.winding)
  const late = off[2] - heard(windingShare, off[0], off[1])
  const missing = offEnd[2] - heard(windingShare, offEnd[0], offEnd[1]) - late * end.switch
  out[0] = winding
  out[1] = frame
  out[2] = heard(windingShare, winding, frame) + late * now.switch + through * missing
}

/** Turns visited between two breaths: some ten milliseconds of work. */
const BREATH = 5000

/** Visits the skipped turns in order, as long as `visit` answers true; yields now and then, to let others speak. */
export function* visiting(gap: Gap, visit: (turn: Skipped) => boolean): Generator<void, void> {
  const { from, to, turns, model, defect } = gap
  const a = heatOf(from.start.states)
  const b = heatOf(to.start.states)
  const aEnd = heatOf(from.end.states)
  const bEnd = heatOf(to.end.states)
  const whole = reach(a, b) ** 2
  const fresh = () => new Float64Array(HEAT)
  const [heat, end, peaks, off, offEnd] = [fresh(), fresh(), fresh(), fresh(), fresh()]
  const now: Skipped = { turn: 0, share: 0, heat, peaks, off, offEnd }
  const fading = [...from.when].map((through) => fadings(gap, through))
  const last = fadings(gap, 1)
  const more = fresh()
  let going = true
  const look = (next: number, z: Float64Array): boolean => {
    heat.set(end)
    end.set(z)
    now.turn = next - 1
    if (now.turn === 0) return true
    const along = (heat[0] - a[0]) * (b[0] - a[0]) + (heat[1] - a[1]) * (b[1] - a[1])
    const share = whole > 0 ? Math.min(1, Math.max(0, along / whole)) : now.turn / turns
    now.share = share
    for (let h = 0; h < peaks.length; h++) {
      off[h] = heat[h] - a[h] - share * (b[h] - a[h])
      offEnd[h] = end[h] - aEnd[h] - share * (bEnd[h] - aEnd[h])
    }
    for (let h = 0; h < peaks.length; h++) {
      offAt(now, fading[h], last, model.windingShare, more)
      peaks[h] = from.peaks[h] + share * (to.peaks[h] - from.peaks[h]) + more[h]
    }
    going = visit(now)
    return going
  }
  let z = model.at
  for (let done = 0; going && done < turns; done += BREATH) {
    z = walk(model, Math.min(turns, done + BREATH), defect, look, done, z)
    yield
  }
}

/** Visits them without a breath: where little is done with each. */
export function skipped(gap: Gap, visit: (turn: Skipped) => boolean): void {
  const turns = visiting(gap, visit)
  while (!turns.next().done);
}
