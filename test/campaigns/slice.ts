// A campaign's slice as a Node test: its first seeds and every seed that ever failed. One test file a campaign.
import { expect, it } from 'vitest'
import { attempt, type Campaign, failuresOf, sumUp } from './campaign.ts'

/** Long enough for the slowest slice on a busy machine. ms */
const PATIENCE = 300_000

export function slice(campaign: Campaign): void {
  const { name, slice: count, fixed } = campaign
  const also = fixed.length > 0 ? ` and ${fixed.join(', ')}` : ''
  it(
    `${name}: seeds 1 to ${count}${also}`,
    async () => {
      const seeds = new Set([...Array.from({ length: count }, (_, n) => n + 1), ...fixed])
      const trials = new Map()
      for (const seed of seeds) trials.set(seed, await attempt(campaign, seed))
      expect(failuresOf(campaign, trials), `to repeat one: npm run campaign -- ${name} --only SEED`).toEqual(
        [],
      )
      expect(sumUp(campaign, trials).wrong).toBeNull()
    },
    PATIENCE,
  )
}
