// Duty types of IEC 60034-1: continuous, short-time and intermittent, with the values it recommends.
import type { Sourced } from './source.ts'

export interface DutyType extends Sourced {
  /** As a plate prints it. */
  readonly name: string
  readonly about: string
  /** Work and rest of one turn, s; a rest of Infinity: until as cold as the air. */
  readonly work: number
  readonly rest: number
}

const SOURCE = 'IEC 60034-1, clause 4.2 (duty types S1 to S3) and its recommended values; from memory'
const standing = 'memory' as const
const MINUTE = 60
/** An S3 turn, s, unless the plate says another. */
const TURN = 10 * MINUTE

const shortTime = (minutes: number): DutyType => ({
  name: `S2 ${minutes} min`,
  about: `${minutes} minutes from cold, then a rest until as cold as the air`,
  work: minutes * MINUTE,
  rest: Infinity,
  source: SOURCE,
  standing,
})

const intermittent = (percent: number): DutyType => ({
  name: `S3 ${percent} %`,
  about: `${percent} % of every 10 minutes, over and over`,
  work: (percent / 100) * TURN,
  rest: (1 - percent / 100) * TURN,
  source: SOURCE,
  standing,
})

/** Each duty type with the times it recommends, as plates print them. */
export const DUTY_TYPES: readonly DutyType[] = [
  { name: 'S1', about: 'on and on, without a rest', work: Infinity, rest: 0, source: SOURCE, standing },
  ...[10, 30, 60, 90].map(shortTime),
  ...[15, 25, 40, 60].map(intermittent),
]

/** The type with this name, however it is spaced and cased ("s3-25%", "S2 10min"); null where there is none. */
export function dutyType(text: string): DutyType | null {
  const bare = (name: string) => name.toLowerCase().replace(/[^a-z0-9]/g, '')
  const wanted = bare(text).replace(/(?<=^s2\d+)$/, 'min')
  return DUTY_TYPES.find(({ name }) => bare(name) === wanted) ?? null
}
