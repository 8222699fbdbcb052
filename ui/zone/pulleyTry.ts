// A machine pulley to try: a small field with the ratio it would give, and its button.
import { css, html, LitElement } from 'lit'
import { customElement, property, state } from 'lit/decorators.js'
import { parseQuantity, toUnit } from '../../sim/quantity.ts'
import { unitFor, type Units } from '../../sim/say/units.ts'
import type { Try } from '../change/tries.ts'
import { wish } from '../events.ts'
import { base, buttons } from '../style/base.ts'

@customElement('pulley-try')
export class PulleyTry extends LitElement {
  static styles = [
    base,
    buttons,
    css`
      .pulley {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: 8px;
      }
      .pulley label {
        font: var(--type-label);
      }
      .pulley .frame {
        display: flex;
        align-items: center;
        min-height: var(--control);
        border: 1px solid var(--ink3);
        border-radius: var(--round-field);
      }
      .pulley input {
        width: calc(64px * var(--k));
        min-height: calc(var(--control) - 2px);
        padding: 0 0 0 12px;
        border: 0;
        border-radius: var(--round-field);
        background: none;
        color: var(--ink);
        font: var(--type-value);
      }
      .pulley .unit {
        padding-right: 12px;
        color: var(--ink2);
        font: var(--type-label);
      }
    `,
  ]

  @property({ attribute: false }) units!: Units
  /** Diameter to begin with, m. */
  @property({ type: Number }) diameter = 0
  /** What trying a pulley would be: its text, and its diameter in m. */
  @property({ attribute: false }) make!: (text: string, diameter: number) => Try
  /** What was typed; null until something is. */
  @state() private typed: string | null = null

  protected willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (changed.has('diameter') || changed.has('units')) this.typed = null
  }

  render() {
    const unit = unitFor('length', this.units)
    const text = this.typed ?? String(Number(toUnit(this.diameter, unit).toPrecision(4)))
    const parsed = parseQuantity(text, 'length', unit)
    const good = parsed.ok && parsed.value >= 0.005 && parsed.value <= 3
    const bare = /\d$/.test(text.trim())
    const tried = good ? this.make(bare ? `${text.trim()} ${unit}` : text.trim(), parsed.value) : null
    const go = () => {
      if (tried) wish(this, tried.wish)
    }
    return html`<div class="pulley">
      <label for="pulley">or a machine pulley of</label>
      <div class="frame">
        <input id="pulley" type="text" autocomplete="off" aria-describedby="unit" aria-invalid=${good ? 'false' : 'true'}
          .value=${text} @input=${(event: InputEvent) => {
            this.typed = (event.currentTarget as HTMLInputElement).value
          }}
          @keydown=${(event: KeyboardEvent) => {
            if (event.key === 'Enter') go()
          }} />
        <span class="unit" id="unit">${unit}</span>
      </div>
      <button ?disabled=${!tried} @click=${go}>${tried ? tried.label : 'A pulley of 5 mm to 3 m'}</button>
    </div>`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'pulley-try': PulleyTry
  }
}
