// The page: bar, letters, one sheet with its zones. It hands the state down and takes wishes up.
import { html, LitElement, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { answerOf } from '../sim/say/answer.ts'
import type { Cooling } from '../sim/studies/map.ts'
import { skippingWords } from '../sim/say/skipping.ts'
import { asked } from './change/inputs.ts'
import { chosenText, gridOf } from './change/grid.ts'
import { mapTry } from './change/mapTry.ts'
import { coolingTries, largerPulley, nextTry, pulleyTry } from './change/tries.ts'
import { heatInUse, motorKey } from './change/warmUp.ts'
import { demos } from './demos.ts'
import { type Wish, wish } from './events.ts'
import { AS_FOUND, chosenOf, entriesOf, type State, type Store } from './store.ts'
import { isStale } from './studies.ts'
import { isTyping, stepOf } from './keep/keys.ts'
import { once, whenNear } from './near.ts'
import { lengthText } from './plot/dutyEdges.ts'
import { formOf, linesOf, remembered, shownJob } from './view.ts'
import { seriesOf } from './zone/shownJob.ts'
import type { AdviceZone } from './zone/advice.ts'
import type { AgainstZone } from './zone/against.ts'
import type { GridZone } from './zone/grid.ts'
import type { LimitsZone } from './zone/limits.ts'
import type { MapZone } from './zone/map.ts'
import type { RatioZone } from './zone/ratio.ts'
import type { LessonSheetElement } from './zone/lesson.ts'
import type { SureZone } from './zone/sure.ts'
import type { WiringZone } from './zone/wiring.ts'
import { columns, variantRows } from './zone/variantRows.ts'
import './bar/answerStrip.ts'
import './bar/topBar.ts'
import './bar/undoNote.ts'
import './zone/answer.ts'
import './zone/notes.ts'

const ZONES = [
  { letter: 'A', name: 'Drive line' },
  { letter: 'B', name: 'Over time' },
  { letter: 'C', name: 'Variants' },
  { letter: 'D', name: 'What to do' },
  { letter: 'E', name: 'Work and rest' },
  { letter: 'F', name: 'Ratio' },
  { letter: 'G', name: 'Old motor' },
  { letter: 'H', name: 'How sure' },
  { letter: 'J', name: 'Bench' },
  { letter: 'K', name: 'Wiring' },
] as const

/** How the log stands to the job: its heat numbers are taken, or its fit is of another motor. */
const logOf = (state: State): { inUse: boolean; stale: boolean } => ({
  inUse: heatInUse(state.scenario, state.logged),
  stale: state.logged?.kind === 'read' && state.logged.fit !== null && motorKey(state) !== state.logged.motor,
})

/** Modules that wait until their places come near. */
const WAITING: readonly (readonly [string, () => Promise<unknown>])[] = [
  ['#D', () => import('./zone/advice.ts')],
  ['limits-zone', () => Promise.all([import('./zone/map.ts'), import('./zone/limits.ts')])],
  ['#F', () => import('./zone/ratio.ts')],
  ['#G', () => import('./zone/against.ts')],
  ['#H', () => import('./zone/sure.ts')],
  ['#K', () => import('./zone/wiring.ts')],
  ['grid-zone', () => import('./zone/grid.ts')],
]

@customElement('dw-page')
export class Page extends LitElement {
  @property({ attribute: false }) store!: Store
  @property({ attribute: false }) grant!: (wish: Wish) => void

  private forget: (() => void) | undefined
  /** What stops watching for places that come near. */
  private watching: (() => void)[] = []
  private form = remembered(
    (s) => [s.scenario, s.variants, s.chosen, s.drafts, s.readings, s.settings],
    formOf,
  )
  private log = remembered((s) => [s.scenario, s.variants, s.chosen, s.logged], logOf)
  private grid = remembered(
    (s) => [s.scenario, s.variants, s.chosen, s.readings, s.settings, s.grid],
    (s) => ({ asked: gridOf(s), scenario: chosenText(s) }),
  )
  private lines = remembered((s) => [s.results, s.variants, s.chosen], linesOf)

  // In the light: links to letters, print and the sheet's own styles reach it there.
  protected createRenderRoot() {
    return this
  }

  connectedCallback(): void {
    super.connectedCallback()
    this.forget = this.store.subscribe(() => this.requestUpdate())
    this.addEventListener('wish', (event) => this.grant(event.detail))
    window.addEventListener('keydown', this.stepKey)
    this.addEventListener('moment', ({ detail }) => wish(this, { kind: 'moment', t: detail.t }))
    this.addEventListener('step', ({ detail: { index, seconds, during } }) =>
      wish(this, { kind: 'edit', path: `duty.phases.${index}.lasts`, text: lengthText(seconds), during }),
    )
    this.addEventListener('window', ({ detail }) => wish(this, { kind: 'window', ...detail }))
  }

  disconnectedCallback(): void {
    super.disconnectedCallback()
    this.forget?.()
    for (const stop of this.watching.splice(0)) stop()
    window.removeEventListener('keydown', this.stepKey)
  }

  /** Ctrl+Z and its like, except where a text is being typed: that has an undo of its own. */
  private stepKey = (event: KeyboardEvent) => {
    const step = stepOf(event)
    if (!step || isTyping(event)) return
    event.preventDefault()
    this.grant({ kind: step })
  }

  /** What stands below the answer comes once that is there: nobody waits for it. Studies come when they are near. */
  private readonly loadRest = once(async () => {
    await Promise.all([
      import('./zone/overTime.ts'),
      import('./zone/dutyRow.ts'),
      import('./zone/variants.ts'),
      import('./zone/logLine.ts'),
      import('./zone/bench.ts'),
    ])
    for (const [places, load] of WAITING)
      this.watching.push(whenNear([...this.querySelectorAll(places)], () => void load()))
  })

  private readonly loadLesson = once(() => import('./zone/lesson.ts'))

  protected updated(): void {
    if (this.store.state.results.size > 0) this.loadRest()
    if (this.store.state.lesson !== null) this.loadLesson()
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
      .makePulley=${result ? (text: string, d: number) => pulleyTry(state, result, text, d) : null}></variants-zone>
      <grid-zone .work=${state.studies.grid} ?stale=${isStale(state, 'grid')} .asked=${this.grid(state).asked}
        .scenario=${this.grid(state).scenario} .units=${units}></grid-zone>`
  }

  /** Zones F and G: their elements are plain until their modules are there. */
  private studies(state: State) {
    const { units } = state.settings
    const chosen = chosenOf(state)
    const result = state.results.get(chosen.id)
    const reading = state.readings.get(chosen.id)
    const job = reading?.ok ? reading.job : (result?.job ?? null)
    const name = chosen.id === AS_FOUND ? 'the job as found' : `“${chosen.name}”`
    return html`<section class="zone study ${state.studies.advice.result === null ? 'bare' : ''}" id="D" tabindex="-1" aria-label="What to do about it">
        <span class="letter" aria-hidden="true">D</span>
        <div class="zone-head"><h2>What to do about it</h2><p>For ${name}. Every cure was run on the whole job.</p></div>
        <advice-zone .work=${state.studies.advice} ?stale=${isStale(state, 'advice')} .units=${units}></advice-zone>
      </section>
      <section class="zone study ${state.studies.limits.result === null ? 'bare' : ''}" id="E" tabindex="-1" aria-label="Work and rest">
        <span class="letter" aria-hidden="true">E</span>
        <div class="zone-head"><h2>Minutes until the cutoff opens</h2><p>Running without a pause from cold, at any spindle speed and torque. For ${name}.</p></div>
        <map-zone .work=${state.studies.map} ?stale=${isStale(state, 'map')} .units=${units}
          .makePoint=${(phase: number, speed: number, torque: number, cooling: Cooling | null) =>
            mapTry(asked(state), phase, speed, torque, cooling, units)}></map-zone>
        <div class="zone-head"><h2>Work and rest</h2><p>How long a cut goes, how long to wait, and a card to pin on the machine. For ${name}.</p></div>
        <limits-zone .work=${state.studies.limits} ?stale=${isStale(state, 'limits')} .job=${job} .units=${units}
          .name=${`${state.scenario.name || 'A job'}${chosen.id === AS_FOUND ? '' : `, ${chosen.name}`}`}></limits-zone>
      </section>
      <section class="zone study ${state.studies.ratio.result === null ? 'bare' : ''}" id="F" tabindex="-1" aria-label="Which belt ratio">
        <span class="letter" aria-hidden="true">F</span>
        <div class="zone-head"><h2>Which belt ratio</h2><p>For ${name}, by another machine pulley.</p></div>
        <ratio-zone .work=${state.studies.ratio} ?stale=${isStale(state, 'ratio')} .job=${job} .units=${units}
          .series=${seriesOf(state, chosen.id)}
          .makePulley=${result ? (text: string, d: number) => pulleyTry(state, result, text, d) : null}></ratio-zone>
      </section>
      <section class="zone study ${state.studies.against.result?.comparison ? '' : 'bare'}" id="G" tabindex="-1" aria-label="Against the old motor">
        <span class="letter" aria-hidden="true">G</span>
        <div class="zone-head"><h2>Against the old motor</h2><p>Does it do what the motor did that the machine came with? For ${name}.</p></div>
        <against-zone .work=${state.studies.against} .old=${state.old} .job=${job} .units=${units}></against-zone>
      </section>`
  }

  render() {
    const { state } = this.store
    const { settings, window: shownWindow } = state
    const { units } = settings
    const shown = shownJob(state)
    const advice = isStale(state, 'advice') ? null : state.studies.advice.result
    const next = shown ? nextTry(state, shown.result, advice) : null
    const reading = state.readings.get(chosenOf(state).id)
    const lines = this.lines(state)
    const { logged } = state
    const { inUse, stale } = this.log(state)
    return html`
      <a class="skip" href="#A">Skip to the answer</a>
      <header>
        <top-bar .job=${String(state.scenario.name ?? '')} .slot=${state.slot} .shelf=${state.shelf}
          ?undoable=${state.history.past.length > 0} ?redoable=${state.history.future.length > 0} .demos=${demos} .zones=${ZONES}
          .settings=${settings}></top-bar>
      </header>
      <undo-note .undo=${state.undo}></undo-note>
      <main class="sheet">
        <h1 class="unseen">Will this motor do the job?</h1>
        <div class="notes"><page-notes .state=${state}></page-notes></div>
        ${
          state.lesson === null
            ? nothing
            : html`<lesson-sheet id="lesson" .name=${state.lesson.name} .work=${state.studies.lesson}
                .names=${entriesOf(state).map(({ name }) => name)} .units=${units}></lesson-sheet>`
        }
        <section class="zone" id="A" tabindex="-1" aria-label="Drive line and answer">
          <span class="letter" aria-hidden="true">A</span>
          <p class="on-paper">Dutywright: ${state.scenario.name || 'a job'}, ${chosenOf(state).id === AS_FOUND ? 'as found' : `variant “${chosenOf(state).name}”`}</p>
          <answer-zone .shown=${shown} .next=${next} .check=${state.check} .at=${state.moment}
            .job=${reading?.ok ? reading.job : (shown?.result.job ?? null)} .form=${this.form(state)}
            .station=${state.station} .target=${state.target}></answer-zone>
        </section>
        <section class="zone" id="B" tabindex="-1" aria-label="Over time">
          <span class="letter" aria-hidden="true">B</span>
          <div class="zone-head"><h2>Over time</h2><p>Drag across the charts: the drive line above follows.${
            shown?.result.skipping ? html` ${skippingWords(shown.result.skipping)}` : nothing
          }</p></div>
          ${
            logged?.kind === 'read'
              ? html`<log-line .logged=${logged} .result=${shown?.result ?? null} .units=${units} ?inUse=${inUse}></log-line>`
              : nothing
          }
          ${
            lines.length > 0
              ? html`<over-time .shown=${lines} .log=${logged?.kind === 'read' && logged.shown ? logged.log : null} .units=${units} .at=${state.moment} .windowFrom=${shownWindow[0]}
                  .windowTo=${shownWindow[1]} .duty=${reading?.ok ? reading.job.duty : null}></over-time>
                <duty-row .form=${this.form(state)}></duty-row>`
              : nothing
          }
        </section>
        <section class="zone" id="C" tabindex="-1" aria-label="Variants">
          <span class="letter" aria-hidden="true">C</span>
          ${this.variants(state)}
        </section>
        ${this.studies(state)}
        <section class="zone study" id="H" tabindex="-1" aria-label="How sure is this">
          <span class="letter" aria-hidden="true">H</span>
          <sure-zone .work=${state.studies.sure} ?stale=${isStale(state, 'sure')} .job=${shown?.result.job ?? null} .units=${units}></sure-zone>
        </section>
        <section class="zone" id="J" tabindex="-1" aria-label="Measure at the bench">
          <span class="letter" aria-hidden="true">J</span>
          <div class="zone-head"><h2>Measure at the bench</h2><p>Each reading takes the place of an estimate, and the answer follows at once.</p></div>
          <bench-zone .form=${this.form(state)} .logged=${logged} ?inUse=${inUse} ?stale=${stale}></bench-zone>
        </section>
        <section class="zone study" id="K" tabindex="-1" aria-label="Wiring and safety">
          <span class="letter" aria-hidden="true">K</span>
          <div class="zone-head"><h2>Wiring and safety</h2><p>How to connect it so that a fault trips a breaker and not a person.</p></div>
          <wiring-zone .job=${reading?.ok ? reading.job : (shown?.result.job ?? null)} .bench=${reading?.ok ? reading.motor.bench : {}}
            .figures=${shown?.result.figures ?? null} .units=${units} .ticked=${state.ticked}></wiring-zone>
        </section>
      </main>
      <answer-strip .result=${shown?.result ?? null} .sure=${shown?.sure ?? null} .units=${units} .next=${next}></answer-strip>
      <p class="unseen" role="status">${
        shown && !shown.previous
          ? answerOf(shown.result.job, shown.result.figures, units, shown.sure).sentence
          : nothing
      }</p>`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dw-page': Page
    'advice-zone': AdviceZone
    'ratio-zone': RatioZone
    'map-zone': MapZone
    'limits-zone': LimitsZone
    'grid-zone': GridZone
    'against-zone': AgainstZone
    'wiring-zone': WiringZone
    'sure-zone': SureZone
    'lesson-sheet': LessonSheetElement
  }
}
