// Work and rest as plain text: each limit as likely and at its careful end, then the card.
import type { Limits, LimitsStudy } from '../studies/limits.ts'
import type { Found } from '../studies/limits/turns.ts'
import { canSentence, cutWords, limitsSentences } from './limits.ts'
import { type Card, limitsCard } from './limitsCard.ts'
import { duration, percent, told } from './number.ts'
import type { Units } from './units.ts'

/** One limit: its name, as likely, and at the careful end. */
export type LimitRow = readonly [name: string, likely: string, careful: string]

const found = (value: Found, any: string, none: string): string =>
  typeof value === 'number' ? duration(value) : value === 'any' ? any : none

const rest = (value: number | null): string => (value === null ? 'a night is not enough' : duration(value))

/** Every limit as a row of texts. */
export function limitRows(study: LimitsStudy, units: Units): readonly LimitRow[] {
  const row = (name: string, text: (limits: Limits) => string): LimitRow => [
    name,
    text(study.asGiven),
    text(study.careful),
  ]
  const first = study.asGiven.again
  return [
    row('All-day torque at this speed', ({ allDay }) => told(allDay.torque, 'torque', units)),
    row('Amps at that', ({ allDay }) => told(allDay.amps, 'current', units)),
    row('Lowest speed for this cut all day', ({ lowest }) =>
      lowest === null ? 'none' : lowest === 0 ? 'any' : told(lowest, 'angular speed', units),
    ),
    row('Longest run from cold', ({ cold }) => (cold === null ? 'all day' : duration(cold.seconds))),
    ...(first === null
      ? []
      : [
          row(`Again after ${duration(first.rest)}`, ({ again }) =>
            again === null ? 'all day' : duration(again.seconds),
          ),
          row('A next run of', (limits) => (limits.next === null ? 'all day' : duration(limits.next.run))),
          row('needs standing', (limits) => (limits.next === null ? 'nothing' : rest(limits.next.standing))),
          row('or running free', (limits) => (limits.next === null ? 'nothing' : rest(limits.next.free))),
        ]),
    row('Longest work in the cycle', ({ work }) => found(work, 'any', 'none')),
    row('Shortest rest in the cycle', (limits) => found(limits.rest, 'none needed', 'none is enough')),
    row('Biggest cut in the cycle', ({ cut }) =>
      typeof cut === 'number' ? `${percent(cut)} of this` : cut === 'any' ? 'any' : 'none',
    ),
    row('Hottest frame at that', ({ frameC }) =>
      frameC === null ? '—' : told(frameC, 'temperature', units),
    ),
  ]
}

/** A card as lines. */
function cardLines({ title, cut, rows, foot }: Card): string[] {
  const wide = Math.max(...rows.map(({ name }) => name.length))
  return [
    title,
    cut,
    ...rows.map(
      ({ name, value, about }) => `  ${name.padEnd(wide)}  ${value}${about === '' ? '' : ` (${about})`}`,
    ),
    foot,
  ]
}

/** The whole study, line by line. */
export function limitsLines(title: string, study: LimitsStudy, units: Units): string[] {
  const rows: readonly LimitRow[] = [['', 'likely', 'careful'], ...limitRows(study, units)]
  const widths = [0, 1].map((column) => Math.max(...rows.map((row) => row[column].length)))
  const can = canSentence(study, units)
  return [
    `${title}: ${cutWords(study, units)}`,
    limitsSentences(study, units),
    ...(can === '' ? [] : [can]),
    '',
    ...rows.map((row) => `  ${row[0].padEnd(widths[0])}  ${row[1].padEnd(widths[1])}  ${row[2]}`.trimEnd()),
    '',
    'To pin on the machine',
    ...cardLines(limitsCard(title, study, units)),
  ]
}
