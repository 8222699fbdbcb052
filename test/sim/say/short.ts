// The short answer held to the whole one: the same verdict, and no number that the whole one does not tell.
import { expect } from 'vitest'
import type { Short } from '../../../sim/say/answer/given.ts'

/** Most characters of the answer, and of its doubt: what fits on a phone beside a button, on a line or two. */
const LONGEST = 36
const LONGEST_DOUBT = 44

const verdictIn = (text: string): string => /^(Yes|No|Barely|Too close to call)\b/.exec(text)?.[0] ?? '?'

/** Numbers with their unit as written: a band's first number stands without. */
const numbersIn = (text: string): readonly string[] => text.match(/\d[\d\u202f]*(\.\d+)?/g) ?? []

/** Fails where the short answer says what the whole one does not. */
export function agrees({ words, doubt }: Short, whole: string): void {
  expect(verdictIn(words), words).toBe(verdictIn(whole))
  const told = numbersIn(whole)
  for (const number of numbersIn(`${words} ${doubt}`)) expect(told, `${words} | ${doubt}`).toContain(number)
  expect(words.length, words).toBeLessThanOrEqual(LONGEST)
  expect(doubt.length, doubt).toBeLessThanOrEqual(LONGEST_DOUBT)
}
