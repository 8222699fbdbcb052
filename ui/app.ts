// The page: bar, letters, one sheet with its zones. It hands the state down and takes wishes up.
import { html, LitElement, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import type { Scenario } from '../sim/scenario.ts'
import { answerOf } from '../sim/say/answer.ts'
import type { NewVersion } from './bar/newVersion.ts'
import { nextTry } from './change/tries.ts'
import type { Below } from './below.ts'
import { firstDemo } from './firstDemo.ts'
import { type Wish, wish } from './events.ts'
import { AS_FOUND, chosenOf, entriesOf, type Store } from './store.ts'
import { isPrint, isTyping, stepOf } from './keep/keys.ts'
import { once } from './near.ts'
import { lengthText } from './plot/dutyEdges.ts'
import { adviceKeeper } from './study/advice.ts'
import { isStaleBy } from './study/keeper.ts'
import { formOf, remembered, shownJob } from './view.ts'
import type { AdviceZone } from './zone/advice.ts'
import type { AgainstZone } from './zone/against.ts'
import type { GridZone } from './zone/grid.ts'
import type { LimitsZone } from './zone/limits.ts'
import type { MapZone } from './zone/map.ts'
import type { RatioZone } from './zone/ratio.ts'
import type { ReportZone } from './zone/report.ts'
import type { LessonSheetElement } from './zone/lesson.ts'
import type { SureZone } from './zone/sure.ts'
import type { WiringZone } from './zone/wiring.ts'
import './bar/answerStrip.ts'
import './bar/topBar.ts'
import './zone/answer.ts'
import './zone/notes.ts'
import './zone/workingNote.ts'

const ZONES = [
  { letter: 'A', name: 'Drive line' },
  { letter: 'B', name: 'Over time' },
  { letter: 'C', name: 'Variants' },
  { letter: 'D', name: 'What to do' },
  { letter: 'E', name: 'Minutes to cutoff' },
  { letter: 'F', name: 'Ratio' },
  { letter: 'G', name: 'Old motor' },
  { letter: 'H', name: 'How sure' },
  { letter: 'J', name: 'Bench' },
  { letter: 'K', name: 'Wiring' },
  { letter: 'L', name: 'Report' },
] as const

@customElement('dw-page')
export class Page extends LitElement {
  @property({ attribute: false }) store!: Store
  @property({ attribute: false }) grant!: (wish: Wish) => void
  /** How many times its plain size large text has. */
  @property({ attribute: false }) larger = 1.25
  /** A job is on its way, out of a link. */
  @property({ attribute: false }) expecting = false

  private forget: (() => void) | undefined
  /** Begins, and stops, watching for places that come near. */
  private watch: (() => () => void) | undefined
  private unwatch: (() => void) | undefined
  /** The zones below the answer, once they are there. */
  private below: Below | null = null
  private demos: readonly Scenario[] = [firstDemo]
  private form = remembered(
    (s) => [s.scenario, s.variants, s.chosen, s.drafts, s.readings, s.settings, s.results.size > 0],
    formOf,
  )
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
    this.unwatch?.()
    window.removeEventListener('keydown', this.stepKey)
  }

  /** Ctrl+Z and its like, except where a text is being typed: that has an undo of its own. Ctrl+P prints the report. */
  private stepKey = (event: KeyboardEvent) => {
    if (isPrint(event)) {
      event.preventDefault()
      this.grant({ kind: 'print' })
    }
    const step = stepOf(event)
    if (!step || isTyping(event)) return
    event.preventDefault()
    this.grant({ kind: step })
  }

  /** What stands below the answer comes once that is there: nobody waits for it. Studies come when they are near. */
  private readonly loadRest = once(async () => {
    const [{ createBelow, watchPlaces }, { demos }] = await Promise.all([
      import('./below.ts'),
      import('./demos.ts'),
    ])
    this.demos = demos
    this.below = createBelow()
    this.watch = () => watchPlaces(this)
    this.requestUpdate()
  })

  /** Zones come near, and a letter in the address is found, once they are there: an empty sheet has none. */
  private watchZones(): void {
    const there = this.querySelector('#B') !== null
    if (there === (this.unwatch !== undefined)) return
    this.unwatch?.()
    this.unwatch = there ? this.watch?.() : undefined
    if (there && /^#[B-L]$/.test(location.hash)) this.querySelector(location.hash)?.scrollIntoView()
  }

  private readonly loadLesson = once(() => import('./zone/lesson.ts'))

  protected updated(): void {
    const { results, example, station } = this.store.state
    if (results.size > 0 || example || station) this.loadRest()
    this.watchZones()
    if (this.store.state.lesson !== null) this.loadLesson()
    const { settings, scenario } = this.store.state
    const root = document.documentElement
    root.dataset.theme = settings.theme
    root.style.setProperty('--k', settings.size === 'large' ? String(this.larger) : '1')
    document.title = `${scenario.name || 'A job'} – Dutywright`
  }

  render() {
    const { state } = this.store
    const { settings } = state
    const { units } = settings
    const shown = shownJob(state)
    const advice = isStaleBy(adviceKeeper, state, 'advice') ? null : state.studies.advice.result
    const next = shown ? nextTry(state, shown.result, advice) : null
    const reading = state.readings.get(chosenOf(state).id)
    const form = this.form(state)
    return html`
      <a class="skip" href="#A">Skip to the answer</a>
      <header>
        <top-bar .job=${String(state.scenario.name ?? '')} .slot=${state.slot} .shelf=${state.shelf}
          ?undoable=${state.history.past.length > 0} ?redoable=${state.history.future.length > 0} .demos=${this.demos} .zones=${form.lacking ? ZONES.slice(0, 1) : ZONES}
          .settings=${settings}></top-bar>
      </header>
      <undo-note .undo=${state.undo}></undo-note>
      <aside class="over ${state.undo === null ? '' : 'raised'}" aria-label="Under way"><new-version></new-version><working-note .state=${state}></working-note></aside>
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
            .job=${reading?.ok ? reading.job : (shown?.result.job ?? null)} .form=${form} .example=${state.example} ?expecting=${this.expecting}
            .station=${state.station} .target=${state.target}></answer-zone>
        </section>
        ${form.lacking ? nothing : (this.below?.(state, shown, form) ?? nothing)}
      </main>
      <footer>Worked out in this browser; nothing is sent anywhere. <a href="./licences.txt">Licences</a> of what this page is made of.</footer>
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
    'new-version': NewVersion
    'advice-zone': AdviceZone
    'ratio-zone': RatioZone
    'map-zone': MapZone
    'limits-zone': LimitsZone
    'grid-zone': GridZone
    'against-zone': AgainstZone
    'wiring-zone': WiringZone
    'report-zone': ReportZone
    'sure-zone': SureZone
    'lesson-sheet': LessonSheetElement
  }
}
