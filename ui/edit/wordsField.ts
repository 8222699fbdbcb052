// Free words: a name, kept as typed and only ever shown as text.
import { html, LitElement, type PropertyValues } from 'lit'
import { customElement, property, query, state } from 'lit/decorators.js'
import { live } from 'lit/directives/live.js'
import { classMap } from 'lit/directives/class-map.js'
import type { Problem } from '../../sim/problem.ts'
import type { Input } from '../../sim/scenario.ts'
import { wish } from '../events.ts'
import { base, buttons } from '../style/base.ts'
import { fieldStyle, helperLine } from './fieldStyle.ts'

@customElement('words-field')
export class WordsFieldElement extends LitElement {
  static styles = [base, buttons, fieldStyle]
  static shadowRootOptions = { ...LitElement.shadowRootOptions, delegatesFocus: true }

  @property({ attribute: false }) input!: Input
  @property({ attribute: false }) problem: Problem | null = null
  @property({ attribute: false }) asFound: string | null = null
  /** What is being typed, until it is committed or taken back. */
  @state() private draft: string | null = null
  @query('input') private box!: HTMLInputElement

  protected willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('input') && changed.get('input')?.path !== this.input.path) this.draft = null
  }

  private type = () => {
    this.draft = this.box.value
  }

  private commit = () => {
    const typed = this.draft
    this.draft = null
    if (typed !== null) wish(this, { kind: 'edit', path: this.input.path, text: typed })
  }

  private key = (event: KeyboardEvent) => {
    if (event.key !== 'Escape' || this.draft === null || this.draft === this.input.text) return
    event.stopPropagation()
    this.draft = null
  }

  render() {
    const { field, text } = this.input
    if (field.kind !== 'text') return html``
    return html`<div class=${classMap({ whole: true, wrong: this.problem !== null, changed: this.asFound !== null })}>
      <label for="box">${field.label}</label>
      <div class="frame">
        <input id="box" class="words" type="text" autocomplete="off" maxlength=${field.longest}
          aria-describedby="helper" aria-invalid=${this.problem ? 'true' : 'false'}
          .value=${live(this.draft ?? text)} @input=${this.type} @change=${this.commit} @blur=${this.commit} @keydown=${this.key} />
      </div>
      ${helperLine(this.input, this.problem, this.asFound, this.commit)}
    </div>`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'words-field': WordsFieldElement
  }
}
