// Advice in words: each finding with a verb first, what and why, the number that counts, and its buttons.
import type { Advice } from '../advise.ts'
import type { Finding, FindingKind, FindingName, Severity } from '../advise/finding.ts'
import { sourceOf } from '../advise/sources.ts'
import { hardestPhase } from '../judge.ts'
import { type Button, button } from './advice/button.ts'
import { controlWords } from './advice/control.ts'
import { driveWords } from './advice/drive.ts'
import { heatWords } from './advice/heat.ts'
import { supplyWords } from './advice/supply.ts'
import { tooFastWords } from './advice/tooFast.ts'
import type { Say, Words } from './advice/words.ts'
import type { Units } from './units.ts'

/** A finding as it is read. */
export interface Told extends Words {
  readonly finding: FindingName
  readonly kind: FindingKind
  readonly severity: Severity
  readonly buttons: readonly Button[]
  /** Where else it leads: a zone of the page, or an input by its path. */
  readonly leads:
    | { readonly label: string; readonly zone: string }
    | { readonly label: string; readonly path: string }
    | null
}

const WORDS: Readonly<Record<FindingName, Say>> = {
  ...supplyWords,
  ...controlWords,
  ...heatWords,
  ...driveWords,
  ...tooFastWords,
}

const WIRING = { label: 'Show wiring', zone: 'K' } as const
const READING = { label: 'Enter reading', zone: 'J' } as const
const LEADS: Partial<Record<FindingName, Told['leads']>> = {
  noEarth: WIRING,
  notConnected: WIRING,
  noCutoff: WIRING,
  motorLead: WIRING,
  enableOnly: WIRING,
  restarts: WIRING,
  wheelUnknown: { label: 'Enter reading', path: 'machine.wheelSpeed' },
  earthUnknown: { label: 'Enter reading', path: 'supply.earth' },
}

function leadsOf({ name, quotes }: Finding, { job }: Pick<Advice, 'job'>): Told['leads'] {
  if (name === 'plate') return { label: 'Go to the field', path: quotes[0] }
  if (name !== 'doubt') return LEADS[name] ?? null
  return quotes[0] === 'cut'
    ? { label: 'Enter reading', path: `duty.phases.${hardestPhase(job.duty.phases)}.torque` }
    : READING
}

/** A finding in words. */
export function findingWords(
  finding: Finding,
  { job, now }: Pick<Advice, 'job' | 'now'>,
  units: Units,
): Told {
  const words = WORDS[finding.name]({ finding, job, now, units })
  const { name, kind, severity, cures } = finding
  const source = sourceOf(finding)
  return {
    ...words,
    text: source ? `${words.text} Source: ${source}.` : words.text,
    finding: name,
    kind,
    severity,
    buttons: cures.map(button),
    leads: leadsOf(finding, { job }),
  }
}

/** All of them, in order. */
export const adviceWords = (advice: Advice, units: Units): readonly Told[] =>
  advice.findings.map((finding) => findingWords(finding, advice, units))

/** Said where there is nothing to say. */
export const ALL_WELL = 'Nothing to mend: the numbers are in order.'
