// The same character and the same unit are typed in many ways: each is brought to one spelling.
import { type Dimension, type Entry, toSi, type Unit } from './unit.ts'
import { table } from './units.ts'

const alike: readonly (readonly [string, string])[] = [
  ['-', '−–‐‑﹣－'],
  ['·', '⋅∙•・‧×*'],
  ['/', '⁄∕'],
  ['°', 'º˚'],
  ['°C', '℃'],
  ['°F', '℉'],
  ['µ', '\u03bc'],
  ['Δ', '\u2206'],
  ['"', '″“”˝'],
  ["'", '′‘’´`'],
  [' 1/2', '½'],
  [' 1/3', '⅓'],
  [' 2/3', '⅔'],
  [' 1/4', '¼'],
  [' 3/4', '¾'],
  [' 1/8', '⅛'],
  [' 3/8', '⅜'],
  [' 5/8', '⅝'],
  [' 7/8', '⅞'],
  ['', '\u00ad\u200b\u200c\u200d\u200e\u200f\u2060\ufeff'],
]
const plain = new Map(alike.flatMap(([to, from]) => [...from].map((character) => [character, to] as const)))

/** One spelling for look-alike characters, single blanks, none at the ends. */
export const tidy = (text: string): string =>
  [...text]
    .map((character) => plain.get(character) ?? character)
    .join('')
    .replace(/\s+/g, ' ')
    .trim()

/** A unit without what people leave out or put in: blanks, dots, dashes, brackets; powers as plain digits. */
const bare = (text: string): string =>
  text
    .replace(/[ .·^()\-⁻]/g, '')
    .replaceAll('¹', '1')
    .replaceAll('²', '2')
    .replaceAll('³', '3')

/**
 * The one place where case decides: M is mega, m is milli, and "mf" on an old capacitor was a microfarad
 * (common practice, no source). Where the two are a million apart, nothing is guessed.
 */
const unclear = (typed: string): boolean =>
  typed === 'mf' || (typed.startsWith('M') && /^m([svaωh]|f(?!d)|ohm)/.test(typed.toLowerCase()))

const find = ({ units }: Entry, text: string): Unit | undefined => {
  const typed = bare(text)
  const word = typed.toLowerCase()
  return unclear(typed) ? undefined : units.find(({ words }) => words.includes(word))
}

/** The unit of this dimension that a tidied text names; '' names the unit of a plain number. */
export const unitNamed = (text: string, dimension: Dimension): Unit | undefined =>
  find(table[dimension], text)

/** The first dimension that has such a unit: by its own symbol if any has, so that "5 m" is a length and no time. */
export function elsewhere(text: string): Entry | undefined {
  const all = Object.values(table)
  return (
    all.find(({ units }) => units.some(({ symbol }) => symbol === text)) ??
    all.find((entry) => find(entry, text) !== undefined)
  )
}

/**
 * The unit of this dimension spelt most like a text, where the slips are few beside its length.
 * The letters of prefixes must agree: mN·m is not a misspelt N·m.
 */
export function nearest(text: string, dimension: Dimension): Unit | undefined {
  if (unclear(bare(text))) return undefined
  const word = bare(text).toLowerCase()
  let least = Math.floor(word.length / 3) + 1
  let best: Unit | undefined
  for (const unit of table[dimension].units)
    for (const known of unit.words) {
      const slips = prefixes(word) === prefixes(known) ? slipsBetween(word, known) : word.length
      if (slips < least) {
        least = slips
        best = unit
      }
    }
  return best
}

const prefixes = (word: string): string => [...word.replace(/[^ckmuµ]/g, '')].sort().join('')

/** Letters to add, drop, change or swap with their neighbour to make one word of another (Damerau 1964). */
function slipsBetween(a: string, b: string): number {
  const rows = [Array.from({ length: b.length + 1 }, (_, j) => j)]
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    const above = rows[i - 1]!
    for (let j = 1; j <= b.length; j++) {
      const change = above[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1)
      row[j] = Math.min(above[j]! + 1, row[j - 1]! + 1, change)
      if (a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1] && i > 1)
        row[j] = Math.min(row[j]!, rows[i - 2]![j - 2]! + 1)
    }
    rows.push(row)
  }
  return rows[a.length]![b.length]!
}

/** How large one of a unit is, to tell feet before inches. */
export const sizeOf = (unit: Unit): number => toSi(1, unit)
