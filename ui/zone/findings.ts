// Any list of findings, in order: kind, what and why, the number that counts, and its buttons.
import { html, nothing, type TemplateResult } from 'lit'
import type { Told } from '../../sim/say/advice.ts'
import { wish } from '../events.ts'

function tries(from: EventTarget, { buttons, leads }: Told, first: boolean): readonly TemplateResult[] {
  return [
    ...buttons.map(
      ({ label, name, changes }, index) =>
        html`<button class=${first && index === 0 ? 'main' : 'act'}
          @click=${() => wish(from, { kind: 'try', name, changes })}>${label}</button>`,
    ),
    ...(leads === null
      ? []
      : 'zone' in leads
        ? [html`<a class="button act" href="#${leads.zone}">${leads.label}</a>`]
        : [
            html`<button class="act"
              @click=${() => wish(from, { kind: 'go to field', path: leads.path })}>${leads.label}</button>`,
          ]),
  ]
}

function row(from: EventTarget, told: Told, first: boolean): TemplateResult {
  const { severity, kind, headline, text, figure, note } = told
  return html`<li data-severity=${severity}>
    <p class="kind">${kind}</p>
    <div class="what"><h3>${headline}</h3><p>${text}</p></div>
    <p class="figure">${figure === '' ? nothing : html`<strong>${figure}</strong> <span>${note}</span>`}</p>
    <div class="tries">${tries(from, told, first)}</div>
  </li>`
}

/** The list; wishes go out from `from`. Styles: adviceStyle. */
export const findingList = (from: EventTarget, told: readonly Told[]): TemplateResult =>
  html`<ol class="findings">${told.map((each, index) => row(from, each, index === 0))}</ol>`
