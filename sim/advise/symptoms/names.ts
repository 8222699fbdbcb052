// The symptoms by name, and a person's own words to one of them.
import { parseQuantity } from '../../quantity.ts'

export const SYMPTOMS = ['trips', 'stalls', 'bogs', 'fuse', 'squeals', 'burns', 'hums', 'shocks'] as const
export type Symptom = (typeof SYMPTOMS)[number]

/** Words that name one, looked for in this order. */
const WORDS: readonly (readonly [Symptom, RegExp])[] = [
  ['shocks', /shock|tingl/],
  ['fuse', /fuse|breaker|blow(s|n)? out/],
  ['squeals', /squeal|screech|belt/],
  ['hums', /hum|will not start|won.t start|does not start|dead/],
  ['burns', /too hot|hot to touch|smell|smok|burn/],
  ['stalls', /stall|stops? at low|low speed|jerk/],
  ['bogs', /bog|sag|slows?|lug/],
  ['trips', /trip|cuts? out|cutoff|opens|stops after/],
]
const COUNTS: Readonly<Record<string, string>> = {
  a: '1',
  one: '1',
  two: '2',
  three: '3',
  five: '5',
  ten: '10',
  fifteen: '15',
  twenty: '20',
  thirty: '30',
  forty: '40',
}

/** A person's words: which symptom, and after how many seconds where they say so; null: none of them. */
export function symptomOf(
  words: string,
): { readonly symptom: Symptom; readonly after: number | null } | null {
  const text = words.toLowerCase()
  const symptom = WORDS.find(([, pattern]) => pattern.test(text))?.[0]
  if (!symptom) return null
  const plain = text.replace(/\b[a-z]+\b/g, (word) => COUNTS[word] ?? word)
  const time = /(\d+(?:[.,]\d+)?)\s*(s|sec|min|minute|h|hour)s?(?:ond)?s?\b/.exec(plain)
  const unit = time && (time[2].startsWith('h') ? 'h' : time[2].startsWith('m') ? 'min' : 's')
  const parsed = time ? parseQuantity(`${time[1]} ${unit}`, 'time') : null
  return { symptom, after: parsed?.ok ? parsed.value : null }
}
