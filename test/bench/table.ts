// README's tables that commands write, each between two marks; and the bench's.
import { readFileSync, writeFileSync } from 'node:fs'

/** What was measured, its evaluations, a ratio of two times of one run, and the goal. */
export interface Row {
  readonly what: string
  readonly evaluations: string
  readonly ratio: string
  readonly goal: string
}

const README = new URL('../../README.md', import.meta.url)
/** Puts lines into README between the marks of a name. Throws where it has none. */
export function betweenMarks(name: string, lines: readonly string[]): void {
  const [start, end] = [`<!-- ${name} -->`, `<!-- /${name} -->`]
  const text = readFileSync(README, 'utf8')
  const [from, to] = [text.indexOf(start), text.indexOf(end)]
  if (from < 0 || to < from) throw new Error(`README.md has no ${start} … ${end}.`)
  writeFileSync(README, `${text.slice(0, from + start.length)}\n${lines.join('\n')}\n${text.slice(to)}`)
}

/** Puts the bench's rows into README. */
export const writeTable = (rows: readonly Row[]): void =>
  betweenMarks('bench', [
    '| what | evaluations | measured in one run | goal |',
    '|---|---|---|---|',
    ...rows.map(({ what, evaluations, ratio, goal }) => `| ${what} | ${evaluations} | ${ratio} | ${goal} |`),
  ])
