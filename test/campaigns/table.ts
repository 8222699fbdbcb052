// README's table of campaigns: what is kept of each, between two marks.
import { betweenMarks } from '../bench/table.ts'
import { failuresOf, sumUp } from './campaign.ts'
import { load } from './kept.ts'
import { CAMPAIGNS } from './registry.ts'

/** Puts what is kept of every campaign that was run in full into README. */
export function writeCampaigns(): void {
  const rows = CAMPAIGNS.flatMap((campaign) => {
    const { trials, ms } = load(campaign.name)
    const all = new Map([...trials].filter(([seed]) => seed <= campaign.whole))
    if (all.size < campaign.whole) return []
    const failed = failuresOf(campaign, all).length
    const { words } = sumUp(campaign, all)
    const minutes = (ms / 60_000).toFixed(1)
    return `| \`${campaign.name}\`: ${campaign.about} | ${all.size}${failed > 0 ? `, ${failed} failed` : ''} | ${words} | ${minutes} |`
  })
  betweenMarks('campaigns', ['| campaign | seeds | worst | minutes |', '|---|---|---|---|', ...rows])
}
