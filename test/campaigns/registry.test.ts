// Every campaign of the table has its slice in npm test and a name that can be typed; failures are told and kept.
import { expect, it } from 'vitest'
import { sources } from '../house/tree.ts'
import { attempt, type Campaign, failuresOf, sumUp } from './campaign.ts'
import { forget, load, save } from './kept.ts'
import { CAMPAIGNS } from './registry.ts'

const tests = [...sources('test')]
  .filter(([path]) => path.startsWith('test/campaigns/') && path.endsWith('.test.ts'))
  .flatMap(([, text]) => [...text.matchAll(/^slice\((\w+)\)/gm)].map(([, name]) => name))

it('each campaign has one test of its slice', () => {
  const letters = (name: string) => name.replaceAll('-', '').toLowerCase()
  expect(tests.map(letters).sort()).toEqual(CAMPAIGNS.map(({ name }) => letters(name)).sort())
})

it('slices are a fiftieth or more, and names are small letters', () => {
  for (const { name, whole, slice } of CAMPAIGNS) {
    expect(name).toMatch(/^[a-z]+(-[a-z]+)*$/)
    expect(slice, name).toBeGreaterThanOrEqual(whole / 50)
    expect(slice, name).toBeLessThanOrEqual(whole)
  }
})

const own: Campaign = {
  name: 'own',
  about: '',
  whole: 4,
  slice: 4,
  fixed: [],
  limits: { off: { most: 2, unit: 'K' } },
  seen: { events: 1 },
  one(seed) {
    if (seed === 4) throw new Error('broke')
    return { measures: { off: seed, events: seed === 3 ? Number.NaN : 1 } }
  },
}

it('a number past its limit, one that is none, and a throw are failures', async () => {
  const trials = new Map()
  for (const seed of [1, 2, 3, 4]) trials.set(seed, await attempt(own, seed))
  expect(failuresOf(own, trials)).toEqual(['seed 3: events is NaN; off 3 K, more than 2', 'seed 4: broke'])
  expect(sumUp(own, trials)).toEqual({
    words: 'off 3 K (seed 3, most 2 K), 2 events',
    wrong: 'only 2 events in 4 trials',
  })
  // Kept as JSON and read again, it is the same.
  expect(JSON.parse(JSON.stringify([...trials]))).toEqual([...trials])
})

it('what is kept is there again, and what is forgotten is not', () => {
  const name = 'tried-by-a-test'
  const kept = {
    trials: new Map([[7, { measures: { off: 1e-3 }, wrong: 'broke' }]]),
    ms: 12,
    codes: new Set(['a']),
  }
  save(name, kept)
  expect(load(name)).toEqual(kept)
  forget(name)
  expect(load(name).trials.size).toBe(0)
})
