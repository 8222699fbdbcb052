// Free words: a name, kept as typed and only ever shown as text.
import { html, LitElement } from 'lit'
import { customElement, property, query } from 'lit/decorators.js'
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
  @query('input') private box!: HTMLInputElement

  private commit = () => wish(this, { kind: 'edit', path: this.input.path, text: this.box.value })

  private key = (event: KeyboardEvent) => {
    if (event.key !== 'Escape' || this.box.value === this.input.text) return
    event.stopPropagation()
    this.box.value = this.input.text
  }

  render() {
    const { field, text } = this.input
    if (field.kind !== 'text') return html``
    return html`<div class=${classMap({ whole: true, wrong: this.problem !== null, changed: this.asFound !== null })}>
      <label for="box">${field.label}</label>
      <div class="frame">
        <input id="box" class="words" type="text" autocomplete="off" maxlength=${field.longest}
          aria-describedby="helper" aria-invalid=${this.problem ? 'true' : 'false'}
          .value=${live(text)} @change=${this.commit} @keydown=${this.key} />
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
