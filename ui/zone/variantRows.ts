// The variants as rows: what each comes to, in the columns of the table.
import { clockTime, grouped, show } from '../../sim/say/number.ts'
import { inShort } from '../../sim/say/answer.ts'
import { limitsOf } from '../../sim/say/keyNumbers.ts'
import type { Units } from '../../sim/say/units.ts'
import type { Series } from '../plot/shown.ts'
import { AS_FOUND, type Entry, entriesOf, isCurrent, type Result, type State } from '../store.ts'
import { seriesOf } from './shownJob.ts'

export interface Cell {
  readonly text: string
  readonly bad: boolean
}

export interface VariantRow {
  readonly id: string
  readonly name: string
  readonly series: Series
  /** "no fan, ratio 4 : 1", or what keeps it from being known. */
  readonly short: string
  readonly chosen: boolean
  readonly asFound: boolean
  readonly state: 'ready' | 'working' | 'previous' | 'wrong'
  /** One for each column; none until there is an answer. */
  readonly cells: readonly Cell[]
}

export interface Column {
  readonly label: string
  readonly unit: string
}

/** Seconds as whole minutes. */
const minutes = (s: number): string => grouped(Math.round(s / 60), 0)

/** Columns of the table; the last is named after the work of the job. */
export function columns(state: State): readonly Column[] {
  const { units } = state.settings
  const first = entriesOf(state).flatMap(({ id }) => state.results.get(id) ?? [])[0]
  const work = first?.job.duty.phases[first.figures.work.phase]?.name.trim() || 'hardest step'
  return [
    { label: 'Cutoff opens', unit: 'min:s' },
    { label: 'Stays open', unit: 'min:s' },
    { label: 'Hottest winding', unit: units.temperature },
    { label: 'Hottest switch', unit: units.temperature },
    { label: 'Slowest', unit: 'rpm' },
    { label: 'Current', unit: 'A' },
    {
      label: work.charAt(0).toUpperCase() + work.slice(1),
      unit: first ? `of ${minutes(first.figures.work.asked)} min` : 'min',
    },
  ]
}

function cells({ job, figures }: Result, units: Units): readonly Cell[] {
  const { firstOpening, firstOpenFor, slowest, work } = figures
  const number = (value: number, dimension: 'temperature' | 'angular speed' | 'current') =>
    show(value, dimension, units).number
  const all = limitsOf(job, figures, units)
  const limits = (name: 'current' | 'speed') => all.some((limit) => limit.name === name && limit.limits)
  const none = job.parts.cutoff.fitted === 'none'
  return [
    {
      text: firstOpening ? clockTime(firstOpening.t) : none ? 'no cutoff' : 'never',
      bad: firstOpening !== null || none,
    },
    {
      text: firstOpenFor !== null ? clockTime(firstOpenFor) : firstOpening ? 'for good' : '–',
      bad: firstOpening !== null && firstOpenFor === null,
    },
    { text: number(figures.hottestWindingC.value, 'temperature'), bad: figures.classMargin < 0 },
    { text: number(figures.hottestSwitchC.value, 'temperature'), bad: firstOpening !== null },
    { text: slowest ? number(slowest.value, 'angular speed') : '–', bad: limits('speed') },
    { text: number(figures.workAmps, 'current'), bad: limits('current') },
    { text: minutes(work.got), bad: work.got < work.asked * 0.999 },
  ]
}

function row(state: State, entry: Entry): VariantRow {
  const { units } = state.settings
  const reading = state.readings.get(entry.id)
  const result = state.results.get(entry.id)
  const wrong = reading?.ok === false ? reading.problems.length : 0
  const working = state.working.has(entry.id)
  return {
    id: entry.id,
    name: entry.name,
    series: seriesOf(state, entry.id),
    short:
      wrong > 0
        ? `${wrong === 1 ? 'one value needs' : `${wrong} values need`} a look`
        : reading?.ok
          ? inShort(reading.job)
          : '',
    chosen: entry.id === state.chosen,
    asFound: entry.id === AS_FOUND,
    state:
      wrong > 0
        ? 'wrong'
        : working && state.slow
          ? 'working'
          : state.stopped !== null && result && !isCurrent(state, entry.id)
            ? 'previous'
            : 'ready',
    cells: result ? cells(result, units) : [],
  }
}

export const variantRows = (state: State): readonly VariantRow[] =>
  entriesOf(state).map((entry) => row(state, entry))
