// The textbook heating curve, rise θ(1 − e^(−t/τ)): from two readings, from many, and what it says of short loads.

export interface HeatingCurve {
  /** Rise it settles at, K. */
  readonly final: number
  /** Time constant, in the unit the times are in. */
  readonly tau: number
}

/** Rise after a time, from a rise at the start. K */
export const riseAt = ({ final, tau }: HeatingCurve, time: number, start = 0): number =>
  final + (start - final) * Math.exp(-time / tau)

/**
 * The curve through two rises from cold (K), the second after twice the time of the first: θ = a²/(2a − b),
 * τ = −t/ln(b/a − 1). Null where no such curve rises and bends towards a level.
 */
export function throughTwo(first: number, second: number, interval: number): HeatingCurve | null {
  if (!(first > 0 && second > first && second < 2 * first && interval > 0)) return null
  return { final: first ** 2 / (2 * first - second), tau: -interval / Math.log(second / first - 1) }
}

/** Time constant of cooling from one rise to a lower one in a time; null where it does not cool. */
export const coolingTau = (from: number, to: number, time: number): number | null =>
  to > 0 && from > to && time > 0 ? time / Math.log(from / to) : null

/**
 * Load over the continuous load that reaches the continuous rise just at the end of a time, from cold; heat is
 * copper (∝ load²) and a constant part, `constant` times the copper heat at continuous load.
 */
export const shortTimeLoad = (time: number, tau: number, constant: number): number =>
  Math.sqrt((1 + constant) / -Math.expm1(-time / tau) - constant)

/** Time constants looked at: from a twentieth of the mean time between readings to twenty times the longest time. */
const LOOKS = 80
const REACH = 20
const NARROWINGS = 80
const GOLDEN = (Math.sqrt(5) - 1) / 2

/**
 * The curve nearest to readings from cold, by least squares. For each time constant the final rise is linear, so
 * only the time constant is sought (variable projection): on a grid of logarithms, then by golden section.
 * Null with fewer than three readings, or where the best lies at the end of the grid: no bend shows.
 */
export function nearestCurve(times: readonly number[], rises: readonly number[]): HeatingCurve | null {
  const longest = Math.max(...times)
  if (times.length < 3 || !(longest > 0)) return null
  const finalFor = (tau: number): number => {
    let top = 0
    let bottom = 0
    times.forEach((t, n) => {
      const shape = -Math.expm1(-t / tau)
      top += shape * rises[n]
      bottom += shape * shape
    })
    return top / bottom
  }
  const miss = (logTau: number): number => {
    const tau = Math.exp(logTau)
    const final = finalFor(tau)
    return times.reduce((sum, t, n) => sum + (rises[n] + final * Math.expm1(-t / tau)) ** 2, 0)
  }
  const low = Math.log(longest / times.length / REACH)
  const step = (Math.log(longest * REACH) - low) / LOOKS
  let best = 0
  for (let n = 1; n <= LOOKS; n++) if (miss(low + n * step) < miss(low + best * step)) best = n
  if (best === 0 || best === LOOKS) return null
  let a = low + (best - 1) * step
  let b = low + (best + 1) * step
  for (let n = 0; n < NARROWINGS; n++) {
    const width = GOLDEN * (b - a)
    if (miss(b - width) < miss(a + width)) b = a + width
    else a = b - width
  }
  const tau = Math.exp((a + b) / 2)
  return { tau, final: finalFor(tau) }
}
