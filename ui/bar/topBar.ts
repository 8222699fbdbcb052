// The bar over the sheet: the mark, this job, others kept and examples, undo, units, text size, theme, print, open, save, link.
import { html, LitElement, nothing } from 'lit'
import { customElement, property, state } from 'lit/decorators.js'
import { LESSON_TITLES, LESSONS } from '../../sim/lessons/lesson.ts'
import type { Scenario } from '../../sim/scenario.ts'
import type { Units } from '../../sim/say/units.ts'
import { BLANK } from '../change/blank.ts'
import { settle } from '../edit/settle.ts'
import { wish } from '../events.ts'
import type { Listed } from '../keep/shelf.ts'
import type { Settings } from '../settings.ts'
import { base, buttons } from '../style/base.ts'
import { mark } from '../style/marks.ts'
import { barStyle } from './barStyle.ts'
import './letters.ts'
import type { Zone } from './letters.ts'

/** The day a job was last changed, as the reader writes days. */
const dayOf = (saved: number): string =>
  new Date(saved).toLocaleDateString(undefined, { day: 'numeric', month: 'short' })

@customElement('top-bar')
export class TopBar extends LitElement {
  static styles = [base, buttons, barStyle]

  @property() job = ''
  @property() slot = ''
  /** Jobs kept in this browser. */
  @property({ attribute: false }) shelf: readonly Listed[] = []
  @property({ type: Boolean }) undoable = false
  @property({ type: Boolean }) redoable = false
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

  private another = (event: Event) => {
    const { value } = event.currentTarget as HTMLSelectElement
    const scenario = this.demos[Number(value)]
    const lesson = LESSONS.find((name) => value === `lesson ${name}`)
    if (value === 'new') wish(this, { kind: 'job', scenario: BLANK })
    else if (scenario) wish(this, { kind: 'job', scenario })
    else if (lesson) wish(this, { kind: 'open lesson', name: lesson })
    else if (value !== 'here') wish(this, { kind: 'open kept', slot: value })
  }

  private opened = (event: Event) => {
    const box = event.currentTarget as HTMLInputElement
    const file = box.files?.[0]
    if (file) wish(this, { kind: 'open file', file })
    box.value = ''
  }

  render() {
    const { settings, demos, job, slot, shelf } = this
    const kept = shelf.filter((each) => each.slot !== slot)
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
          <label class="unseen" for="job">Job on the sheet; choose another</label>
          <select id="job" data-now="here" @change=${this.another}>
            <option value="here" selected>${job || 'A job'}</option>
            ${
              kept.length > 0
                ? html`<optgroup label="Kept in this browser">
                    ${kept.map((each) => html`<option value=${each.slot}>${each.name || 'A job'}, ${dayOf(each.saved)}</option>`)}
                  </optgroup>`
                : nothing
            }
            <optgroup label="Examples">
              ${demos.map(({ name }, index) => html`<option value=${index}>${name}</option>`)}
            </optgroup>
            <optgroup label="Lessons">
              ${LESSONS.map((name) => html`<option value=${`lesson ${name}`}>${LESSON_TITLES[name]}</option>`)}
            </optgroup>
            <option value="new">A new, empty job</option>
          </select>
          <label class="button file"><input class="unseen" type="file" accept=".json,application/json"
            @change=${this.opened} />Open</label>
          <button @click=${() => wish(this, { kind: 'save' })}>Save job</button>
          <button @click=${() => wish(this, { kind: 'copy link' })}>Copy link</button>
          <span class="steps">
            <button ?disabled=${!this.undoable} @click=${() => wish(this, { kind: 'undo' })}>Undo</button>
            <button ?disabled=${!this.redoable} @click=${() => wish(this, { kind: 'redo' })}>Redo</button>
          </span>
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
        <button class="print folds" @click=${() => wish(this, { kind: 'print' })}>Print</button>
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
