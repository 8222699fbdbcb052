// The charts in sentences: what someone who cannot see them is told.
import { openSpells } from '../../sim/judge.ts'
import { clockTime, duration, told } from '../../sim/say/number.ts'
import { rowsFor } from './columns.ts'
import { endOf, type Shown } from './shown.ts'
import { exactClock } from './time.ts'
import type { View } from './view.ts'

/** A drive has settled this long after its ramp, s. */
const SETTLED = 1

/** "from 0:00 to 45:00" */
const part = ({ from, to }: View): string => `from ${exactClock(from)} to ${exactClock(to)}`

const each = (view: View, say: (variant: Shown) => string): string => view.variants.map(say).join('; ')

/** Least and greatest motor speed while driven and settled, rad/s; undefined where it is never driven. */
function drivenSpeeds({ trace }: Shown, from: number, to: number): readonly [number, number] | undefined {
  const { time, columns } = trace
  if (time.length === 0) return undefined
  const [first, last] = rowsFor(time, from, to)
  let since = time[first]
  let least = Number.POSITIVE_INFINITY
  let most = Number.NEGATIVE_INFINITY
  for (let row = first; row <= last; row++) {
    if (columns.target[row] <= 0 || columns.asked[row] !== columns.target[row]) since = time[row]
    else if (time[row] - since > SETTLED) {
      least = Math.min(least, columns.spindle[row])
      most = Math.max(most, columns.spindle[row])
    }
  }
  return most >= least ? [least, most] : undefined
}

const greatestIn = (
  time: Float64Array,
  column: Float64Array,
  from: number,
  to: number,
): { t: number; value: number } => {
  const [first, last] = time.length > 0 ? rowsFor(time, from, to) : [0, -1]
  let best = first
  for (let row = first; row <= last; row++) if (column[row] > column[best]) best = row
  return { t: time[best], value: column[best] }
}

/** "opens 23:40 and 46:00, recloses 37:40" or "the cutoff does not open". */
function switching({ trace }: Shown, from: number, to: number): string {
  const times = (kind: 'opens' | 'recloses') =>
    trace.marks
      .filter((mark) => mark.kind === kind && mark.t >= from && mark.t <= to)
      .map(({ t }) => clockTime(t))
  const said = (kind: 'opens' | 'recloses') => {
    const all = times(kind)
    if (all.length === 0) return []
    const list = all.length > 5 ? `${all.length} times` : all.join(all.length === 2 ? ' and ' : ', ')
    return [`${kind} ${all.length > 5 ? '' : 'at '}${list}`]
  }
  const both = [...said('opens'), ...said('recloses')]
  return both.length > 0 ? `the cutoff ${both.join(' and ')}` : 'the cutoff does not open'
}

/** ", the belt slips 3 times, first at 3:20", or nothing. */
function slipWords({ trace }: Shown, { from, to }: View): string {
  const times = trace.marks.flatMap((mark) =>
    mark.kind === 'belt slips' && mark.until >= from && mark.t <= to ? [mark.t] : [],
  )
  if (times.length === 0) return ''
  return times.length === 1
    ? `, the belt slips at ${clockTime(times[0])}`
    : `, the belt slips ${times.length} times, first at ${clockTime(times[0])}`
}

/** Speed in a sentence. */
export const speedWords = (view: View): string =>
  `Speed at the spindle ${part(view)}. ${each(view, (variant) => {
    const range = drivenSpeeds(variant, view.from, view.to)
    if (range === undefined) return `${variant.name}: not driven`
    const [least, most] = range.map((speed) => told(Math.max(0, speed), 'angular speed', view.units))
    const slips = slipWords(variant, view)
    return `${variant.name}: ${least === most ? least : `${least} to ${most}`} while driven${slips}`
  })}.`

/** Current in a sentence. */
export const currentWords = (view: View): string =>
  `Motor current ${part(view)}. ${each(view, ({ name, trace }) => {
    const { value, t } = greatestIn(trace.time, trace.columns.current, view.from, view.to)
    return `${name}: at most ${told(value, 'current', view.units)}, at ${clockTime(t)}`
  })}. The controller gives at most ${told(view.active.job.parts.controller.currentLimit, 'current', view.units)}.`

/** Temperature in a sentence. */
export const temperatureWords = (view: View): string =>
  `Temperature of the cutoff switch ${part(view)}. ${each(view, (variant) => {
    const { time, columns } = variant.trace
    const { value, t } = greatestIn(time, columns.switchC, view.from, view.to)
    return `${variant.name}: at most ${told(value, 'temperature', view.units)}, at ${clockTime(t)}; ${switching(variant, view.from, view.to)}`
  })}.`

/** The whole job in a sentence. */
export const ribbonWords = (view: View): string =>
  `The whole job of ${duration(view.end)}. ${each(view, (variant) => {
    const spells = openSpells(variant.trace.marks, variant.job.duty.seconds)
    const seconds = spells.reduce((sum, [from, until]) => sum + until - from, 0)
    const early =
      variant.trace.ending.kind === 'finished' ? '' : `, ends early at ${clockTime(endOf(variant))}`
    const times = spells.length === 1 ? 'once' : `${spells.length} times`
    const stopped =
      spells.length === 0 ? 'never stopped' : `stopped ${times} by the cutoff, ${duration(seconds)} in all`
    return `${variant.name}: ${stopped}${early}`
  })}.`
