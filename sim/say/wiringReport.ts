// The wiring checklist as plain text and as data, for the command line.
import { GROUPS, type Statement } from '../wiring.ts'
import { indent } from './lines.ts'
import { GROUP_WORDS, wiringWords } from './wiring.ts'
import type { Units } from './units.ts'

const INDENT = '        '

/** The checklist line by line under its lead: a box to tick, what to do, why or how, and who says so. */
export const wiringLines = (lead: string, statements: readonly Statement[], units: Units): string[] => [
  ...indent(lead, '  '),
  ...GROUPS.flatMap((group) => {
    const own = statements.filter((each) => each.group === group)
    return own.length === 0
      ? []
      : ['', `  ${GROUP_WORDS[group]}`, ...own.flatMap((each) => lines(each, units))]
  }),
]

function lines(statement: Statement, units: Units): string[] {
  const { what, so } = wiringWords(statement, units)
  const { wrong, source } = statement
  const [first, ...more] = indent(what, INDENT)
  return [
    `    [ ] ${first.trimStart()}`,
    ...more,
    ...indent(`${wrong ? 'AS IT STANDS. ' : ''}${so} (${source})`, INDENT),
  ]
}

/** As data: each statement with its numbers (SI, °C), source and words. */
export const wiringData = (statements: readonly Statement[], units: Units) =>
  statements.map((statement) => ({ ...statement, words: wiringWords(statement, units) }))
