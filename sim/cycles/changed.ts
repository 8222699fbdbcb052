// Whether two turns differ in kind, so that what is new must have begun on the way from one to the other.
import type { Mark } from '../trace.ts'
import type { Turn } from './turn.ts'

/** A limit or a slip that comes up for no longer than this share of the turn is not looked for among the skipped. */
const NOTICED = 0.01

const EVENTS: readonly Mark['kind'][] = ['stalled', 'speed not reached', 'class passed']
const SPELLS: readonly Mark['kind'][] = ['limit reached', 'belt slips']

/** True where one of the turns (of so many seconds) stalls, misses its speed, passes its class, limits or slips, and the other does not. */
export function changed(from: Turn, to: Turn, seconds: number): boolean {
  const shown = ({ trace }: Turn, kind: Mark['kind']) => trace.marks.some((mark) => mark.kind === kind)
  const spent = ({ trace }: Turn, kind: Mark['kind']) =>
    trace.marks.reduce(
      (sum, mark) => (mark.kind === kind && 'until' in mark ? sum + mark.until - mark.t : sum),
      0,
    )
  return (
    EVENTS.some((kind) => shown(from, kind) !== shown(to, kind)) ||
    SPELLS.some((kind) => {
      const [before, after] = [spent(from, kind), spent(to, kind)]
      return Math.min(before, after) === 0 && Math.max(before, after) > NOTICED * seconds
    })
  )
}
