// Small drawn signs: tick, cross, line sample of a variant, the product's own mark, parts of a drive line.
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

const drawn = (shape: TemplateResult): TemplateResult => html`<svg width="56" height="56" viewBox="0 0 56 56"
  aria-hidden="true" fill="var(--raise)" stroke="var(--ink)" stroke-width="1.75" stroke-linejoin="round">${shape}</svg>`

/** The four parts of a drive line, each as a small line drawing. */
export const parts = {
  supply: drawn(svg`<rect x="10" y="6" width="36" height="44" rx="3" /><circle cx="28" cy="23" r="10" />
    <path d="M28 23 21.5 16" /><path d="M17 41h22" stroke-width="1" /><path d="M17 44h22" stroke-width="1" />`),
  motor:
    drawn(svg`<path d="M14 44h28l3 6H11Z" /><circle cx="28" cy="25" r="20" /><circle cx="28" cy="25" r="14" stroke-width="1" />
    <circle cx="28" cy="25" r="4.5" /><path d="M28 2v46 M5 25h46" stroke-width=".75" stroke-dasharray="9 2.5 2.5 2.5" />`),
  belt: drawn(svg`<path d="M9.5 34 30.5 8.6 M20 47 47.4 32" stroke-width="3" /><circle cx="15" cy="40" r="8" /><circle cx="15" cy="40" r="2" />
    <circle cx="39" cy="20" r="14" /><circle cx="39" cy="20" r="4" />`),
  mill: drawn(svg`<path d="M9 3h38l-7 14H16Z" /><rect x="11" y="17" width="34" height="24" /><path d="M15 41 11 54 M41 41l4 13" />
    <circle cx="28" cy="29" r="8" /><path d="M28 21v16 M20 29h16" stroke-width="1" />`),
  machine:
    drawn(svg`<path d="M14 44 9 54 M42 44l5 10 M9 54h7 M40 54h7" /><rect x="9" y="6" width="38" height="38" rx="2" />
    <circle cx="28" cy="25" r="13" /><circle cx="28" cy="25" r="3.5" />
    <path d="M28 12v9.5 M28 28.5v9.5 M15 25h9.5 M31.5 25h9.5" stroke-width="1" />`),
} as const
