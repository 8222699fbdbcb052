// A trip mark: the contact as a circuit diagram shows it, open or closed, on the limit it crosses.
import { type SVGTemplateResult, svg } from 'lit'
import type { Series } from '../shown.ts'

/** Diameter of the marks, px: the active variant's, and the others'. */
export const TRIP_SIZE = { active: 21, other: 13 } as const

/** A contact at (cx, cy) px. */
export function tripMark(
  cx: number,
  cy: number,
  open: boolean,
  series: Series,
  active: boolean,
): SVGTemplateResult {
  const r = (active ? TRIP_SIZE.active : TRIP_SIZE.other) / 2
  const half = 0.62 * r
  const gap = 0.3 * r
  const blade = open
    ? svg`<path d="M${-half},0H${-gap}L${gap * 0.9},${-0.45 * r}M${gap},0H${half}" />`
    : svg`<path d="M${-half},0H${half}" />
          <circle class="dot" cx=${-gap} cy="0" r=${0.13 * r} />
          <circle class="dot" cx=${gap} cy="0" r=${0.13 * r} />`
  return svg`
    <g class="trip ${series} ${active ? 'active' : 'other'} ${open ? 'open' : 'closed'}" transform="translate(${cx},${cy})">
      <circle class="ring" r=${r - 1} />${blade}
    </g>`
}
