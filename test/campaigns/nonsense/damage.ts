// A text made worse: bytes turned, cut, doubled and moved, numbers made absurd, names that mean something to a program put in.
import type { Chance } from '../../seeded.ts'

/** What strangers put into texts. */
export const HOSTILE = [
  ...['__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty', 'then', 'length'],
  ...[
    '<img src=x onerror=alert(1)>',
    '"><script>alert(1)</script>',
    '#{alert(1)}',
    '{{1}}',
    '%00',
    '../../x',
  ],
  ...['\u0000', '\u202e', '\u200b', '\ufeff', '\ud800', '\u001b[2J', '\r\n', '\t', '=1+1', '@SUM(1)'],
] as const

/** Numbers as nobody means them. */
export const ABSURD = [
  ...[
    '0',
    '-0',
    '-1',
    '1e-320',
    '1e308',
    '1e999',
    '-1e999',
    'NaN',
    'Infinity',
    '0x10',
    '1_000',
    '1,5',
    '1.2.3',
  ],
  ...['99999999999999999999', '0.1e-9', '1/0', '½', '٣', '1e', '+-3', '.', ''],
] as const

const place = ({ uniform }: Chance, text: string): number => Math.floor(uniform() * (text.length + 1))

const TURNS: readonly ((text: string, chance: Chance) => string)[] = [
  // A byte turned.
  (text, chance) => {
    const at = place(chance, text)
    return text.slice(0, at) + String.fromCharCode(Math.floor(chance.even(0, 256))) + text.slice(at + 1)
  },
  // A stretch cut out.
  (text, chance) => {
    const at = place(chance, text)
    return text.slice(0, at) + text.slice(at + Math.floor(chance.size(1, 200)))
  },
  // A stretch doubled, here or elsewhere.
  (text, chance) => {
    const from = place(chance, text)
    const to = chance.happens(0.5) ? from : place(chance, text)
    return text.slice(0, to) + text.slice(from, from + Math.floor(chance.size(1, 400))) + text.slice(to)
  },
  // The rest lost.
  (text, chance) => text.slice(0, place(chance, text)),
  // Something hostile put in.
  (text, chance) => {
    const at = place(chance, text)
    return text.slice(0, at) + chance.pick(HOSTILE) + text.slice(at)
  },
  // A number made absurd, or far too large or small.
  (text, chance) => {
    const numbers = [...text.matchAll(/\d+(?:[.,]\d+)*/g)]
    if (numbers.length === 0) return text
    const { 0: old, index } = chance.pick(numbers)
    const put = chance.happens(0.4)
      ? chance.pick(ABSURD)
      : String(Number(old.replace(',', '.')) * chance.size(1e-4, 1e4))
    return text.slice(0, index) + put + text.slice(index + old.length)
  },
]

/** The text after one to `most` turns for the worse. */
export function damaged(text: string, chance: Chance, most = 4): string {
  const times = 1 + Math.floor(chance.uniform() * most)
  let worse = text
  for (let n = 0; n < times; n++) worse = chance.pick(TURNS)(worse, chance)
  return worse
}
