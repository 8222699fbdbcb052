// Small drawn signs: tick, cross, line sample of a variant, the product's own mark.
import { html, svg, type TemplateResult } from 'lit'
import type { Series } from '../plot/shown.ts'

const sign = (path: string, colour: string): TemplateResult => html`<svg
  class="sign" width="16" height="16" viewBox="0 0 16 16" aria-hidden="true"
  fill="none" stroke=${colour} stroke-width="2.25" stroke-linecap="round" stroke-linejoin="round">${svg`<path d=${path} />`}</svg>`

export const tick = sign('M2.5 8.5 6.5 12.5 13.5 4', 'var(--ok)')
export const cross = sign('M3.5 3.5 12.5 12.5 M12.5 3.5 3.5 12.5', 'var(--bad)')

const LINES: Readonly<Record<Series, { width: number; dash: string }>> = {
  A: { width: 2.75, dash: 'none' },
  B: { width: 2.25, dash: 'none' },
  C: { width: 2.25, dash: '7 4' },
  D: { width: 2.75, dash: '3 2.5' },
}

/** The line a variant is drawn with, to set beside its name. */
export const lineSample = (series: Series): TemplateResult => {
  const { width, dash } = LINES[series]
  return html`<svg class="sample" width="32" height="8" viewBox="0 0 32 8" aria-hidden="true">${svg`<path
    d="M0 4H32" stroke=${`var(--series-${series.toLowerCase()})`} stroke-width=${width} stroke-dasharray=${dash} />`}</svg>`
}

/** Two pulleys and a belt. */
export const mark = html`<svg class="mark" width="38" height="26" viewBox="0 0 38 26" aria-hidden="true"
  fill="none" stroke="currentColor" stroke-linecap="round">
  <circle cx="10" cy="17" r="6.5" stroke-width="2.4" /><circle cx="10" cy="17" r="1.4" fill="currentColor" stroke="none" />
  <circle cx="26" cy="12" r="10" stroke-width="2.4" /><circle cx="26" cy="12" r="3" stroke-width="2" />
  <path d="M7.6 10.9 22.6 2.6 M11.6 23.3 28.4 21.7" stroke-width="2.4" /></svg>`
