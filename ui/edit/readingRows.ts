// Readings of one kind: a row of fields each, more rows where wanted, and under them what they tell.
import { css, html, LitElement, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { givenAt, inputAt } from '../../sim/scenario.ts'
import { wish } from '../events.ts'
import { base, buttons } from '../style/base.ts'
import { type FormState, field } from './field.ts'
import { fieldStyle, worthLines } from './fieldStyle.ts'
import { formStyle } from './formStyle.ts'
import { knownOf, valueWords } from './known.ts'
import { isWhole, partPath, READINGS, type ReadingKind, type ReadingPath, rowOf } from './readings.ts'

const FROM = {
  measured: 'Measured',
  plate: 'From the plate',
  estimated: 'Estimated',
  given: 'Typed in by hand, and used instead',
} as const

@customElement('reading-rows')
export class ReadingRows extends LitElement {
  static styles = [
    base,
    buttons,
    fieldStyle,
    formStyle,
    css`
      :host {
        display: block;
        margin-bottom: 18px;
      }
      .fields {
        grid-template-columns: repeat(auto-fill, minmax(min(100%, calc(116px * var(--k))), 1fr));
      }
      .row {
        position: relative;
      }
      quantity-field {
        margin-bottom: 10px;
      }
      .under {
        display: flex;
        flex-wrap: wrap;
        align-items: baseline;
        gap: 2px 14px;
      }
      .under .note {
        flex: 1 1 18ch;
        min-width: 0;
      }
      .under button.link {
        font: var(--type-note);
      }
      button.away {
        min-height: 24px;
        margin: -4px 0 8px;
        font: var(--type-note);
      }
      @media (max-width: 759.98px) {
        .under button.link,
        button.away {
          min-height: 44px;
        }
      }
      @media print {
        button {
          display: none;
        }
      }
    `,
  ]
  static shadowRootOptions = { ...LitElement.shadowRootOptions, delegatesFocus: true }

  @property() path: ReadingPath = 'bench.ohms'
  @property({ attribute: false }) form!: FormState
  /** Without the line that says what the readings tell. */
  @property({ type: Boolean }) bare = false

  private get rows(): readonly unknown[] {
    const list = givenAt(this.form.asked, this.path)
    return Array.isArray(list) ? list : []
  }

  private row(kind: ReadingKind, index: number, count: number) {
    const { form, path } = this
    const nth = index === 0 ? '' : `, ${index + 1}`
    return html`<div class="row">
      <div class="fields">
        ${kind.parts.map(({ key, label }) => {
          const input = inputAt(form.asked, partPath(path, index, key))
          return input
            ? field(input, form, { label: label + nth, helper: this.partHelp(key, index) })
            : nothing
        })}
      </div>
      ${
        count > kind.least
          ? html`<button class="link away" aria-label="Take away ${kind.name}, reading ${index + 1}"
              @click=${() => wish(this, { kind: 'remove reading', of: path, index })}>Take away</button>`
          : nothing
      }
    </div>`
  }

  /** Help once, under the first row, and none where zone J says how. */
  private partHelp(key: string, index: number): string | null {
    const part = READINGS[this.path].parts.find((each) => each.key === key)
    if (this.bare) return part?.needed === false ? 'if you can read it' : ''
    return index === 0 ? null : ''
  }

  private tells(kind: ReadingKind): string {
    const { form, path } = this
    const half = this.rows.some((item) => {
      const row = rowOf(path, item)
      return Object.values(row).some((value) => value !== '') && !isWhole(path, row)
    })
    if (half) return 'Half a reading counts for nothing yet: fill in the other field too.'
    const knowledge = form.motor && knownOf(form.motor)
    if (!knowledge) return ''
    const { from } = knowledge.known[kind.tells]
    return `${FROM[from]}: ${valueWords(knowledge, kind.tells, form.units)}.`
  }

  render() {
    const { form, path } = this
    const kind: ReadingKind = READINGS[path]
    const count = Math.max(kind.least, this.rows.length)
    const worth = form.notes.filter((note) => note.path === path)
    const wrong = form.problems.filter((problem) => problem.path === path)
    return html`<div role="group" aria-label=${kind.name}>
      ${Array.from({ length: count }, (_, index) => this.row(kind, index, count))}
      ${wrong.map((problem) => html`<p class="note bad"><strong>${problem.wrong} ${problem.wouldDo}</strong></p>`)}
      <div class="under">
        ${this.bare ? nothing : html`<p class="note">${this.tells(kind)}</p>`}
        <button class="link" @click=${() => wish(this, { kind: 'add reading', of: path })}>${kind.another}</button>
      </div>
      ${worthLines(worth)}
    </div>`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'reading-rows': ReadingRows
  }
}
