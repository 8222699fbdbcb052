// How far the readings leave each fitted number open: from the covariance of the least squares.
import { inverse, type Solution } from '../solve/leastSquares.ts'
import type { HeatNumber } from './heatPath.ts'
import type { Question } from './heatSearch.ts'
import { EIGHT_IN_TEN, STRAYS } from './heatUnknowns.ts'

/** A fitted number, SI; it lies between low and high 8 times in 10. */
export interface Fitted {
  readonly value: number
  readonly low: number
  readonly high: number
  /** True where the log settles it; false where it keeps the usual proportion to the others. */
  readonly settled: boolean
}

/** The log settles a number when it knows it this much better than the usual pattern does, or this well at all. */
const SETTLED = { share: 0.5, sd: 0.06 }
/** The whole of capacity and conductance must be known this well, proportions given; as a logarithm. */
const WHOLE_KNOWN = 0.25

/** Covariance of the unknowns a test keeps, the others held where they are. Unknowns that are held read as 0. */
function covariance({ unknowns }: Question, { normal }: Solution, keep: (name: string) => boolean) {
  const n = unknowns.all.length
  const free = [...unknowns.all.keys()].filter((k) => keep(unknowns.all[k].name))
  const inner = inverse(
    Float64Array.from(free.flatMap((k) => free.map((l) => normal[k * n + l]))),
    free.length,
  )
  /** Standard deviation of a number with these derivatives. */
  return (slopes: ArrayLike<number>): number => {
    if (!inner) return Infinity
    let sum = 0
    free.forEach((k, row) => {
      free.forEach((l, column) => {
        sum += slopes[k] * slopes[l] * inner[row * free.length + column]
      })
    })
    return Math.sqrt(sum)
  }
}

const heatKnown = (name: string): boolean => !['amps', 'resistance', 'friction'].includes(name)

/** True where the log shows how much heat is stored and given off in all, proportions and heat taken as known. */
export function wholeKnown(question: Question, solution: Solution): boolean {
  const strays: readonly string[] = Object.keys(STRAYS)
  const sd = covariance(question, solution, (name) => heatKnown(name) && !strays.includes(name))
  return ['capacity', 'conductance'].every(
    (whole) => sd(question.unknowns.all.map(({ name }) => (name === whole ? 1 : 0))) < WHOLE_KNOWN,
  )
}

/** Every active number with its band, and whether the log settled it. */
export function spreads(question: Question, solution: Solution): Partial<Record<HeatNumber, Fitted>> {
  const { unknowns } = question
  const { p } = solution
  const full = covariance(question, solution, () => true)
  const given = covariance(question, solution, heatKnown)
  const { numbers } = unknowns.at(p)
  const beside = unknowns.all.map(({ step }, k) => unknowns.at(p.with(k, p[k] + step)).numbers)
  const found: Partial<Record<HeatNumber, Fitted>> = {}
  for (const name of unknowns.active) {
    const value = numbers[name]
    const slopes = beside.map((moved, k) => Math.log(moved[name] / value) / unknowns.all[k].step)
    const spread = Math.exp(EIGHT_IN_TEN * full(slopes))
    // How far the usual pattern leaves it open once the whole is known.
    const stray = unknowns.all.reduce(
      (sum, unknown, k) => (unknown.name in STRAYS ? sum + (slopes[k] * unknown.give) ** 2 : sum),
      0,
    )
    found[name] = {
      value,
      low: value / spread,
      high: value * spread,
      settled: given(slopes) < Math.max(SETTLED.share * Math.sqrt(stray), SETTLED.sd),
    }
  }
  return found
}
