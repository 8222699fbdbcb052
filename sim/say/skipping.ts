// Which cycles of a duty that repeats were run, in a sentence.
import type { Skipping } from '../carryOut.ts'
import { duration, grouped } from './number.ts'

/** "12 of 480 cycles computed; the rest follow from them." With a direct rest: from when on every one was. */
export function skippingWords({ computed, directFrom, of, seconds }: Skipping): string {
  const direct = directFrom === null ? 0 : of - Math.round(directFrom / seconds)
  const done = grouped(computed.length + direct, 0)
  const every = directFrom === null ? '' : `; from ${duration(directFrom)} on, every one`
  return `${done} of ${grouped(of, 0)} cycles computed${every}; the rest follow from them.`
}
