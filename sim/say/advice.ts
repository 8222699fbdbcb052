// Advice in words: each finding with a verb first, what and why, the number that counts, and its buttons.
import type { Advice } from '../advise.ts'
import type { Cure, Finding, FindingKind, FindingName, Severity } from '../advise/finding.ts'
import { controlWords } from './advice/control.ts'
import { driveWords } from './advice/drive.ts'
import { heatWords } from './advice/heat.ts'
import { supplyWords } from './advice/supply.ts'
import type { Say, Words } from './advice/words.ts'
import type { Units } from './units.ts'

/** A change to try, as a button: what stands on it, and the variant it makes. */
export interface Button {
  readonly label: string
  readonly name: string
  readonly changes: Cure['changes']
}

/** A finding as it is read. */
export interface Told extends Words {
  readonly finding: FindingName
  readonly kind: FindingKind
  readonly severity: Severity
  readonly buttons: readonly Button[]
}

const WORDS: Readonly<Record<FindingName, Say>> = {
  ...supplyWords,
  ...controlWords,
  ...heatWords,
  ...driveWords,
}

const button = ({ name, changes }: Cure): Button => ({
  label: `Try ${name.charAt(0).toLowerCase()}${name.slice(1)}`.replace(/^Try (with|on) /, 'Try $1 '),
  name,
  changes,
})

/** A finding in words. */
export function findingWords(
  finding: Finding,
  { job, now }: Pick<Advice, 'job' | 'now'>,
  units: Units,
): Told {
  const words = WORDS[finding.name]({ finding, job, now, units })
  const { name, kind, severity, cures } = finding
  return { ...words, finding: name, kind, severity, buttons: cures.map(button) }
}

/** All of them, in order. */
export const adviceWords = (advice: Advice, units: Units): readonly Told[] =>
  advice.findings.map((finding) => findingWords(finding, advice, units))

/** Said where there is nothing to say. */
export const ALL_WELL = 'Nothing to mend: the numbers are in order.'
