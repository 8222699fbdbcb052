// Numbers that fill a cube evenly: Sobol's sequence with a seeded digital shift; and plain ones, to check it against.

/**
 * Directions for the second dimension on: coefficients of the primitive polynomial, and the first numbers. Joe and Kuo,
 * "Constructing Sobol sequences with better two-dimensional projections", SIAM J. Sci. Comput. 30 (2008), table new-joe-kuo-6.
 */
const DIRECTIONS: readonly (readonly [number, ...number[]])[] = [
  [0, 1],
  [1, 1, 3],
  [1, 1, 3, 1],
  [2, 1, 1, 1],
  [1, 1, 1, 3, 3],
  [4, 1, 3, 5, 13],
  [2, 1, 1, 5, 5, 17],
  [4, 1, 1, 5, 5, 5],
  [7, 1, 1, 7, 11, 19],
  [11, 1, 1, 5, 1, 1],
  [13, 1, 1, 1, 3, 11],
  [14, 1, 3, 5, 5, 31],
  [1, 1, 3, 3, 9, 7, 49],
  [13, 1, 1, 1, 15, 21, 21],
  [16, 1, 3, 1, 13, 27, 49],
  [19, 1, 1, 1, 15, 7, 5],
  [22, 1, 3, 1, 15, 13, 25],
  [25, 1, 1, 5, 5, 19, 61],
  [1, 1, 3, 7, 11, 23, 15, 103],
  [4, 1, 3, 7, 13, 13, 15, 69],
  [7, 1, 1, 3, 13, 7, 35, 63],
  [8, 1, 3, 5, 9, 1, 25, 53],
  [14, 1, 3, 1, 13, 9, 35, 107],
  [19, 1, 3, 1, 5, 27, 61, 31],
  [21, 1, 1, 5, 11, 19, 41, 61],
  [28, 1, 3, 5, 3, 3, 13, 69],
  [31, 1, 1, 7, 13, 1, 19, 1],
  [32, 1, 3, 7, 5, 13, 19, 59],
  [37, 1, 1, 3, 9, 25, 29, 41],
  [41, 1, 3, 5, 13, 23, 1, 55],
  [42, 1, 3, 7, 3, 13, 59, 17],
]
/** Dimensions that are filled evenly; those after are filled by plain numbers. */
const EVEN_DIMENSIONS = DIRECTIONS.length + 1

const BITS = 32

/** What each binary digit of a point's number adds (bitwise), left-aligned in 32 bits. Bratley and Fox, Algorithm 659 (1988). */
function columns(dimension: number): Uint32Array {
  const made = new Uint32Array(BITS)
  const [coefficients, ...first] = dimension === 0 ? [0] : DIRECTIONS[dimension - 1]
  const degree = first.length
  for (let n = 0; n < BITS; n++) {
    if (dimension === 0) made[n] = 2 ** (BITS - 1 - n)
    else if (n < degree) made[n] = first[n] * 2 ** (BITS - 1 - n)
    else {
      let next = made[n - degree] ^ (made[n - degree] >>> degree)
      for (let k = 1; k < degree; k++) if ((coefficients >>> (degree - 1 - k)) & 1) next ^= made[n - k]
      made[n] = next
    }
  }
  return made
}
const COLUMNS = Array.from({ length: EVEN_DIMENSIONS }, (_, dimension) => columns(dimension))

/** Every digit stirred into every other: the finalizer of MurmurHash3 (public domain). */
function stirred(value: number): number {
  let h = value
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b)
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35)
  return (h ^ (h >>> 16)) >>> 0
}
const mixed = (seed: number, dimension: number): number =>
  stirred(stirred(seed) + Math.imul(dimension + 1, 0x9e3779b9))

/** The middle of a cell of 2⁻³² in (0, 1). */
const inside = (digits: number): number => ((digits >>> 0) + 0.5) / 2 ** BITS

/** Coordinate of point n as a random number would be: any two are strangers. In (0, 1). */
export const plain = (n: number, dimension: number, seed: number): number =>
  inside(stirred(mixed(seed, dimension) + Math.imul(n + 1, 0x85157af5)))

/** Coordinate of point n of the even sequence, shifted by the seed. In (0, 1). */
export function even(n: number, dimension: number, seed: number): number {
  if (dimension >= EVEN_DIMENSIONS) return plain(n, dimension, seed)
  const column = COLUMNS[dimension]
  let digits = mixed(seed, dimension)
  for (let k = 0, rest = n; rest > 0; k++, rest >>>= 1) if (rest & 1) digits ^= column[k]
  return inside(digits)
}
