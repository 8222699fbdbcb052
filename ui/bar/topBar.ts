// The bar over the sheet: the mark, the job and the examples, units, text size, theme, print, open and save.
import { html, LitElement } from 'lit'
import { customElement, property, state } from 'lit/decorators.js'
import type { Scenario } from '../../sim/scenario.ts'
import type { Units } from '../../sim/say/units.ts'
import { settle } from '../edit/settle.ts'
import { wish } from '../events.ts'
import type { Settings } from '../settings.ts'
import { base, buttons } from '../style/base.ts'
import { mark } from '../style/marks.ts'
import { barStyle } from './barStyle.ts'
import './letters.ts'
import type { Zone } from './letters.ts'

@customElement('top-bar')
export class TopBar extends LitElement {
  static styles = [base, buttons, barStyle]

  @property() job = ''
  @property({ attribute: false }) demos: readonly Scenario[] = []
  @property({ attribute: false }) zones: readonly Zone[] = []
  @property({ attribute: false }) settings!: Settings
  /** On a phone all but the name and the theme waits behind Menu. */
  @state() private open = false

  protected updated(): void {
    settle(this.renderRoot)
  }

  private units(part: Partial<Units>): void {
    wish(this, { kind: 'units', units: { ...this.settings.units, ...part } })
  }

  private pair<T extends string>(
    name: string,
    now: T,
    options: Readonly<Record<T, string>>,
    use: (value: T) => void,
  ) {
    return html`<div class="pair" role="group" aria-label=${name}>
      ${(Object.keys(options) as T[]).map(
        (value) =>
          html`<button aria-pressed=${value === now ? 'true' : 'false'} @click=${() => use(value)}>${options[value]}</button>`,
      )}
    </div>`
  }

  private example = (event: Event) => {
    const list = event.currentTarget as HTMLSelectElement
    const scenario = this.demos[Number(list.value)]
    if (scenario) wish(this, { kind: 'job', scenario })
  }

  private opened = (event: Event) => {
    const box = event.currentTarget as HTMLInputElement
    const file = box.files?.[0]
    if (file) wish(this, { kind: 'open file', file })
    box.value = ''
  }

  render() {
    const { settings, demos, job } = this
    const at = demos.findIndex(({ name }) => name === job)
    const dark = settings.theme === 'dark'
    const large = settings.size === 'large'
    const theme = html`<button class="theme"
      @click=${() => wish(this, { kind: 'theme', theme: dark ? 'light' : 'dark' })}>${dark ? 'Light' : 'Dark'}</button>`
    return html`<div class="bar ${this.open ? 'open' : ''}">
        <div class="name">${mark}<span>Dutywright</span></div>
        <button class="menu" aria-expanded=${this.open ? 'true' : 'false'} @click=${() => {
          this.open = !this.open
        }}>Menu</button>
        <div class="job folds">
          <label class="unseen" for="job">Job on the sheet; choose another example</label>
          <select id="job" data-now=${at} @change=${this.example}>
            ${at < 0 ? html`<option value="-1" selected>${job}</option>` : ''}
            ${demos.map(({ name }, index) => html`<option value=${index} ?selected=${index === at}>${name}</option>`)}
          </select>
          <label class="button file"><input class="unseen" type="file" accept=".json,application/json"
            @change=${this.opened} />Open</label>
          <button @click=${() => wish(this, { kind: 'save' })}>Save job</button>
        </div>
        <div class="set folds">
          ${this.pair('Units', settings.units.system, { us: 'hp, in', metric: 'kW, mm' }, (system) => this.units({ system }))}
          ${this.pair('Temperature', settings.units.temperature, { '°C': '°C', '°F': '°F' }, (temperature) =>
            this.units({ temperature }),
          )}
          <button aria-pressed=${large ? 'true' : 'false'}
            @click=${() => wish(this, { kind: 'size', size: large ? 'plain' : 'large' })}>Larger text</button>
        </div>
        ${theme}
        <button class="print folds" @click=${() => print()}>Print</button>
      </div>
      <zone-letters class="folds ${this.open ? 'open' : ''}" .zones=${this.zones} @gone=${() => {
        this.open = false
      }}></zone-letters>`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'top-bar': TopBar
  }
}
