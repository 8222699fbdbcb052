// What the job command tells beside the answer: findings with their cures, and what a symptom may come from.
import { type Advice, advise } from '../sim/advise.ts'
import { caseOf } from '../sim/advise/case.ts'
import { outcomeFrom } from '../sim/advise/outcome.ts'
import { type Diagnosis, diagnose } from '../sim/advise/symptoms.ts'
import { symptomOf } from '../sim/advise/symptoms/names.ts'
import type { Figures } from '../sim/judge.ts'
import { adviceWords, findingWords } from '../sim/say/advice.ts'
import type { Problem } from '../sim/problem.ts'
import { adviceLines, shownOf } from '../sim/say/adviceReport.ts'
import { SYMPTOM_WORDS, symptomLines, verdictWords } from '../sim/say/symptoms.ts'
import type { Units } from '../sim/say/units.ts'
import { withVariant } from '../sim/scenario.ts'
import type { Opened } from './open.ts'
import { drive } from './terminal.ts'

/** What is wanted of it: every finding and what to measure, or the three most urgent; and a symptom in a person's words. */
export interface Wanted {
  readonly findings: boolean
  readonly symptom: string | undefined
}

export interface Advised {
  readonly advice: Advice
  readonly diagnosis: Diagnosis | null
}

const MOST_FINDINGS = 3
const mostOf = ({ findings }: Wanted): number => (findings ? Number.POSITIVE_INFINITY : MOST_FINDINGS)

/** Why words name no symptom; null: they do, or there are none. */
export const symptomAmiss = (words: string | undefined): string | null =>
  words === undefined || symptomOf(words)
    ? null
    : `--symptom: "${words}" is none that is known. Try: ${Object.values(SYMPTOM_WORDS).join(', ')}.`

/** Advises on a job that was opened and run. */
export function adviseOn({ scenario, variant, reading }: Opened, figures: Figures, wanted: Wanted): Advised {
  const now = outcomeFrom(reading.job, figures, reading.motor.bench.flywheelDiameter)
  const advice = drive(advise(scenario, { variant, now, measure: wanted.findings }), 'Trying cures')
  if (!advice.ok) throw new Error('A job that was run does not read.')
  const seen = wanted.symptom === undefined ? null : symptomOf(wanted.symptom)
  if (!seen) return { advice, diagnosis: null }
  const one = caseOf(variant ? withVariant(scenario, variant) : scenario, reading, now)
  return { advice, diagnosis: diagnose(one, advice.findings, seen.symptom, seen.after) }
}

/** Line by line, for the report. */
export const advisedLines = ({ advice, diagnosis }: Advised, wanted: Wanted, units: Units): string[] => [
  ...(diagnosis ? [...symptomLines(diagnosis, units).map((line) => `  ${line}`), ''] : []),
  ...adviceLines(adviceWords(advice, units), mostOf(wanted)),
]

/** The notes that no finding tells in the same words: nothing is said twice. */
export function notesLeft(
  { advice }: Advised,
  notes: readonly Problem[],
  wanted: Wanted,
  units: Units,
): readonly Problem[] {
  const shown = shownOf(adviceWords(advice, units), mostOf(wanted))
  const plain = (text: string) => text.replaceAll(/\s/g, ' ')
  return notes.filter(({ wrong }) => !shown.some(({ text }) => plain(text).includes(plain(wrong))))
}

/** As data, each finding with its words. */
export const advisedData = ({ advice, diagnosis }: Advised, units: Units) => ({
  findings: advice.findings.map((finding) => ({ ...finding, words: findingWords(finding, advice, units) })),
  ...(diagnosis ? { diagnosis: { ...diagnosis, words: verdictWords(diagnosis, units) } } : {}),
})
