// sim/ is the same today and tomorrow: it reads no clock and draws no unseeded chance.
import { expect, it } from 'vitest'
import { withoutComments } from './imports.ts'
import { sources } from './tree.ts'

const impure = /\bMath\s*\.\s*random\b|\bDate\b/

it('no file of sim/ names chance or a clock', () => {
  const found = [...sources('sim')].filter(([, text]) => impure.test(withoutComments(text)))
  expect(found.map(([path]) => path)).toEqual([])
})

it.each(['const a = Math.random()', 'const t = Date.now()', 'const t = new Date()'])(
  'would notice %s',
  (text) => {
    expect(impure.test(withoutComments(text))).toBe(true)
  },
)
