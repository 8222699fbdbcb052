// A lesson beside the live sheet: a few sentences, the computed table, questions whose answers wait until they are asked for.
import { css, html, LitElement, nothing } from 'lit'
import { customElement, property, state } from 'lit/decorators.js'
import type { Facts, LessonName } from '../../sim/lessons.ts'
import { lessonSheet } from '../../sim/say/lessons.ts'
import type { Units } from '../../sim/say/units.ts'
import { wish } from '../events.ts'
import { base, buttons } from '../style/base.ts'
import type { Work } from '../study/work.ts'

@customElement('lesson-sheet')
export class LessonSheetElement extends LitElement {
  static styles = [
    base,
    buttons,
    css`
      :host {
        /* Clear of the margin with the letters. */
        padding: 20px 32px 24px calc(var(--margin-rail) + 32px);
        border-bottom: var(--zone-rule) solid var(--ink);
      }
      header,
      .do {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: 8px 16px;
      }
      header h2 {
        flex: 1;
      }
      .lead {
        max-width: 70ch;
        padding: 4px 0;
      }
      .scroll {
        overflow-x: auto;
        padding: 12px 0;
      }
      table {
        border-collapse: collapse;
        font: var(--type-label);
      }
      th,
      td {
        padding: 6px 24px 6px 0;
        border-top: 1px solid var(--rule);
        text-align: right;
        font-weight: 400;
        white-space: nowrap;
      }
      thead :is(th, td) {
        border-top: 0;
        font-weight: 600;
        white-space: normal;
        vertical-align: bottom;
      }
      th:first-child {
        text-align: left;
        white-space: normal;
      }
      ol {
        display: grid;
        gap: 10px;
        max-width: 78ch;
        padding: 8px 0 16px;
        counter-reset: q;
      }
      li {
        counter-increment: q;
        display: grid;
        grid-template-columns: 2ch 1fr;
        gap: 2px 10px;
      }
      li::before {
        content: counter(q);
        font-weight: 600;
      }
      li > * {
        grid-column: 2;
      }
      .ask {
        grid-row: 1;
        font-weight: 600;
      }
      .line {
        display: none;
        height: 56px;
        border-bottom: 1px solid var(--ink);
      }
      .blank td {
        position: relative;
      }
      @media (max-width: 759.98px) {
        :host {
          padding: 16px;
        }
      }
      @media print {
        .do,
        li button,
        header button {
          display: none;
        }
        :host {
          border: 0;
        }
        :host([blanks]) tbody td {
          color: transparent;
        }
        :host([blanks]) .answer {
          display: none;
        }
        :host([blanks]) .line {
          display: block;
        }
      }
    `,
  ]

  @property() name!: LessonName
  @property({ attribute: false }) work!: Work<readonly Facts[]>
  /** Names of the columns: the job as found, and its variants. */
  @property({ attribute: false }) names: readonly string[] = []
  @property({ attribute: false }) units!: Units
  /** The print is to have blanks in place of numbers and answers. */
  @property({ type: Boolean, reflect: true }) blanks = false
  @state() private open: ReadonlySet<number> = new Set()

  protected firstUpdated(): void {
    if (!this.work.wanted) wish(this, { kind: 'want study', study: 'lesson' })
  }

  protected willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (changed.has('name')) this.open = new Set()
  }

  private turn(index: number): void {
    const open = new Set(this.open)
    if (!open.delete(index)) open.add(index)
    this.open = open
  }

  /** Prints this lesson alone, on one page. */
  private async print(blanks: boolean): Promise<void> {
    const before = this.open
    this.blanks = blanks
    this.open = new Set(Array.from({ length: 20 }, (_, n) => n))
    document.documentElement.dataset.print = 'lesson'
    await this.updateComplete
    print()
    delete document.documentElement.dataset.print
    this.blanks = false
    this.open = before
  }

  render() {
    const { work, names, units, open } = this
    const columns = work.result
    const fits = columns && columns.length === names.length
    const sheet = fits ? lessonSheet(this.name, columns, names, units) : null
    return html`<header>
        <h2>${sheet?.title ?? 'Lesson'}</h2>
        <button @click=${() => wish(this, { kind: 'close lesson' })}>Close the lesson</button>
      </header>
      ${
        sheet === null
          ? html`<p role="status">${work.why === null ? 'Working out its numbers …' : `Its numbers came to nothing: ${work.why}.`}</p>`
          : html`${sheet.lead.map((words) => html`<p class="lead">${words}</p>`)}
            <div class="scroll" tabindex="0" role="region" aria-label="Numbers of the lesson"><table>
              <thead><tr><td></td>${sheet.head.map((each) => html`<th scope="col">${each}</th>`)}</tr></thead>
              <tbody>${sheet.rows.map(
                ([label, ...cells]) =>
                  html`<tr><th scope="row">${label}</th>${cells.map((cell) => html`<td>${cell}</td>`)}</tr>`,
              )}</tbody>
            </table></div>
            <ol>${sheet.questions.map(
              ({ ask, answer }, index) => html`<li>
                <p class="ask">${ask}</p>
                ${
                  open.has(index)
                    ? html`<p class="answer">${answer}</p>`
                    : html`<button aria-expanded="false" @click=${() => this.turn(index)}>Show the answer</button>`
                }
                <div class="line"></div>
              </li>`,
            )}</ol>
            <div class="do">
              <span>Change a number below: table and answers follow.</span>
              <button @click=${() => this.print(true)}>Print with blanks</button>
              <button @click=${() => this.print(false)}>Print with answers</button>
              ${
                open.size > 0
                  ? html`<button @click=${() => {
                      this.open = new Set()
                    }}>Hide the answers</button>`
                  : nothing
              }
            </div>`
      }`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'lesson-sheet': LessonSheetElement
  }
}
