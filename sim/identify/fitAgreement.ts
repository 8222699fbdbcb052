// How far a curve laid through a log agrees with it, and with what a motor can be.
import { type Found, missesAt, type Question } from './heatSearch.ts'

export interface Agreement {
  /** Root mean square of the misses that count, and how far the curve rises from the start, K. */
  readonly miss: number
  readonly rise: number
  /** True where capacity and conductance lie within reason of the job's. */
  readonly sane: boolean
}

/** Capacity and conductance further than this from the job's, in standard deviations, are no motor's: 30 times. */
const FARTHEST = 3.4

/** The agreement of a search's find, the can before the winding. */
export function agreement(question: Question, { solution, channels }: Found): Agreement {
  const { of, windingC, frameC } = missesAt(question, solution.p)
  const squares = channels.flatMap((channel) =>
    of(channel).map((miss, n) => channel.weights[n] * miss * miss),
  )
  const curve = channels.some((channel) => channel.of === 'frame') ? frameC : windingC
  const top = curve.reduce((most, value) => Math.max(most, value), -Infinity)
  const wholes = [...question.unknowns.all.entries()].filter(([, { name }]) =>
    ['capacity', 'conductance'].includes(name),
  )
  return {
    miss: Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length),
    rise: top - curve[0],
    sane: wholes.every(([k, { usual, give }]) => Math.abs(solution.p[k] - usual) < FARTHEST * give),
  }
}
