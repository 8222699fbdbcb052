// The words of the cuts that steps name: what each asks, between what, and by which row.
import { CUTS } from '../cuts/index.ts'
import type { Job } from '../job.ts'
import type { PhaseCut } from '../phaseCuts.ts'
import { cutSentence, knownWords, spreadText, sumText } from './cut.ts'
import type { Units } from './units.ts'

/** A cut in a few lines, the first of them what it asks. */
export interface CutWords {
  readonly asks: string
  readonly spread: string
  readonly sum: string
  readonly row: string
  readonly caution: string | null
}

/** What the spindle asks, how surely, and why. */
export const cutWords = (cut: PhaseCut, units: Units): CutWords => ({
  asks: cutSentence(cut, units),
  spread: cut.low === cut.high ? 'The number is your own.' : `8 times in 10 it is ${spreadText(cut, units)}.`,
  sum: sumText(cut.how, units),
  row: `${cut.row} (${knownWords(cut)}).`,
  caution: cut.caution,
})

/** The cuts of a job for its report, three lines each. */
export function phaseCutLines(cuts: readonly PhaseCut[], { duty }: Job, units: Units): string[] {
  return cuts.flatMap((cut) => {
    const name = duty.phases[cut.phase].name.trim() || `step ${cut.phase + 1}`
    const { asks, spread, sum, row, caution } = cutWords(cut, units)
    return [
      `  ${name}: ${CUTS[cut.kind].label}. ${asks} ${spread}`,
      `    ${sum}`,
      `    ${row}`,
      ...(caution === null ? [] : [`    ${caution}`]),
    ]
  })
}
