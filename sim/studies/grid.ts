// The grid study: a job over two of its inputs, every figure at every crossing.
import { figuresOf } from '../carryOut.ts'
import type { Figures } from '../judge.ts'
import type { Problem } from '../problem.ts'
import { read, type Refused } from '../read.ts'
import type { Progress } from '../run.ts'
import { type Scenario, type Variant, withVariant } from '../scenario.ts'
import { FIGURE_NAMES, FIGURES, type FigureName } from './figures.ts'
import type { Axis } from './grid/axis.ts'
import { oneByOne, type Pointwise } from './pointwise.ts'

/** What a grid is worked out from; point n lies at column n % columns of row ⌊n / columns⌋. */
export interface GridSpec {
  readonly study: 'grid'
  readonly scenario: Scenario
  readonly x: Axis
  readonly y: Axis
}

/** What is worse than any figure shows: the run broke off, the winding burns out, the spindle stops. */
export type Trouble = 'no answer' | 'burnt' | 'stalls'

/** Every figure of one crossing, SI and °C; null where there is none of it. Or why the reader refuses its job. */
export type GridPoint =
  | {
      readonly ok: true
      readonly figures: Readonly<Record<FigureName, number | null>>
      readonly trouble: Trouble | null
    }
  | { readonly ok: false; readonly problem: Problem }

function troubleOf({ ending, stalled }: Figures): Trouble | null {
  if (ending.kind === 'destroyed') return 'burnt'
  if (ending.kind !== 'finished') return 'no answer'
  return stalled === null ? null : 'stalls'
}

/** The grid of a scenario over two axes; what the reader refuses is refused. */
export function gridSpec(
  scenario: Scenario,
  variant: Variant | undefined,
  x: Axis,
  y: Axis,
): GridSpec | Refused {
  const whole = variant ? withVariant(scenario, variant) : scenario
  const reading = read(whole)
  if (!reading.ok) return reading
  if (x.path === y.path)
    return {
      ok: false,
      problems: [{ path: y.path, wrong: 'Both axes are the same input.', wouldDo: 'Choose two.' }],
    }
  // What stands in no job is no part of the question: a variant more or less, or another name.
  return { study: 'grid', scenario: { ...whole, name: 'grid', about: undefined, variants: [] }, x, y }
}

/** The changes that make the job of a crossing. */
export function changesAt({ x, y }: Pick<GridSpec, 'x' | 'y'>, n: number): Variant['changes'] {
  const columns = x.texts.length
  return { [x.path]: x.texts[n % columns], [y.path]: y.texts[Math.floor(n / columns)] }
}

function* crossing(spec: GridSpec, n: number): Generator<Progress, GridPoint> {
  const reading = read(spec.scenario, { name: 'tried', changes: changesAt(spec, n) })
  if (!reading.ok) return { ok: false, problem: reading.problems[0] }
  const found = yield* figuresOf(reading.job)
  const figures = Object.fromEntries(
    FIGURE_NAMES.map((name) => [name, FIGURES[name].of(found, reading.job)]),
  ) as Record<FigureName, number | null>
  return { ok: true, figures, trouble: troubleOf(found) }
}

export const gridPoints: Pointwise<GridSpec, GridPoint> = {
  count: ({ x, y }) => x.texts.length * y.texts.length,
  // Where the cutoff opens, a job of a few hours alone takes a tenth of a second.
  atOnce: () => 1,
  points: (spec, from, until) => oneByOne(from, until, (n) => crossing(spec, n)),
}
