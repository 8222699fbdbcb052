// A number with a unit: takes any text a person writes, shows it in the units asked for, never changes it unasked.
import { html, LitElement, type PropertyValues } from 'lit'
import { customElement, property, query, state } from 'lit/decorators.js'
import { live } from 'lit/directives/live.js'
import { classMap } from 'lit/directives/class-map.js'
import type { Problem } from '../../sim/problem.ts'
import type { Input } from '../../sim/scenario.ts'
import { unitFor, type Units } from '../../sim/say/units.ts'
import { wish } from '../events.ts'
import { base, buttons } from '../style/base.ts'
import { fieldStyle, helperLine } from './fieldStyle.ts'
import { type FieldText, fieldText, storedText } from './shownText.ts'

@customElement('quantity-field')
export class QuantityFieldElement extends LitElement {
  static styles = [base, buttons, fieldStyle]
  static shadowRootOptions = { ...LitElement.shadowRootOptions, delegatesFocus: true }

  @property({ attribute: false }) input!: Input
  @property({ attribute: false }) units!: Units
  @property({ attribute: false }) problem: Problem | null = null
  /** What the job as found has here, where the chosen variant differs. */
  @property({ attribute: false }) asFound: string | null = null
  /** In place of the field's own label. */
  @property() label = ''
  /** Shown in an empty box: what is taken in its place, in the unit shown. */
  @property() placeholder = ''
  @property({ attribute: false }) helper: string | null = null
  @property({ attribute: false }) worth: readonly Problem[] = []
  /** The unit it is always shown in, whatever the reader's units. */
  @property() unit = ''
  /** What is being typed: it outlives whatever is drawn anew around it, until it is committed or taken back. */
  @state() private draft: string | null = null
  @query('input') private box!: HTMLInputElement

  /** The unit last shown beside the box: a bare number after a bad entry is meant in it. */
  private lastUnit = ''

  private get shown(): FieldText {
    const { field, text } = this.input
    return field.kind === 'quantity' ? fieldText(field, text, this.units, this.unit) : { text, unit: '' }
  }

  protected willUpdate(changed: PropertyValues<this>): void {
    const { field, path } = this.input
    const other = changed.has('input') && changed.get('input')?.path !== path
    if (other) this.draft = null
    if (changed.has('units') || other)
      this.lastUnit = field.kind === 'quantity' ? this.unit || unitFor(field.dimension, this.units) : ''
    this.lastUnit = this.shown.unit || this.lastUnit
  }

  private type = () => {
    this.draft = this.box.value
  }

  private commit = () => {
    const { field, path } = this.input
    const { text } = this.shown
    const typed = this.draft
    // Drawn anew, the box shows what stands: also where nothing changes, as when its usual value returns.
    this.draft = null
    if (typed === null || field.kind !== 'quantity' || typed.trim() === text) return
    wish(this, { kind: 'edit', path, text: storedText(typed, this.lastUnit) })
  }

  /** Forgets what is being typed. */
  takeBack(): void {
    this.draft = null
  }

  private key = (event: KeyboardEvent) => {
    if (event.key === 'Enter') this.commit()
    if (event.key === 'Escape' && this.draft !== null && this.draft !== this.shown.text) {
      event.stopPropagation()
      this.takeBack()
    }
  }

  render() {
    const { field, path } = this.input
    const { text, unit } = this.shown
    const state = classMap({ whole: true, wrong: this.problem !== null, changed: this.asFound !== null })
    return html`<div class=${state}>
      <label for="box">${this.label || field.label}</label>
      <div class="frame">
        <input id="box" type="text" autocomplete="off" spellcheck="false" aria-describedby="unit helper"
          aria-invalid=${this.problem ? 'true' : 'false'} placeholder=${this.placeholder}
          .value=${live(this.draft ?? text)} @input=${this.type} @change=${this.commit} @blur=${this.commit} @keydown=${this.key} />
        <span class="unit" id="unit">${unit}</span>
      </div>
      ${helperLine(
        this.input,
        this.problem,
        this.asFound,
        (offer) => wish(this, { kind: 'edit', path, text: offer }),
        { helper: this.helper, worth: this.worth },
      )}
    </div>`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'quantity-field': QuantityFieldElement
  }
}
