// Zone L: the report. A title block, every input with where it came from, the print, files to save, and the jobs kept.
import { type CSSResult, html, nothing, unsafeCSS } from 'lit'
import { customElement, property, state } from 'lit/decorators.js'
import { guard } from 'lit/directives/guard.js'
import { wish } from '../events.ts'
import { drawingStyle } from '../drawing/drawingStyle.ts'
import { InTurn } from '../inTurn.ts'
import { markStyles } from '../plot/markStyles.ts'
import { paperStyle } from '../print/paperStyle.ts'
import type { State } from '../store.ts'
import { base, buttons } from '../style/base.ts'
import { remembered } from '../view.ts'
import { type Report, reportOf, restsOn } from './report/facts.ts'
import { FROM_WORDS, type InputGroup } from './report/inputs.ts'
import { type Offered, offered, pictures, saveTable } from './report/files.ts'
import { shelfList } from './report/shelfList.ts'
import { reportStyle } from './report/style.ts'
import { answerSheet, checklistSheet, spareCharts, tracesSheet } from './report/sheets.ts'
import { titleBlock } from './report/title.ts'

/** Longest that a print waits for what is still being worked out, ms; it can go on without at any time. */
const PATIENCE = 60_000
const NEEDED = ['sure', 'advice', 'limits'] as const

/** Who drags a slider waits for the answer alone, ms. */
const REST = 300

/** Height that every kind of paper has between its margins, px: a Letter page, less a hair. */
const PAPER = (279.4 - 20.5) * (96 / 25.4)
/** How far what stands on a sheet is made smaller before it may run on to another. */
const FITS = [1, 0.96, 0.92, 0.88, 0.84, 0.8, 0.76]

/** Charts and drawing have names of their own for their parts: each style keeps to its figures. */
const within = (place: string, { cssText }: CSSResult): CSSResult => unsafeCSS(`${place} { ${cssText} }`)

const dayOf = (when: Date): string =>
  when.toLocaleDateString(undefined, { day: 'numeric', month: 'long', year: 'numeric' })

@customElement('report-zone')
export class ReportZone extends InTurn {
  static styles = [
    base,
    buttons,
    within('.timed', markStyles),
    within('.drive', drawingStyle),
    reportStyle,
    paperStyle,
  ]

  @property({ attribute: false }) state!: State
  /** There is something to print. */
  @property({ type: Boolean, reflect: true }) ready = false
  /** A print waits for what is still being worked out. */
  @state() private waiting = false

  /** Drawings that can be saved, once somebody asked; and the kept job whose removal waits for a yes. */
  @state() private found: readonly Offered[] = []
  @state() private asking: string | null = null

  private readonly reportOf = remembered(restsOn, reportOf)
  private report: Report | null = null
  /** The report as it lies on paper: laid out again once the inputs have rested, or when it is printed. */
  @state() private laid: Report | null = null
  private rest: ReturnType<typeof setTimeout> | undefined
  private patience: ReturnType<typeof setTimeout> | undefined

  disconnectedCallback(): void {
    super.disconnectedCallback()
    clearTimeout(this.patience)
    clearTimeout(this.rest)
    removeEventListener('beforeprint', this.fit)
  }

  connectedCallback(): void {
    super.connectedCallback()
    addEventListener('beforeprint', this.fit)
  }

  /** Makes what stands on a sheet smaller until it goes on one page. */
  private readonly fit = (): void => {
    this.laid = this.report
    this.performUpdate()
    const paper = this.renderRoot.querySelector<HTMLElement>('.paper')
    if (!paper) return
    paper.classList.add('measured')
    for (const sheet of paper.querySelectorAll<HTMLElement>('.sheet'))
      for (const fit of FITS) {
        sheet.style.setProperty('--fit', String(fit))
        if (sheet.getBoundingClientRect().height <= PAPER) break
      }
    paper.classList.remove('measured')
  }

  protected willUpdate(): void {
    const report = this.reportOf(this.state)
    if (report === this.report) return
    this.report = report
    this.ready = report !== null
    clearTimeout(this.rest)
    this.rest = setTimeout(() => {
      this.laid = this.report
    }, REST)
  }

  protected updated(): void {
    if (this.waiting && this.missing().length === 0) void this.print()
  }

  /** What a whole print still wants. */
  private missing(): readonly (typeof NEEDED)[number][] {
    // Of inputs that have no answer nothing more will come.
    if (!this.report || this.report.shown.previous) return []
    return NEEDED.filter((name) => {
      const { result, why, halted, working } = this.state.studies[name]
      const given = why !== null || (halted !== null && !working)
      return !given && (result === null || this.report?.[name] === null)
    })
  }

  /** Prints once advice and limits are there. */
  async ask(): Promise<void> {
    for (const study of NEEDED)
      if (!this.state.studies[study].wanted) wish(this, { kind: 'want study', study })
    if (this.missing().length === 0) return this.print()
    this.waiting = true
    this.scrollIntoView({ block: 'center' })
    clearTimeout(this.patience)
    this.patience = setTimeout(() => void this.print(), PATIENCE)
  }

  private async print(): Promise<void> {
    clearTimeout(this.patience)
    this.waiting = false
    await this.updateComplete
    this.fit()
    print()
  }

  private progress() {
    const works = this.missing().map((name) => this.state.studies[name].working)
    const shares = works.map((work) => (work && work.of > 0 ? work.t / work.of : 0))
    const done = NEEDED.length - works.length + shares.reduce((sum, share) => sum + share, 0)
    return html`<div class="ask" role="status">
      <span>Working out what goes into it …</span>
      <progress aria-label="Report" max=${NEEDED.length} value=${done}></progress>
      <button class="act" @click=${() => void this.print()}>Print without</button>
      <button @click=${() => {
        clearTimeout(this.patience)
        this.waiting = false
      }}>Cancel</button>
    </div>`
  }

  private assumptions(groups: readonly InputGroup[]) {
    return html`<details>
      <summary>Every input, where it came from and its doubt</summary>
      <div class="table" role="region" aria-label="Inputs, table" tabindex="0"><table>
        <thead><tr><th scope="col">Input</th><th scope="col">Value</th><th scope="col">From</th><th scope="col">8 times in 10</th></tr></thead>
        ${groups.map(
          ({ heading, rows }) => html`<tbody>
            <tr><th scope="rowgroup" colspan="4">${heading}</th></tr>
            ${rows.map(
              ({ label, value, from, source, doubt }) =>
                html`<tr><th scope="row">${label}</th><td>${value}</td>
                  <td>${FROM_WORDS[from]}${source === '' ? nothing : html` <span class="note">${source}</span>`}</td><td>${doubt}</td></tr>`,
            )}
          </tbody>`,
        )}
      </table></div>
    </details>`
  }

  private kept() {
    const { shelf, slot } = this.state
    return html`<details>
      <summary>Jobs kept in this browser: ${shelf.length}</summary>
      ${shelfList(this, {
        shelf,
        slot,
        asking: this.asking,
        ask: (asking) => {
          this.asking = asking
        },
      })}
    </details>`
  }

  /** Lists the drawings there are, those of the report laid out first. */
  private async lookAround(open: boolean): Promise<void> {
    this.laid = this.report
    await this.updateComplete
    this.found = open && this.laid ? offered(this.laid, this.renderRoot) : []
  }

  /** What is on the screen of a report. */
  private shown(report: Report, day: string) {
    return html`<div class="do">
        <button class="act" @click=${() => void this.ask()} ?disabled=${this.waiting}>Print the report</button>
        <button @click=${() => wish(this, { kind: 'save' })}>Save job file</button>
        <button @click=${() => saveTable(report)}>Save table (CSV)</button>
      </div>
      ${this.waiting ? this.progress() : nothing}
      ${guard([report, day], () => html`${titleBlock(report, day)}${this.assumptions(report.inputs)}`)}
      <details @toggle=${(event: Event) => void this.lookAround((event.currentTarget as HTMLDetailsElement).open)}>
        <summary>Save a picture</summary>
        <p class="note">Over the whole job, in light colours. Zones that have not been looked at yet have none.</p>
        ${pictures(report, this.found)}
      </details>`
  }

  render() {
    const { report, laid } = this
    const day = dayOf(new Date())
    return html`<div class="screen">
        ${report ? this.shown(report, day) : html`<p class="note">There is nothing to print until the job has an answer.</p>`}
        ${this.kept()}
      </div>
      ${guard([laid, day], () => (laid ? this.paper(laid, day) : nothing))}`
  }

  private paper(report: Report, day: string) {
    return html`<div class="paper">
        ${answerSheet(report, day)}${tracesSheet(report, day)}${checklistSheet(report, day)}
      </div>
      <div hidden>${spareCharts(report)}</div>`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'report-zone': ReportZone
  }
}
