// A cure as a button: what stands on it, and the variant it makes.
import type { Cure } from '../../advise/finding.ts'

/** A change to try. */
export interface Button {
  readonly label: string
  readonly name: string
  readonly changes: Cure['changes']
}

/** Labels where "Try …" would not do. */
const LABELS: Readonly<Record<string, string>> = {
  Earthed: 'Mark as earthed',
  'Cutoff wired': 'Try it wired',
  Cleaned: 'Try it clean',
}

/** The button of a cure. */
export const button = ({ name, changes }: Cure): Button => ({
  label: LABELS[name] ?? `Try ${name.charAt(0).toLowerCase()}${name.slice(1)}`,
  name,
  changes,
})
