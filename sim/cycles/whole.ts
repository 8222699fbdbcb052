// The trace of a run by turns: turns that were run row for row, those between filled in.
import type { Job } from '../job.ts'
import { FLOWS } from '../plant.ts'
import { MOST_ROWS, recorder } from '../recorder.ts'
import { CHANNELS, type Checkpoint, SUMS, type Trace } from '../trace.ts'
import { watched } from '../watch.ts'
import { blend } from './blend.ts'
import { type Gap, type Skipped, skipped } from './gap.ts'
import type { CycleRun } from './summed.ts'
import { inJob, withHeat } from './turn.ts'

/**
 * The whole trace. Where its rows would not fit anyway, a skipped turn is one pair of rows, its least and its most.
 * Any turn's exact rows: `run` from `startOf` that turn; those in `exact`, by number, take the place of the mixture.
 */
export function wholeTrace(job: Job, run: CycleRun, exact: ReadonlyMap<number, Trace> = new Map()): Trace {
  const { computed, tail, seconds } = run
  const book = recorder(run.reached)
  const sums = new Float64Array(FLOWS)
  const channels = new Float64Array(CHANNELS.length)
  const own = new Float64Array(FLOWS)
  const total = new Float64Array(FLOWS)
  const checkpoints: Checkpoint[] = []
  const coarse =
    computed.reduce(
      (n, { before }) => n + (before ? (before.turns - 1) * before.from.trace.time.length : 0),
      0,
    ) > MOST_ROWS
  let driven = false

  const push = (t: number, next: number) => {
    // Going on or off is an edge: something is asked on one side of it only.
    if (driven !== channels[0] > 0 || (!driven && next > 0)) {
      book.edge()
      driven = channels[0] > 0 || next > 0
    }
    for (let f = 0; f < sums.length; f++) total[f] = sums[f] + own[f]
    book.push(t, channels, total)
  }

  const add = () => {
    for (let f = 0; f < sums.length; f++) sums[f] += own[f]
  }
  const rows = ({ time, columns }: Trace, t: number) => {
    const seen = CHANNELS.map((name) => columns[name])
    const summed = SUMS.map((name) => columns[name])
    for (let row = 0; row < time.length; row++) {
      for (let c = 0; c < seen.length; c++) channels[c] = seen[c][row]
      for (let f = 0; f < sums.length; f++) own[f] = summed[f][row]
      push(t + time[row], columns.asked[row + 1] ?? 0)
    }
    add()
  }

  const between = (gap: Gap, first: number) => {
    const { time, row } = blend(gap)
    const { asked } = gap.from.trace.columns
    const least = channels.slice()
    const most = channels.slice()
    skipped(gap, (turn: Skipped) => {
      const t = (first + turn.turn) * seconds
      const known = exact.get(first + turn.turn)
      if (known) {
        rows(known, 0)
        return true
      }
      if (!coarse) {
        for (let r = 0; r < time.length; r++) {
          row(r, turn, channels, own)
          push(t + time[r], asked[r + 1] ?? 0)
        }
      } else {
        least.fill(Infinity)
        most.fill(-Infinity)
        for (let r = 0; r < time.length; r++) {
          row(r, turn, channels, own)
          for (let c = 0; c < channels.length; c++) {
            least[c] = Math.min(least[c], channels[c])
            most[c] = Math.max(most[c], channels[c])
          }
        }
        book.push(t, least, sums)
        for (let f = 0; f < sums.length; f++) total[f] = sums[f] + own[f]
        book.push(t + seconds, most, total)
      }
      add()
      return true
    })
  }

  for (const { n, t, turn, before } of computed) {
    if (before) between(before, n - before.turns)
    checkpoints.push({ ...inJob(turn.start, n, t), sums: sums.slice() })
    rows(turn.trace, t)
  }
  if (tail) {
    const start = sums.slice()
    rows(tail, 0)
    const shift = (point: Checkpoint) => ({ ...point, sums: point.sums.map((sum, f) => sum + start[f]) })
    checkpoints.push(...tail.checkpoints.map(shift))
  }
  const { time, columns, bucket } = book.finish()
  return {
    time,
    columns,
    bucket: coarse ? Math.max(bucket, seconds) : bucket,
    peaks: run.peaks,
    ...watched(job, time, columns, run.switching),
    ending: run.ending,
    effort: run.effort,
    checkpoints,
  }
}

/** Start of turn n, in the job's time; its sums are nothing. Null for a turn of the tail. */
export function startOf({ computed, seconds }: CycleRun, n: number): Checkpoint | null {
  const next = computed.find((stop) => stop.n >= n)
  if (!next) return null
  if (next.n === n || !next.before) return inJob(next.turn.start, n, n * seconds)
  const { before } = next
  const wanted = n - (next.n - before.turns)
  let heat = new Float64Array(0)
  skipped(before, (turn) => {
    if (turn.turn === wanted) heat = turn.heat.slice()
    return turn.turn < wanted
  })
  return inJob(withHeat(before.from.end, heat), n, n * seconds)
}
