// The card to pin on the machine: every limit at its careful end, rounded to the careful side.
import { type Dimension, fromUnit, toUnit } from '../quantity.ts'
import type { LimitsStudy } from '../studies/limits.ts'
import { cutWords } from './limits.ts'
import { duration, told } from './number.ts'
import { type Units, unitFor } from './units.ts'

interface CardRow {
  readonly name: string
  readonly value: string
  /** When it holds, or what it goes with; '' where that is plain. */
  readonly about: string
}

export interface Card {
  readonly title: string
  readonly cut: string
  readonly rows: readonly CardRow[]
  readonly foot: string
}

type Side = 'down' | 'up'
const MINUTE = 60

const stepTo = (value: number, step: number, side: Side): number =>
  // A value that stands on a step to rounding stays there.
  step * (side === 'down' ? Math.floor(value / step + 1e-9) : Math.ceil(value / step - 1e-9))

/** A time a person keeps, on the careful side: to 5 s, from a minute to 10, from two to 30, then to a minute, to five. */
export function carefulTime(t: number, side: Side): string {
  const step =
    t < MINUTE ? 5 : t < 2 * MINUTE ? 10 : t < 10 * MINUTE ? 30 : t < 60 * MINUTE ? MINUTE : 5 * MINUTE
  return duration(stepTo(t, step, side))
}

/** A quantity to two digits on the careful side; temperatures to 1. */
export function carefully(value: number, dimension: Dimension, units: Units, side: Side): string {
  if (!(value > 0)) return told(0, dimension, units)
  const unit = unitFor(dimension, units)
  const shown = toUnit(value, unit)
  const step = dimension === 'temperature' ? 1 : 10 ** (Math.floor(Math.log10(shown)) - 1)
  return told(fromUnit(stepTo(shown, step, side), unit), dimension, units)
}

/** The lesser of what is likely and what is careful: of two readings the one that stops earlier. */
const lesser = (a: number | null, b: number | null): number | null =>
  a === null ? b : b === null ? a : Math.min(a, b)

function inTurns({ careful, cycleRest, phase, duty }: LimitsStudy): CardRow {
  const { work, rest, cold } = careful
  const name = 'On and off'
  const off = (seconds: number) => `${carefulTime(seconds, 'up')} off`
  const own = typeof rest === 'number' ? `${carefulTime(phase.seconds, 'down')} on, ${off(rest)}` : ''
  const idles = duty.phases.filter(({ speed }) => speed > 0).length > 1
  const among = idles ? 'the job’s other steps between' : ''
  const about = (...parts: readonly string[]) => parts.filter((part) => part !== '').join('; ')
  if (cold === null && rest === 'any') return { name, value: 'no rest needed', about: '' }
  if (typeof work === 'number' && cycleRest > 0)
    return {
      name,
      value: `${carefulTime(work, 'down')} on, ${off(cycleRest)}`,
      about: about(own && `or ${own}`, among),
    }
  if (own !== '') return { name, value: own, about: among }
  if (work === 'any' || rest === 'any') return { name, value: 'as in the job', about: '' }
  return { name, value: 'not in this cycle', about: 'however short the cut' }
}

function coolDown({ careful: { next } }: LimitsStudy): CardRow | null {
  if (next === null) return null
  const { run, standing, free } = next
  const before = `before another ${carefulTime(run, 'down')}`
  const name = 'Cool down'
  if (standing !== null)
    return {
      name,
      value: `${carefulTime(standing, 'up')} standing`,
      about: free === null ? before : `or ${carefulTime(free, 'up')} running free; ${before}`,
    }
  if (free !== null) return { name, value: `${carefulTime(free, 'up')} running free`, about: before }
  return { name, value: 'overnight', about: before }
}

function lowestSpeed({ careful: { lowest } }: LimitsStudy, units: Units): CardRow {
  const name = 'Lowest speed'
  if (lowest === null) return { name, value: 'none', about: 'this cut cannot be held all day at any speed' }
  if (lowest === 0) return { name, value: 'any', about: 'this cut can be held all day' }
  return {
    name,
    value: carefully(lowest, 'angular speed', units, 'up'),
    about: 'slower, this cut is not for all day',
  }
}

/** The card. Every number is the careful end: of what does harm the least, of what helps the most. */
export function limitsCard(title: string, study: LimitsStudy, units: Units): Card {
  const { careful, asGiven, phase } = study
  const { allDay, cold } = careful
  const amps = lesser(careful.amps, asGiven.amps)!
  // In a run from cold the winding is at its limit while the frame is still cool: the least of them all.
  const atClass = ({ cold: run }: typeof careful) => (run?.ends === 'class' ? run.frameC : null)
  const frames = [careful.frameC, asGiven.frameC, atClass(careful), atClass(asGiven)]
  const frame = frames.reduce(lesser, null) ?? careful.allDay.frameC
  const rows: readonly (CardRow | null)[] = [
    {
      name: 'All day',
      value:
        allDay.torque > 0
          ? `${carefully(allDay.torque, 'torque', units, 'down')} at ${told(phase.speed, 'angular speed', units)}`
          : 'nothing',
      about: `up to ${carefully(allDay.amps, 'current', units, 'down')} in a motor lead`,
    },
    {
      name: 'This cut, from cold',
      value: cold === null ? 'all day' : carefulTime(cold.seconds, 'down'),
      about: cold === null ? '' : 'then let it cool',
    },
    inTurns(study),
    lowestSpeed(study, units),
    coolDown(study),
    {
      name: 'Stop at',
      value: `${carefully(amps, 'current', units, 'down')} or ${carefully(frame, 'temperature', units, 'down')}`,
      about:
        'mean amps in a motor lead; frame in this cut, by a meter on the bare metal. Go by the clock, not by the hand',
    },
  ]
  return {
    title,
    cut: cutWords(study, units),
    rows: rows.filter((row) => row !== null),
    foot: 'Estimated, at the careful end: 9 in 10 such motors do better. Not a rating.',
  }
}
