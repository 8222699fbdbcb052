// Pieces of page around the charts: heading with unit and table button, table, readouts above a narrow chart, heat key.
import { html, nothing, type TemplateResult } from 'lit'
import { show, told } from '../../sim/say/number.ts'
import type { Units } from '../../sim/say/units.ts'
import type { Table } from './chart.ts'
import { HEAT_STOPS_C, heatGradient } from './heat.ts'
import { lineSample, type Reading } from './layers/readout.ts'
import type { Shown } from './shown.ts'
import { exactClock } from './time.ts'

/** Heading of a chart: title, note in plain weight, and the button that shows its table. */
export const heading = (
  { title, unit, hint, left }: { title: string; unit: string; hint: string | TemplateResult; left: number },
  open: boolean,
  turn: () => void,
): TemplateResult => html`
  <div class="head" style="padding-left: ${left}px">
    <h3>${title} <small>${unit}</small></h3>
    ${hint === '' ? nothing : html`<span class="note">${hint}</span>`}
    <button type="button" aria-expanded=${open ? 'true' : 'false'} aria-label="${open ? 'Hide table' : 'Show as table'}: ${title}" @click=${turn}>
      ${open ? 'Hide table' : 'Show as table'}
    </button>
  </div>`

/** The table of a chart, scrolling in its own frame. */
export const tableOf = (title: string, { head, rows }: Table, left: number): TemplateResult => html`
  <div class="table" role="region" aria-label="${title}, table" tabindex="0" style="margin-left: ${left}px">
    <table>
      <thead>
        <tr>${head.map((text) => html`<th scope="col">${text}</th>`)}</tr>
      </thead>
      <tbody>
        ${rows.map(
          ([first, ...rest]) =>
            html`<tr><th scope="row">${first}</th>${rest.map((text) => html`<td>${text}</td>`)}</tr>`,
        )}
      </tbody>
    </table>
  </div>`

/** Names at their line samples, in a line: who is who in charts without gutter. */
export const namesLine = (variants: readonly Shown[], active: Shown): TemplateResult => html`
  <div class="now">
    ${variants.map(
      (variant) => html`
        <span class=${variant.series}>
          <svg width="18" height="8" aria-hidden="true">${lineSample(variant.series, variant === active, 0, 4)}</svg><b>${variant.name}</b>
        </span>`,
    )}
  </div>`

/** Readouts in a line, for a chart without gutter. */
export const readingsLine = (
  reads: string,
  at: number,
  readings: readonly Reading[],
  left: number,
): TemplateResult | typeof nothing =>
  readings.length === 0
    ? nothing
    : html`<div class="now" style="padding-left: ${left}px">
        <span class="note">${reads}at ${exactClock(at)}</span>
        ${readings.map(
          ({ series, active, text }) => html`
            <span class=${series}>
              <svg width="18" height="8" aria-hidden="true">${lineSample(series, active, 0, 4)}</svg><b>${text}</b>
            </span>`,
        )}
      </div>`

/** Key of the heat scale, in the reader's unit. */
export const heatKey = (units: Units): TemplateResult => html`
  <span class="key note">
    ${show(HEAT_STOPS_C[0], 'temperature', units).number}
    <i style="background: ${heatGradient()}"></i>
    ${told(HEAT_STOPS_C[HEAT_STOPS_C.length - 1], 'temperature', units)}
  </span>`
