// One root in a bracket: ITP, never slower than bisection (Oliveira & Takahashi, ACM TOMS 47(1), 2020).

/**
 * The place in (a, b] where f has reached the sign it has at b: f(a) = fa and f(b) = fb differ in sign,
 * fb may be 0. The answer overshoots the root by at most `tolerance` (or a few roundings of b) and f there
 * has fb's sign or is 0, so a search that starts from it does not find the same root again.
 */
export function root(
  f: (x: number) => number,
  a: number,
  b: number,
  fa: number,
  fb: number,
  tolerance: number,
): number {
  const sign = fb < 0 || fa > 0 ? -1 : 1
  fa *= sign
  fb *= sign
  const half = Math.max(tolerance, 4 * Number.EPSILON * Math.max(Math.abs(a), Math.abs(b))) / 2
  const most = Math.ceil(Math.log2((b - a) / (2 * half))) + 1 // one more than bisection
  const k1 = 0.2 / (b - a)
  for (let n = 0; b - a > 2 * half && fb !== 0; n++) {
    const middle = (a + b) / 2
    const slack = Math.max(0, half * 2 ** (most - n) - (b - a) / 2)
    const secant = (fb * a - fa * b) / (fb - fa)
    const towards = Math.sign(middle - secant)
    const nudge = k1 * (b - a) ** 2
    const nudged = nudge <= Math.abs(middle - secant) ? secant + towards * nudge : middle
    const x = Math.abs(nudged - middle) <= slack ? nudged : middle - towards * slack
    const fx = sign * f(x)
    if (fx >= 0) {
      b = x
      fb = fx
    } else {
      a = x
      fa = fx
    }
  }
  return b
}
