// The handle under a chart: where the cross-hair or the scrubber stands, dragged with the chart and moved by keys.
import { html, svg, type TemplateResult } from 'lit'

export interface Handle {
  /** What it moves, and what it says there. */
  readonly label: string
  readonly text: string
  /** What stands on it. */
  readonly shown: string
  readonly low: number
  readonly high: number
  readonly now: number
  /** Its middle and its top in the chart, half its own width, and the chart's, px. */
  readonly x: number
  readonly top: number
  readonly half: number
  readonly width: number
  /** A key without Alt, Ctrl or Meta. */
  onKey(event: KeyboardEvent): void
}

const pointer = (side: 'left' | 'right'): TemplateResult => html`
  <svg width="7" height="9" viewBox="0 0 7 9" aria-hidden="true">
    ${side === 'left' ? svg`<path d="M7,0V9L0,4.5Z" />` : svg`<path d="M0,0V9L7,4.5Z" />`}
  </svg>`

/** The handle, kept inside the chart. */
export function handle({
  label,
  text,
  shown,
  low,
  high,
  now,
  x,
  top,
  half,
  width,
  onKey,
}: Handle): TemplateResult {
  const key = (event: KeyboardEvent) => {
    if (!(event.altKey || event.ctrlKey || event.metaKey)) onKey(event)
  }
  return html`<div class="handle" role="slider" tabindex="0" aria-label=${label} aria-valuemin=${low} aria-valuemax=${high}
    aria-valuenow=${now} aria-valuetext=${text} style="left: ${Math.min(width - half, Math.max(half, x))}px; top: ${top}px"
    @keydown=${key}>${pointer('left')}${shown}${pointer('right')}</div>`
}
