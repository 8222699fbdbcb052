// The line over the charts of zone B while a log is at hand: show it or not, how far off it lies, and fit to it.
import { css, html, LitElement, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { gapWords } from '../../sim/say/log.ts'
import type { Units } from '../../sim/say/units.ts'
import type { ReadLogged } from '../change/warmUp.ts'
import { formStyle } from '../edit/formStyle.ts'
import { settle } from '../edit/settle.ts'
import { wish } from '../events.ts'
import type { Result } from '../store.ts'
import { base, buttons } from '../style/base.ts'

@customElement('log-line')
export class LogLine extends LitElement {
  static styles = [
    base,
    buttons,
    formStyle,
    css`
      .line {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: 4px 20px;
        margin-bottom: 8px;
        padding: 2px 0 4px;
      }
      .tick {
        display: block;
        margin: 0;
      }
      .tick label {
        min-height: var(--control);
        overflow-wrap: anywhere;
      }
      svg {
        flex: none;
      }
      circle {
        fill: var(--paper);
        stroke: var(--series-d);
        stroke-width: 1.5px;
      }
      p {
        flex: 1 1 30ch;
      }
      @media print {
        button,
        input {
          display: none;
        }
      }
    `,
  ]

  @property({ attribute: false }) logged!: ReadLogged
  @property({ attribute: false }) result: Result | null = null
  @property({ attribute: false }) units!: Units
  @property({ type: Boolean }) inUse = false

  protected updated(): void {
    settle(this.renderRoot)
  }

  render() {
    const { logged, result, inUse } = this
    const fits = logged.fit?.ok === true
    return html`<div class="line">
      <div class="tick"><label>
        <input type="checkbox" ?checked=${logged.shown} data-now=${logged.shown} @change=${(event: Event) =>
          wish(this, { kind: 'show log', on: (event.currentTarget as HTMLInputElement).checked })} />
        <svg width="26" height="8" viewBox="0 0 26 8" aria-hidden="true">
          <circle cx="4" cy="4" r="2.6" /><circle cx="13" cy="4" r="2.6" /><circle cx="22" cy="4" r="2.6" />
        </svg>
        <span>Log ${logged.file}, from the start of the job</span></label></div>
      <p class="note">${result && logged.shown ? gapWords(logged.log, result.trace, this.units) : nothing}
        ${inUse ? 'The motor’s heat numbers are fitted to it.' : nothing}</p>
      ${
        fits && !inUse
          ? html`<button class="act" @click=${() => wish(this, { kind: 'use heat' })}>Fit the heat numbers to it</button>`
          : nothing
      }
    </div>`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'log-line': LogLine
  }
}
