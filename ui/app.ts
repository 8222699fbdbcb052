// The page: bar, letters, one sheet with its zones. It hands the state down and takes wishes up.
import { html, LitElement, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { answerOf } from '../sim/say/answer.ts'
import { coolingTries, largerPulley, nextTry, pulleyTry } from './change/tries.ts'
import { heatInUse, motorKey } from './change/warmUp.ts'
import { demos } from './demos.ts'
import { type Wish, wish } from './events.ts'
import { chosenOf, type State, type Store } from './store.ts'
import { formOf, linesOf, remembered, shownJob } from './view.ts'
import { columns, variantRows } from './zone/variantRows.ts'
import './bar/answerStrip.ts'
import './bar/topBar.ts'
import './bar/undoNote.ts'
import './zone/answer.ts'
import './zone/bench.ts'
import './zone/logLine.ts'
import './zone/notes.ts'
import './zone/overTime.ts'
import './zone/variants.ts'

const ZONES = [
  { letter: 'A', name: 'Drive line' },
  { letter: 'B', name: 'Over time' },
  { letter: 'C', name: 'Variants' },
  { letter: 'J', name: 'Bench' },
] as const

/** How the log stands to the job: its heat numbers are taken, or its fit is of another motor. */
const logOf = (state: State): { inUse: boolean; stale: boolean } => ({
  inUse: heatInUse(state.scenario, state.logged),
  stale: state.logged?.kind === 'read' && state.logged.fit !== null && motorKey(state) !== state.logged.motor,
})

@customElement('dw-page')
export class Page extends LitElement {
  @property({ attribute: false }) store!: Store
  @property({ attribute: false }) grant!: (wish: Wish) => void

  private forget: (() => void) | undefined
  private form = remembered(
    (s) => [s.scenario, s.variants, s.chosen, s.drafts, s.readings, s.settings],
    formOf,
  )
  private log = remembered((s) => [s.scenario, s.variants, s.chosen, s.logged], logOf)
  private lines = remembered((s) => [s.results, s.variants, s.chosen], linesOf)

  // In the light: links to letters, print and the sheet's own styles reach it there.
  protected createRenderRoot() {
    return this
  }

  connectedCallback(): void {
    super.connectedCallback()
    this.forget = this.store.subscribe(() => this.requestUpdate())
    this.addEventListener('wish', (event) => this.grant(event.detail))
    this.addEventListener('moment', ({ detail }) => wish(this, { kind: 'moment', t: detail.t }))
    this.addEventListener('window', ({ detail }) => wish(this, { kind: 'window', ...detail }))
  }

  disconnectedCallback(): void {
    super.disconnectedCallback()
    this.forget?.()
  }

  protected updated(): void {
    const { settings, scenario } = this.store.state
    const root = document.documentElement
    root.dataset.theme = settings.theme
    root.style.setProperty('--k', settings.size === 'large' ? '1.25' : '1')
    document.title = `${scenario.name || 'A job'} – Dutywright`
  }

  private variants(state: State) {
    const { units } = state.settings
    const result = state.results.get(chosenOf(state).id)
    return html`<variants-zone .rows=${variantRows(state)} .columns=${columns(state)} .units=${units}
      .tries=${result ? coolingTries(state, result) : []}
      .pulley=${result ? (largerPulley(result, units) ?? result.job.parts.belt.machinePulley) : null}
      .makePulley=${result ? (text: string, d: number) => pulleyTry(state, result, text, d) : null}></variants-zone>`
  }

  render() {
    const { state } = this.store
    const { settings, window: shownWindow } = state
    const { units } = settings
    const shown = shownJob(state)
    const next = shown ? nextTry(state, shown.result) : null
    const reading = state.readings.get(chosenOf(state).id)
    const lines = this.lines(state)
    const { logged } = state
    const { inUse, stale } = this.log(state)
    return html`
      <a class="skip" href="#A">Skip to the answer</a>
      <header>
        <top-bar .job=${String(state.scenario.name ?? '')} .demos=${demos} .zones=${ZONES}
          .settings=${settings}></top-bar>
      </header>
      <main class="sheet">
        <h1 class="unseen">Will this motor do the job?</h1>
        <div class="notes"><page-notes .state=${state}></page-notes></div>
        <section class="zone" id="A" tabindex="-1" aria-label="Drive line and answer">
          <span class="letter" aria-hidden="true">A</span>
          <answer-zone .shown=${shown} .next=${next} .check=${state.check} .at=${state.moment}
            .job=${reading?.ok ? reading.job : (shown?.result.job ?? null)} .form=${this.form(state)}
            .station=${state.station} .target=${state.target}></answer-zone>
        </section>
        <section class="zone" id="B" tabindex="-1" aria-label="Over time">
          <span class="letter" aria-hidden="true">B</span>
          <div class="zone-head"><h2>Over time</h2><p>Drag across the charts: the drive line above follows.</p></div>
          ${
            logged?.kind === 'read'
              ? html`<log-line .logged=${logged} .result=${shown?.result ?? null} .units=${units} ?inUse=${inUse}></log-line>`
              : nothing
          }
          ${
            lines.length > 0
              ? html`<over-time .shown=${lines} .log=${logged?.kind === 'read' && logged.shown ? logged.log : null} .units=${units} .at=${state.moment} .windowFrom=${shownWindow[0]}
                  .windowTo=${shownWindow[1]}></over-time>`
              : nothing
          }
        </section>
        <section class="zone" id="C" tabindex="-1" aria-label="Variants">
          <span class="letter" aria-hidden="true">C</span>
          ${this.variants(state)}
        </section>
        <section class="zone" id="J" tabindex="-1" aria-label="Measure at the bench">
          <span class="letter" aria-hidden="true">J</span>
          <div class="zone-head"><h2>Measure at the bench</h2><p>Each reading takes the place of an estimate, and the answer follows at once.</p></div>
          <bench-zone .form=${this.form(state)} .logged=${logged} ?inUse=${inUse} ?stale=${stale}></bench-zone>
        </section>
      </main>
      <undo-note .undo=${state.undo}></undo-note>
      <answer-strip .result=${shown?.result ?? null} .units=${units} .next=${next}></answer-strip>
      <p class="unseen" role="status">${
        shown && !shown.previous ? answerOf(shown.result.job, shown.result.figures, units).sentence : nothing
      }</p>`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dw-page': Page
  }
}
