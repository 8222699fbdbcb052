// The order of findings: what hurts people or may, then what harms most, what is missing before what could be better, by gain.
import type { Case } from './case.ts'
import { type Cured, type Draft, type Finding, isPerilous, isSevere, SEVERITIES } from './finding.ts'
import { isWhole } from './cures.ts'

/** How much cooler the best cure makes it, K; cures that change no number count for all. */
function gain({ cures }: Cured, one: Case): number {
  const gains = cures.map(({ outcome }) => (outcome ? one.now.hottestWindingC - outcome.hottestWindingC : 0))
  return Math.max(Number.NEGATIVE_INFINITY, ...gains)
}

/** True of a finding with a whole cure that makes an end of another. */
export const ends = ({ draft, cures }: Cured, other: Draft, one: Case): boolean =>
  !draft.consequence &&
  draft.name !== other.name &&
  cures.some(
    ({ whole, outcome, changes }) => whole && outcome !== null && isWhole(other, one.now, outcome, changes),
  )

const rank = ({ severity }: Draft): number => SEVERITIES.indexOf(severity)

/**
 * Findings in order. One that another's cure makes an end of stands after that, which is as urgent as it; but what
 * hurts people waits for no other.
 */
export function ordered(all: readonly Cured[], one: Case): Finding[] {
  const compare = (a: Cured, b: Cured, rankA: number, rankB: number): number =>
    rankA - rankB ||
    Number(b.draft.defect) - Number(a.draft.defect) ||
    Number(b.cures.some(({ whole }) => whole)) - Number(a.cures.some(({ whole }) => whole)) ||
    gain(b, one) - gain(a, one) ||
    0
  const following = new Map<Cured, Cured>()
  for (const each of all) {
    if (!each.draft.consequence) continue
    // What has to be done anyway is cured with another's cure: that other stands for it.
    const heads = all.filter(
      (head) => isSevere(head.draft.severity) && !head.draft.wanted && ends(head, each.draft, one),
    )
    const [head] = heads.sort((a, b) => compare(a, b, rank(a.draft), rank(b.draft)))
    if (head) following.set(each, head)
  }
  const isPeril = ({ draft }: Cured) => isPerilous(draft.severity)
  const waits = (each: Cured) => {
    const head = following.get(each)
    return head !== undefined && !isPeril(head) && !isPeril(each)
  }
  const followers = (head: Cured) => all.filter((each) => waits(each) && following.get(each) === head)
  const urgency = (each: Cured): number =>
    Math.min(rank(each.draft), ...followers(each).map(({ draft }) => rank(draft)))
  const heads = all.filter((each) => !waits(each)).sort((a, b) => compare(a, b, urgency(a), urgency(b)))
  const told = (each: Cured, urgent: number): Finding => {
    const { name, kind, evidence, quotes } = each.draft
    const after = following.get(each)?.draft.name ?? null
    // What another cure makes an end of needs none of its own, unless it is there to keep hands whole.
    const cures = after === null || kind === 'Safety' ? each.cures : []
    return { name, kind, severity: SEVERITIES[urgent], evidence, quotes, cures, after }
  }
  return heads.flatMap((head) => [
    told(head, urgency(head)),
    ...followers(head)
      .sort((a, b) => compare(a, b, rank(a.draft), rank(b.draft)))
      .map((each) => told(each, rank(each.draft))),
  ])
}
