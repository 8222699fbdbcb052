// What is told to a person, held to sense: words there are, not too many, and no number that is none.
import type { Problem } from '../../../sim/problem.ts'

/** A value that was never there, or a number that is none, as JavaScript spells them. */
const NO_SENSE = /\b(NaN|Infinity|undefined)\b|\[object /g
/** Longest sentence of a problem. A value from the input may be quoted in it, cut short. */
const LONGEST = 600
/** Most problems told at once. */
const MOST = 50

/** What of a text makes no sense and does not come from the input; null: nothing. */
export function nonsense(text: string, input: string): string | null {
  for (const [found] of text.matchAll(NO_SENSE))
    if (!input.includes(found)) return `${found} in “${text.slice(0, 200)}”`
  return null
}

/** What is wrong with problems as told; null: nothing. */
export function amissIn(problems: readonly Problem[], input: string): string | null {
  if (problems.length === 0) return 'refused without a reason'
  if (problems.length > MOST) return `${problems.length} problems at once`
  for (const { path, wrong, wouldDo } of problems) {
    if (wrong.length < 10 || wouldDo.length < 3)
      return `a problem without words at “${path}”: ${wrong} ${wouldDo}`
    if (wrong.length + wouldDo.length > LONGEST)
      return `a problem of ${wrong.length + wouldDo.length} characters at “${path.slice(0, 60)}”`
    const none = nonsense(`${wrong} ${wouldDo}`, input)
    if (none) return none
  }
  return null
}

/** Where plain data holds a number that is none, or null. Infinity stands for “never” in some figures. */
export function notNumber(data: unknown, path = ''): string | null {
  if (typeof data === 'number') return Number.isNaN(data) ? path : null
  if (ArrayBuffer.isView(data)) return (data as Float64Array).some?.(Number.isNaN) ? path : null
  if (typeof data !== 'object' || data === null) return null
  for (const [key, value] of Object.entries(data)) {
    const found = notNumber(value, `${path}.${key}`)
    if (found) return found
  }
  return null
}
