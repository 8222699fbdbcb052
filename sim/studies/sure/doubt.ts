// A doubt: one thing that may be other than it stands, and the draft when it is.
import type { Draft } from './draft.ts'

export interface Doubt {
  readonly name: string
  /** The draft with this at the low end (−1), as it stands (0) or at the high end (1) of its 8-in-10 band; or further out. */
  readonly at: (draft: Draft, where: number) => Draft
}

/** A group or list with what stands at `keys` replaced. */
function put(target: unknown, [key, ...rest]: readonly string[], next: (old: unknown) => unknown): unknown {
  if (key === undefined) return next(target)
  if (Array.isArray(target)) {
    const copy: unknown[] = target.slice()
    copy[Number(key)] = put(copy[Number(key)], rest, next)
    return copy
  }
  const group = target as Record<string, unknown>
  return { ...group, [key]: put(group[key], rest, next) }
}

/** The draft with the input at a path changed; SI. */
export const withInput = (draft: Draft, path: string, next: (old: number) => number): Draft => ({
  ...draft,
  fields: put(draft.fields, path.split('.'), (old) => next(old as number)) as Draft['fields'],
})

/** An 8-in-10 band about a value, and what cannot be passed. SI. */
export interface Band {
  readonly value: number
  readonly low: number
  readonly high: number
  readonly least: number
  readonly most: number
}

/** A place in a band: −1 its low end, 0 the value, 1 its high end; further out by the same step, or factor if above nothing. */
export function placeIn({ value, low, high, least, most }: Band, where: number): number {
  const end = where < 0 ? low : high
  const far = Math.abs(where)
  const out =
    far <= 1 || low <= 0 || value <= 0 ? value + far * (end - value) : end * (end / value) ** (far - 1)
  return Math.min(most, Math.max(least, out))
}
