// The search for a fit: every reading over its scatter and every unknown over its usual stray, least squares of both.
import { temperatureByResistance } from '../handbook/materials.ts'
import { inverse, leastSquares, type Solution } from '../solve/leastSquares.ts'
import type { Drive } from './heatDrive.ts'
import { heatPath } from './heatPath.ts'
import type { Unknowns } from './heatUnknowns.ts'
import type { Log } from './log.ts'

/** A log with its drive and its unknowns. */
export interface Question {
  readonly log: Log
  readonly drive: Drive
  readonly unknowns: Unknowns
}

/** Readings no thermometer beats, K: a smaller scatter is not believed. */
const FINEST = 0.1
/** Readings further off than so many standard deviations count less (Huber 1964). */
const FAR = 2.5
/** And those so many times further are slips of the pen, and count nothing. */
const SLIP = 4
/** Descents after the first, each with the scatter the one before left. */
const PASSES = 4

/** Channels of readings, by the column they are compared with. */
export interface Channel {
  readonly of: 'frame' | 'winding' | 'ohms'
  readonly rows: readonly number[]
  /** Standard deviation, K; what neighbours share is already counted in. */
  sigma: number
  readonly weights: Float64Array
}

export interface Found {
  readonly solution: Solution
  readonly channels: readonly Channel[]
}

/** The unknowns nearest to the readings; null where no start gives finite temperatures. */
export function search(question: Question): Found | null {
  const channels = channelsOf(question)
  let solution = descend(question, channels, lookAbout(question, channels))
  for (let pass = 0; pass < PASSES && solution; pass++) {
    weigh(question, channels, solution)
    solution = descend(question, channels, solution.p)
  }
  return solution && { solution, channels }
}

/** The least a log gives: every reading that can be compared. Ohms are read at rest only. */
function channelsOf({ log, drive }: Question): Channel[] {
  const rows = [...drive.time.keys()]
  const of = (name: Channel['of'], column: Float64Array, sigma: number): Channel => {
    const found = rows.filter((at) => !Number.isNaN(column[at]) && (name !== 'ohms' || !drive.running[at]))
    return { of: name, rows: found, sigma, weights: new Float64Array(found.length).fill(1) }
  }
  return [of('frame', log.frameC, 1), of('winding', log.windingC, 2), of('ohms', log.ohms, 3)].filter(
    (channel) => channel.rows.length > 0,
  )
}

/** Curve at values of the unknowns, and by how much each channel's readings lie over it, K. */
export function missesAt({ log, drive, unknowns }: Question, p: ArrayLike<number>) {
  const { numbers, conditions, ohms20 } = unknowns.at(p)
  const windingC = new Float64Array(log.rows)
  const frameC = new Float64Array(log.rows)
  heatPath(drive, numbers, conditions, windingC, frameC)
  const read = {
    frame: log.frameC,
    winding: log.windingC,
    ohms: log.ohms.map((ohms) => temperatureByResistance(ohms20, ohms, 20)),
  }
  const curve = { frame: frameC, winding: windingC, ohms: windingC }
  return {
    windingC,
    frameC,
    windingReadC: log.windingC.map((value, row) => (Number.isNaN(value) ? read.ohms[row] : value)),
    of: ({ of, rows }: Channel) => rows.map((row) => read[of][row] - curve[of][row]),
  }
}

/** Least squares from p: every reading over its scatter, and every unknown over its usual give. */
function descend(question: Question, channels: readonly Channel[], p: ArrayLike<number>): Solution | null {
  const { all } = question.unknowns
  const readings = channels.reduce((sum, { rows }) => sum + rows.length, 0)
  return leastSquares(
    {
      rows: readings + all.length,
      low: all.map(({ low }) => low),
      high: all.map(({ high }) => high),
      steps: all.map(({ step }) => step),
      residuals: (q, out) => {
        const misses = missesAt(question, q)
        let row = 0
        for (const channel of channels) {
          misses.of(channel).forEach((miss, n) => {
            out[row++] = (miss * Math.sqrt(channel.weights[n])) / channel.sigma
          })
        }
        for (const [k, { usual, give }] of all.entries()) out[row++] = (q[k] - usual) / give
      },
    },
    p,
  )
}

/** Factors on capacity and conductance looked at first: the descent begins at the best of them. */
const LOOKS = [-1.6, -1.2, -0.8, -0.4, 0, 0.4, 0.8, 1.2, 1.6]

function lookAbout(question: Question, channels: readonly Channel[]): readonly number[] {
  const usual = question.unknowns.all.map(({ usual }) => usual)
  let best = usual
  let least = Infinity
  for (const capacity of LOOKS)
    for (const conductance of LOOKS) {
      const p = [capacity, conductance, ...usual.slice(2)]
      const misses = missesAt(question, p)
      const sum = channels.reduce(
        (all, channel) => all + misses.of(channel).reduce((s, miss) => s + (miss / channel.sigma) ** 2, 0),
        0,
      )
      if (sum < least) {
        least = sum
        best = p
      }
    }
  return best
}

/**
 * Sets each channel's scatter from its own misses, less the freedom the fit took, and lets far ones count less.
 * Misses that run alike from reading to reading are worth fewer readings: (1 + ρ)/(1 − ρ) as many for the same.
 */
function weigh(question: Question, channels: readonly Channel[], { p, normal }: Solution): void {
  const { unknowns } = question
  const misses = missesAt(question, p)
  const n = unknowns.all.length
  const covariance = inverse(normal, n)
  // Freedom taken: what of each unknown the readings settle, and its usual give does not.
  const taken = unknowns.all.reduce(
    (sum, { give }, k) => sum + 1 - Math.min(1, (covariance?.[k * n + k] ?? 0) / give ** 2),
    0,
  )
  const readings = channels.reduce((sum, { rows }) => sum + rows.length, 0)
  const free = Math.max(0.2, 1 - taken / readings)
  for (const channel of channels) {
    const own = misses.of(channel)
    const median = own.map(Math.abs).toSorted((a, b) => a - b)[own.length >> 1]
    const far = FAR * Math.max(FINEST, 1.4826 * median)
    own.forEach((miss, k) => {
      channel.weights[k] = Math.abs(miss) > SLIP * far ? 0 : Math.min(1, far / Math.abs(miss))
    })
    const squares = own.reduce((sum, miss, k) => sum + channel.weights[k] * miss * miss, 0)
    const alike = own.slice(1).reduce((sum, miss, k) => sum + miss * own[k] * channel.weights[k], 0)
    const rho = Math.min(0.95, Math.max(0, squares > 0 ? alike / squares : 0))
    const scatter = Math.sqrt(squares / own.length / free)
    channel.sigma = Math.max(FINEST, scatter) * Math.sqrt((1 + rho) / (1 - rho))
  }
}
