// Levers of the duty: longer rests, or shorter work, where the duty has both.
import type { Case } from './case.ts'
import type { Pulled } from './levers.ts'

const rounded = (seconds: number): string =>
  seconds >= 120 ? `${Math.round(seconds / 60)} min` : `${Math.max(1, Math.round(seconds))} s`

/** Times the longest rest. */
const LONGER = 3

/** The longest step with the controller off, three times as long. */
export function longerRest({ job, work }: Case): Pulled | null {
  const { phases } = job.duty
  const rests = phases.flatMap(({ speed, seconds }, index) => (speed === 0 && seconds > 0 ? [index] : []))
  const [longest] = rests.sort((a, b) => phases[b].seconds - phases[a].seconds)
  if (longest === undefined || longest === work.phase) return null
  const text = rounded(LONGER * phases[longest].seconds)
  return { name: `Rests of ${text}`, changes: { [`duty.phases.${longest}.lasts`]: text } }
}

/** The hardest step half as long, where there is a rest to cool in. */
export function shorterWork({ job, work }: Case): Pulled | null {
  const { phases } = job.duty
  if (!phases.some(({ speed, seconds }) => speed === 0 && seconds > 0)) return null
  const text = rounded(phases[work.phase].seconds / 2)
  return { name: `${text} of work at a time`, changes: { [`duty.phases.${work.phase}.lasts`]: text } }
}
