// Advice as plain text, for the command line.
import type { Told } from './advice.ts'
import { ALL_WELL } from './advice.ts'

const WIDTH = 96
const INDENT = '           '

/** Text broken into lines that fit a terminal. */
function wrapped(text: string): string[] {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(' ')) {
    if (line !== '' && line.length + word.length >= WIDTH) {
      lines.push(line)
      line = ''
    }
    line = line === '' ? word : `${line} ${word}`
  }
  return [...lines, line]
}

/** The findings, line by line; `most` of them, the rest counted. */
export function adviceLines(told: readonly Told[], most: number = Number.POSITIVE_INFINITY): string[] {
  if (told.length === 0) return [`  ${ALL_WELL}`]
  const shown = told.slice(0, most)
  const hidden = told.length - shown.length
  return [
    ...shown.flatMap(({ kind, headline, text, figure, note }) => [
      `  ${kind.padEnd(8)} ${headline}${figure === '' ? '' : `  [${figure} ${note}]`}`,
      ...wrapped(text).map((line) => `${INDENT}${line}`),
    ]),
    ...(hidden > 0 ? [`${INDENT}and ${hidden} more; --findings tells them all`] : []),
  ]
}
