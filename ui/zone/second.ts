// The second method beside the answer: its button, how far it has got, what it found.
import { css, html, nothing, type TemplateResult } from 'lit'
import { checkWords } from '../../sim/say/check.ts'
import { duration } from '../../sim/say/number.ts'
import type { Units } from '../../sim/say/units.ts'
import { wish } from '../events.ts'
import type { Check } from '../store.ts'

export const secondStyle = css`
  .second {
    display: grid;
    gap: 8px;
    margin-top: 12px;
  }
  .second .row {
    display: flex;
    align-items: center;
    gap: 12px;
  }
  progress {
    flex: 1;
    min-width: 60px;
    height: 8px;
    border: 0;
    border-radius: 4px;
    background: var(--grid);
    color: var(--act);
    appearance: none;
    overflow: hidden;
  }
  progress::-webkit-progress-bar {
    background: var(--grid);
  }
  progress::-webkit-progress-value {
    background: var(--act);
  }
  progress::-moz-progress-bar {
    background: var(--act);
  }
`

/** Button, progress or finding. */
export function second(from: EventTarget, check: Check | null, units: Units): TemplateResult {
  if (check?.kind === 'working')
    return html`<div class="second">
      <p class="note">A second method works it out again: ${duration(check.t)} of ${duration(check.of)}</p>
      <div class="row">
        <progress aria-label="Second method" max=${check.of} value=${check.t}></progress>
        <button class="act" @click=${() => wish(from, { kind: 'cancel check' })}>Cancel</button>
      </div>
    </div>`
  return html`<div class="second">
    <button @click=${() => wish(from, { kind: 'check' })}>Check with a second method</button>
    ${check?.kind === 'done' ? html`<p class="note found">${checkWords(check.comparison, units)}</p>` : nothing}
    ${check?.kind === 'stopped' ? html`<p class="note bad">The check was lost: ${check.why}.</p>` : nothing}
  </div>`
}
