// The five numbers beside the answer, each with its limit; and what limits the job.
import type { Job } from '../job.ts'
import type { Figures } from '../judge.ts'
import { duration, percent, type Shown, show, told } from './number.ts'
import type { Units } from './units.ts'

export interface KeyNumber {
  readonly label: string
  readonly number: string
  readonly unit: string
  /** Its limit, or what it means. */
  readonly note: string
  readonly bad: boolean
}

const openingNumber = (
  job: Job,
  { firstOpening, timesOpen, cutoffMargin, hottestSwitchC }: Figures,
  units: Units,
): KeyNumber => {
  const label = 'Cutoff opens at'
  if (job.parts.cutoff.fitted === 'none')
    return { label, number: 'none fitted', unit: '', note: 'nothing stops the heat', bad: true }
  if (firstOpening)
    return {
      label,
      number: duration(firstOpening.t),
      unit: '',
      note: timesOpen === 1 ? 'once in the job' : `${timesOpen} times in the job`,
      bad: true,
    }
  const left = told(cutoffMargin ?? 0, 'temperature difference', units)
  return {
    label,
    number: 'never',
    unit: '',
    note: `gets to ${told(hottestSwitchC.value, 'temperature', units)}, ${left} short of opening`,
    bad: false,
  }
}

const openForNumber = (job: Job, { firstOpening, firstOpenFor, delivered }: Figures): KeyNumber => {
  if (!firstOpening)
    return {
      label: 'Running time you get',
      number: percent(delivered),
      unit: '',
      note: 'of what the job asks',
      bad: delivered < 0.999,
    }
  const note = `you get ${percent(delivered)} of the running time`
  if (firstOpenFor !== null)
    return {
      label: 'Stays open for',
      number: duration(firstOpenFor),
      unit: '',
      note: `then the machine restarts; ${note}`,
      bad: true,
    }
  const { fitted, leads } = job.parts.cutoff
  if (leads === 'no-volt release')
    return { label: 'Stays off', number: 'until start is pressed', unit: '', note, bad: true }
  const until = fitted === 'manual reset' ? 'until it is reset' : 'to the end'
  return { label: 'Stays open', number: until, unit: '', note, bad: true }
}

const slowestNumber = (job: Job, { slowest, speedMissed }: Figures, units: Units): KeyNumber => {
  const label = 'Slowest in the cut'
  if (!slowest) return { label, number: '—', unit: '', note: 'it never gets to its speed', bad: true }
  const { number, unit } = show(slowest.value, 'angular speed', units)
  return {
    label,
    number,
    unit,
    note: `${percent(slowest.sag)} under the ${show(slowest.asked, 'angular speed', units).number} ${job.parts.supply.kind === 'bare bridge' ? 'that a knob would set' : 'asked'}`,
    bad: speedMissed,
  }
}

const withUnit = (label: string, shown: Shown, note: string, bad: boolean): KeyNumber => ({
  label,
  ...shown,
  note,
  bad,
})

/** On AC it stands: there is nothing to work out. */
const onAc = (average: string): readonly KeyNumber[] =>
  ['Cutoff opens at', 'Running time you get', 'Hottest winding', 'Slowest in the cut', average].map(
    (label) => ({ label, number: '—', unit: '', note: 'not worked out on AC', bad: true }),
  )

/** The five numbers. */
export function keyNumbers(job: Job, figures: Figures, units: Units): readonly KeyNumber[] {
  const { hottestWindingC, classLimitC, classMargin, workAmps, peakAmps } = figures
  const plate =
    job.plate.amps === undefined
      ? `limit ${told(job.parts.controller.currentLimit, 'current', units)}`
      : `plate ${told(job.plate.amps, 'current', units)}`
  const name = job.duty.phases[figures.work.phase]?.name.trim() || 'the hardest step'
  const average = `Average current, ${name}`
  if (job.parts.supply.kind === 'ac') return onAc(average)
  return [
    openingNumber(job, figures, units),
    openForNumber(job, figures),
    withUnit(
      'Hottest winding',
      show(hottestWindingC.value, 'temperature', units),
      `class ${job.parts.winding.insulation} limit ${told(classLimitC, 'temperature', units)}`,
      classMargin < 0,
    ),
    slowestNumber(job, figures, units),
    withUnit(
      average,
      show(workAmps, 'current', units),
      `peaks at ${told(peakAmps.value, 'current', units)}; ${plate}`,
      figures.limitedInCut >= 1 || workAmps > (job.plate.amps ?? Infinity),
    ),
  ]
}

/** A load that lasts for hours is held to this share of its breaker (common practice; your code decides). */
const LONG_LOAD = 0.8

/** Slip shorter than this all told is none, s. */
const SLIPS = 0.2

/** Whether the belt limits; nothing where no belt is said. */
function beltLimit({ parts: { belt } }: Job, { slipSeconds }: Figures): readonly Limit[] {
  if (belt.section === undefined || belt.section === 'not said') return []
  const limits = slipSeconds >= SLIPS
  return [
    { name: 'belt', limits, why: limits ? `it slips, ${duration(slipSeconds)} in all` : 'it does not slip' },
  ]
}

export interface Limit {
  readonly name: 'heat' | 'speed' | 'current' | 'belt' | 'outlet'
  readonly limits: boolean
  /** Why, in a few words. */
  readonly why: string
}

const AC_LIMITS: readonly Limit[] = [
  { name: 'heat', limits: true, why: 'standing on AC it burns in minutes' },
  { name: 'speed', limits: true, why: 'it does not turn' },
  { name: 'current', limits: true, why: 'only the winding’s ohms hold it back' },
  { name: 'outlet', limits: true, why: 'not worked out on AC' },
]

/** What limits the job and what does not. */
export function limitsOf(job: Job, figures: Figures, units: Units): readonly Limit[] {
  const { firstOpening, classPassed, ending, stalled, speedMissed, limitedInCut, outletAmps } = figures
  const { supply, controller } = job.parts
  if (supply.kind === 'ac') return AC_LIMITS
  const bare = supply.kind === 'bare bridge'
  const hot = firstOpening !== null || classPassed !== null || ending.kind === 'destroyed' || stalled !== null
  const share = outletAmps / supply.breaker
  const touched = figures.limitSeconds > 0
  return [
    {
      name: 'heat',
      limits: hot,
      why: firstOpening
        ? 'the cutoff opens'
        : stalled !== null
          ? 'held still, it burns at its brushes'
          : hot
            ? 'the winding passes its class limit'
            : 'cool enough',
    },
    {
      name: 'speed',
      limits: bare || speedMissed || stalled !== null,
      why: bare
        ? 'nothing sets it: a bridge has no knob'
        : stalled !== null
          ? 'the spindle stops'
          : speedMissed
            ? 'it sags more than you accept'
            : 'it holds its speed',
    },
    {
      name: 'current',
      limits: bare || limitedInCut >= 1,
      why: bare
        ? 'nothing limits it: a bridge has no limit'
        : limitedInCut >= 1
          ? `${duration(limitedInCut)} at the limit of ${told(controller.currentLimit, 'current', units)}`
          : touched
            ? 'at the controller’s limit only while starting'
            : 'under the controller’s limit',
    },
    ...beltLimit(job, figures),
    {
      name: 'outlet',
      limits: share > LONG_LOAD,
      why: `about ${told(outletAmps, 'current', units)} on average of ${told(supply.breaker, 'current', units)} ${supply.kind === 'battery' ? 'from the battery' : 'at the outlet'}${share > LONG_LOAD && share <= 1 ? '; long loads are held to 80 %' : ''}`,
    },
  ]
}
