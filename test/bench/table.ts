// README's table of speed, written by the bench between two marks.
import { readFileSync, writeFileSync } from 'node:fs'

/** What was measured, its evaluations, a ratio of two times of one run, and the goal. */
export interface Row {
  readonly what: string
  readonly evaluations: string
  readonly ratio: string
  readonly goal: string
}

const README = new URL('../../README.md', import.meta.url)
const START = '<!-- bench -->'
const END = '<!-- /bench -->'

/** Puts the rows into README. */
export function writeTable(rows: readonly Row[]): void {
  const text = readFileSync(README, 'utf8')
  const [from, to] = [text.indexOf(START), text.indexOf(END)]
  if (from < 0 || to < from) throw new Error(`README.md has no ${START} … ${END}.`)
  const lines = [
    '| what | evaluations | measured in one run | goal |',
    '|---|---|---|---|',
    ...rows.map(({ what, evaluations, ratio, goal }) => `| ${what} | ${evaluations} | ${ratio} | ${goal} |`),
  ]
  writeFileSync(README, `${text.slice(0, from + START.length)}\n${lines.join('\n')}\n${text.slice(to)}`)
}
