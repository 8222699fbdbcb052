// Keys of the scrubber and of the window's handles: which key leads to which time.

/** What the scrubber moves over, s. */
export interface Track {
  readonly at: number
  readonly end: number
  readonly cycle: number
  /** When the cutoff of the active variant opens or recloses, ascending. */
  readonly events: readonly number[]
}

const STEP = 5
const HANDLE_STEP = 10
const MINUTE = 60

/** Time a key moves the scrubber to, s; undefined: not a key of the scrubber. */
export function scrubKey(key: string, shift: boolean, { at, end, cycle, events }: Track): number | undefined {
  const step = shift ? MINUTE : STEP
  const to = (t: number) => Math.min(end, Math.max(0, t))
  // Steps land on whole multiples, wherever a drag left the scrubber.
  const up = (size: number) => to((Math.floor(at / size + 1e-6) + 1) * size)
  const down = (size: number) => to((Math.ceil(at / size - 1e-6) - 1) * size)
  switch (key) {
    case 'ArrowRight':
    case 'ArrowUp':
      return shift ? to(at + step) : up(step)
    case 'ArrowLeft':
    case 'ArrowDown':
      return shift ? to(at - step) : down(step)
    case 'PageUp':
      return to(at + cycle)
    case 'PageDown':
      return to(at - cycle)
    case 'Home':
      return 0
    case 'End':
      return end
    case '[':
      return events.findLast((t) => t < at - 0.5) ?? at
    case ']':
      return events.find((t) => t > at + 0.5) ?? at
    default:
      return undefined
  }
}

/** Change (s) a key makes to a handle; undefined: not a key of a handle. */
export function handleKey(key: string, shift: boolean): number | undefined {
  const step = shift ? MINUTE : HANDLE_STEP
  if (key === 'ArrowRight' || key === 'ArrowUp') return step
  if (key === 'ArrowLeft' || key === 'ArrowDown') return -step
  if (key === 'Home') return Number.NEGATIVE_INFINITY
  if (key === 'End') return Number.POSITIVE_INFINITY
  return undefined
}

/** Shortest window, s. */
const SHORTEST = 60

/** A window with one end, or all of it, moved by `by` s, kept inside [0, end] and at least a minute long. */
export function movedWindow(
  { from, to }: { from: number; to: number },
  what: 'from' | 'to' | 'all',
  by: number,
  end: number,
): { from: number; to: number } {
  const least = Math.min(SHORTEST, end)
  if (what === 'from') return { from: Math.min(to - least, Math.max(0, from + by)), to }
  if (what === 'to') return { from, to: Math.max(from + least, Math.min(end, to + by)) }
  const start = Math.min(end - (to - from), Math.max(0, from + by))
  return { from: start, to: start + to - from }
}

/** The window shifted just so far that it holds t; itself where it does. */
export function windowHolding(
  t: number,
  window: { from: number; to: number },
  end: number,
): { from: number; to: number } {
  if (t < window.from) return movedWindow(window, 'all', t - window.from, end)
  if (t > window.to) return movedWindow(window, 'all', t - window.to, end)
  return window
}
