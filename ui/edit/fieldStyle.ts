// How a field looks: label, frame with the unit inside, one helper line, and what is wrong with it.
import { css, html, nothing, svg, type TemplateResult } from 'lit'
import type { Problem } from '../../sim/problem.ts'
import type { Input } from '../../sim/scenario.ts'

export const fieldStyle = css`
  /* Label, frame and helper take the rows of the form's grid, so that frames stand on one line. */
  :host {
    display: grid;
    grid-row: span 3;
    grid-template-rows: subgrid;
    align-items: start;
    margin-bottom: 20px;
  }
  .whole {
    display: contents;
  }
  label {
    align-self: end;
  }
  label,
  legend {
    display: block;
    margin-bottom: 4px;
    font: var(--type-label);
    font-weight: 500;
  }
  .frame {
    display: flex;
    align-items: center;
    min-height: var(--field);
    border: 1px solid var(--ink3);
    border-radius: var(--round-field);
    background: var(--paper);
  }
  /* The frame wears the ring; its box would wear a second one. */
  .frame:has(:focus-visible) {
    outline: var(--focus-ring);
    outline-offset: var(--focus-offset);
  }
  .frame :focus-visible {
    outline: 0;
  }
  input,
  select {
    flex: 1;
    width: 100%;
    min-width: 0;
    min-height: calc(var(--field) - 2px);
    padding: 0 4px 0 12px;
    border: 0;
    border-radius: var(--round-field);
    background: none;
    color: var(--ink);
    font: var(--type-value);
    font-variant-numeric: inherit;
  }
  /* What is worked out stands where a reading would: paler, and lighter. */
  input::placeholder {
    color: var(--ink3);
    font-weight: 400;
    opacity: 1;
  }
  select,
  input.words {
    font: var(--type-body);
    font-weight: 500;
    text-overflow: ellipsis;
  }
  option {
    background: var(--paper);
    color: var(--ink);
  }
  .unit {
    padding-right: 10px;
    color: var(--ink2);
    font: var(--type-note);
    white-space: nowrap;
  }
  .helper {
    margin-top: 4px;
    overflow-wrap: anywhere;
  }
  .wrong .frame {
    border: 1.5px solid var(--bad);
    background: var(--bad-soft);
  }
  .wrong .helper.told {
    display: flex;
    gap: 6px;
    color: var(--bad);
    font: var(--type-note);
    font-weight: 500;
  }
  .wrong svg {
    flex: none;
    margin-top: 1px;
  }
  .worth {
    margin-top: 6px;
    padding-left: 10px;
    border-left: 3px solid var(--hatch);
    overflow-wrap: anywhere;
  }
  .offers {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    margin-top: 8px;
  }
  .changed .frame {
    border-left: 4px solid var(--act);
  }
`

const warning = svg`<svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true"
  fill="none" stroke="currentColor" stroke-width="1.5" stroke-linejoin="round">
  <path d="M8 1.8 15 14H1Z M8 6v4 M8 11.6v1" /></svg>`

const sentence = (text: string): string => {
  const whole = text.charAt(0).toUpperCase() + text.slice(1)
  return /[.!?]$/.test(whole) ? whole : `${whole}.`
}

/** What else stands under a field. */
export interface Under {
  /** In place of the field's own help, where there is better to say. */
  readonly helper?: string | null
  /** What plate and bench say against each other here: worth a look, and no error. */
  readonly worth?: readonly Problem[]
}

/** Notes that are worth a look, a line each. */
export const worthLines = (worth: readonly Problem[]): TemplateResult =>
  html`${worth.map(({ wrong, wouldDo }) => html`<p class="worth note">${wrong} ${wouldDo}</p>`)}`

/** What stands under a field: what is wrong, or where the value is from, or how to get it; then what is worth a look. */
export function helperLine(
  input: Input,
  problem: Problem | null,
  asFound: string | null,
  use: (text: string) => void,
  { helper = null, worth = [] }: Under = {},
): TemplateResult {
  if (problem) {
    const offers = (problem.offers ?? []).slice(0, 3)
    return html`<div><p class="helper told" id="helper">${warning}<span>${problem.wrong} ${problem.wouldDo}</span></p>
      ${
        offers.length > 0
          ? html`<div class="offers">
              ${offers.map((offer) => html`<button class="act" @click=${() => use(offer)}>Use ${offer}</button>`)}
            </div>`
          : nothing
      }</div>`
  }
  const likely = input.low && input.high ? ` Likely ${input.low} to ${input.high}.` : ''
  const words =
    asFound !== null
      ? `This variant only. As found: ${asFound}.`
      : input.source
        ? sentence(input.source) + likely
        : (helper ??
          [input.usual && input.text !== '' ? 'Usual value.' : '', input.field.help ?? ''].join(' ').trim())
  return html`<div id="helper"><p class="helper note">${words}</p>${worthLines(worth)}</div>`
}
