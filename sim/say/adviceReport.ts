// Advice as plain text, for the command line.
import { isPerilous } from '../advise/finding.ts'
import type { Told } from './advice.ts'
import { ALL_WELL } from './advice.ts'
import { indent } from './lines.ts'

const INDENT = '           '

/** Those of the findings that are told: `most` of them, and whatever hurts people or may. */
export const shownOf = (told: readonly Told[], most: number): readonly Told[] =>
  told.filter(({ severity }, index) => index < most || isPerilous(severity))

/** The findings, line by line; `most` of them and whatever hurts people or may, the rest counted. */
export function adviceLines(told: readonly Told[], most: number = Number.POSITIVE_INFINITY): string[] {
  if (told.length === 0) return [`  ${ALL_WELL}`]
  const shown = shownOf(told, most)
  const hidden = told.length - shown.length
  return [
    ...shown.flatMap(({ kind, headline, text, figure, note }) => [
      `  ${kind.padEnd(8)} ${headline}${figure === '' ? '' : `  [${figure} ${note}]`}`,
      ...indent(text, INDENT),
    ]),
    ...(hidden > 0 ? [`${INDENT}and ${hidden} more; --findings tells them all`] : []),
  ]
}
