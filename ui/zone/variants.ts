// Zone C: the variants side by side; choosing, copying, renaming, removing them, and trying new ones.
import { html, LitElement, nothing } from 'lit'
import { customElement, property, state } from 'lit/decorators.js'
import type { Units } from '../../sim/say/units.ts'
import type { Try } from '../change/tries.ts'
import { wish } from '../events.ts'
import { base, buttons } from '../style/base.ts'
import { lineSample } from '../style/marks.ts'
import './pulleyTry.ts'
import type { Column, VariantRow } from './variantRows.ts'
import { variantStyle } from './variantStyle.ts'

@customElement('variants-zone')
export class VariantsZone extends LitElement {
  static styles = [base, buttons, variantStyle]

  @property({ attribute: false }) rows: readonly VariantRow[] = []
  @property({ attribute: false }) columns: readonly Column[] = []
  @property({ attribute: false }) units!: Units
  /** Changes of cooling worth a button, for the chosen variant. */
  @property({ attribute: false }) tries: readonly Try[] = []
  /** The pulley to offer, m; null until there is an answer to go by. */
  @property({ attribute: false }) pulley: number | null = null
  @property({ attribute: false }) makePulley: ((text: string, diameter: number) => Try) | null = null
  /** The variant whose name is being written. */
  @state() private naming: string | null = null

  private key = (event: KeyboardEvent, row: VariantRow) => {
    const at = this.rows.indexOf(row)
    const to = { ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: this.rows.length - 1 }[event.key]
    if (to !== undefined) {
      event.preventDefault()
      this.focusRow(Math.min(this.rows.length - 1, Math.max(0, to)))
    } else if (event.key === 'Delete' && !row.asFound) {
      wish(this, { kind: 'remove', id: row.id })
      void this.updateComplete.then(() => this.focusRow(at - 1))
    }
  }

  private focusRow(index: number): void {
    this.renderRoot.querySelectorAll<HTMLElement>('.pick')[index]?.focus()
  }

  private async startNaming(id: string): Promise<void> {
    this.naming = id
    await this.updateComplete
    this.renderRoot.querySelector<HTMLInputElement>('.name')?.select()
  }

  private named(event: Event, row: VariantRow): void {
    if (this.naming !== row.id) return
    this.naming = null
    wish(this, { kind: 'rename', id: row.id, name: (event.currentTarget as HTMLInputElement).value })
    void this.updateComplete.then(() => this.focusRow(this.rows.findIndex(({ id }) => id === row.id)))
  }

  private name(row: VariantRow) {
    if (this.naming === row.id)
      return html`<input class="name" aria-label="Name of the variant" maxlength="60" .value=${row.name}
        @click=${(event: Event) => event.stopPropagation()}
        @blur=${(event: Event) => this.named(event, row)}
        @keydown=${(event: KeyboardEvent) => {
          if (event.key === 'Enter') this.named(event, row)
          if (event.key === 'Escape') {
            event.stopPropagation()
            this.naming = null
          }
        }} />`
    return html`<button class="pick" aria-pressed=${row.chosen ? 'true' : 'false'}
      @keydown=${(event: KeyboardEvent) => this.key(event, row)}>${lineSample(row.series)}${row.name}</button>`
  }

  private row(row: VariantRow) {
    const says = { working: 'working it out …', previous: 'previous result', wrong: '', ready: '' }[row.state]
    const acts =
      row.chosen && !row.asFound
        ? html`<span class="acts">
            <button @click=${(event: Event) => {
              event.stopPropagation()
              void this.startNaming(row.id)
            }}>Rename</button>
            <button @click=${(event: Event) => {
              event.stopPropagation()
              wish(this, { kind: 'remove', id: row.id })
            }}>Remove</button>
          </span>`
        : nothing
    return html`<tr class="${row.chosen ? 'chosen' : ''} ${row.state === 'ready' ? '' : 'pending'}"
      @click=${() => wish(this, { kind: 'choose', id: row.id })}>
      <th scope="row">
        ${this.name(row)}
        <span class="note ${row.state === 'wrong' ? 'bad' : ''}">${row.short}${says ? html`; ${says}` : nothing}</span>
        ${acts}
      </th>
      ${this.columns.map(({ label, unit }, index) => {
        const cell = row.cells[index]
        return html`<td data-label="${label}, ${unit}" class=${cell?.bad ? 'bad' : ''}>${cell?.text ?? '…'}</td>`
      })}
    </tr>`
  }

  render() {
    const { pulley, makePulley } = this
    return html`<div class="head">
        <div><h2>Variants</h2><p>Choose a row to see it above and in the charts.</p></div>
        <button @click=${() => wish(this, { kind: 'copy' })}>Copy as new variant</button>
      </div>
      <table>
        <thead>
          <tr>
            <th scope="col">Variant</th>
            ${this.columns.map(({ label, unit }) => html`<th scope="col">${label}<span>${unit}</span></th>`)}
          </tr>
        </thead>
        <tbody>${this.rows.map((row) => this.row(row))}</tbody>
      </table>
      <div class="try">
        <h3>Try it</h3>
        ${this.tries.map((each) => html`<button @click=${() => wish(this, each.wish)}>${each.label}</button>`)}
        ${
          pulley !== null && makePulley
            ? html`<pulley-try .units=${this.units} .diameter=${pulley} .make=${makePulley}></pulley-try>`
            : nothing
        }
      </div>`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'variants-zone': VariantsZone
  }
}
