// Stretches of time in which something holds, found row by row; their ends lie where the measure crosses zero.

export interface SpellKeeper {
  /** A row: time (s), a measure that is ≥ 0 while it holds, whether it counts here at all, and how bad it is now. */
  row(t: number, measure: number, counts: boolean, badness: number): void
  /** The rows end here. */
  finish(): void
}

/** Keeps spells of at least `least` s; each is told with its worst badness. */
export function spellKeeper(
  least: number,
  told: (from: number, until: number, worst: number) => void,
): SpellKeeper {
  let from = Number.NaN
  let worst = 0
  let lastT = 0
  let lastMeasure = Number.NaN
  let lastCounts = false

  /** Where the measure crosses zero between the last row and this, s: straight between them. */
  const crossing = (t: number, measure: number): number =>
    lastT + ((t - lastT) * lastMeasure) / (lastMeasure - measure)
  const close = (until: number) => {
    if (until - from >= least && until > from) told(from, until, worst)
    from = Number.NaN
  }

  return {
    row(t, measure, counts, badness) {
      const holds = counts && measure >= 0
      const open = !Number.isNaN(from)
      // A jump has two rows at one time, and nothing lies between them.
      const between = lastCounts && counts && t > lastT
      if (holds && !open) {
        from = between && lastMeasure < 0 ? crossing(t, measure) : t
        worst = badness
      } else if (holds) worst = Math.max(worst, badness)
      else if (open) close(between && lastMeasure >= 0 ? crossing(t, measure) : counts ? lastT : t)
      lastT = t
      lastMeasure = measure
      lastCounts = counts
    },
    finish() {
      if (!Number.isNaN(from)) close(lastT)
    },
  }
}
