// The word someone most likely meant: least edits away, if few enough.

/** Edits (insert, drop, replace) from one word to another. */
function edits(from: string, to: string): number {
  let row = Array.from({ length: to.length + 1 }, (_, index) => index)
  for (let i = 1; i <= from.length; i++) {
    const next = [i]
    for (let j = 1; j <= to.length; j++)
      next[j] = Math.min(row[j] + 1, next[j - 1] + 1, row[j - 1] + (from[i - 1] === to[j - 1] ? 0 : 1))
    row = next
  }
  return row[to.length]
}

/** The nearest of `known` to `word`, or null if none is within a third of its letters. */
export function nearest(word: string, known: readonly string[]): string | null {
  const short = word.slice(0, 60).toLowerCase()
  let best: string | null = null
  let least = Math.max(1, Math.floor(short.length / 3)) + 0.5
  for (const candidate of known) {
    const distance = edits(short, candidate.toLowerCase())
    if (distance < least) {
      best = candidate
      least = distance
    }
  }
  return best
}
