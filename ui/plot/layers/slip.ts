// Where the belt slips: a bar along the foot of the speed chart, named in the chart's heading.
import { type SVGTemplateResult, svg } from 'lit'
import type { Mark } from '../../../sim/trace.ts'
import type { Span } from '../reduce.ts'
import type { Scales } from '../scales.ts'

/** Height of the bar, and the least width at which a spell can be seen, px. */
const HEIGHT = 6
const SEEN = 2

/** Stretches in which the belt slips within the part shown, [from, until] in s; those closer than a pixel are one. */
export function slipSpells(
  marks: readonly Mark[],
  { from, to, perPixel }: Span,
): readonly (readonly [number, number])[] {
  const spells: [number, number][] = []
  for (const mark of marks) {
    if (mark.kind !== 'belt slips' || mark.until < from || mark.t > to) continue
    const last = spells.at(-1)
    if (last && mark.t - last[1] < perPixel) last[1] = Math.max(last[1], mark.until)
    else spells.push([mark.t, mark.until])
  }
  return spells
}

/** The bar. */
export const slipMark = (
  spells: readonly (readonly [number, number])[],
  { x, box }: Scales,
): SVGTemplateResult =>
  svg`${spells.map(
    ([from, until]) => svg`
      <rect class="slips" x=${x(from)} y=${box.bottom - HEIGHT} width=${Math.max(SEEN, x(until) - x(from))} height=${HEIGHT} />`,
  )}`
