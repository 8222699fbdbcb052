// The sheet below the answer, zones B to L: it comes once the first answer is there, and nobody waits for it.
import { html, nothing, type TemplateResult } from 'lit'
import type { Cooling } from '../sim/studies/map.ts'
import { skippingWords } from '../sim/say/skipping.ts'
import type { Scenario } from '../sim/scenario.ts'
import { chosenText, gridOf } from './change/grid.ts'
import type { GridAsked } from './change/gridAsked.ts'
import { asked } from './change/inputs.ts'
import { mapTry } from './change/mapTry.ts'
import { coolingTries, largerPulley, pulleyTry } from './change/tries.ts'
import { heatInUse, motorKey } from './change/warmUp.ts'
import type { FormState } from './edit/field.ts'
import { whenNear } from './near.ts'
import { AS_FOUND, chosenOf, type State } from './store.ts'
import { isStale } from './studies.ts'
import { linesOf, remembered } from './view.ts'
import { type ShownJob, seriesOf } from './zone/shownJob.ts'
import { columns, variantRows } from './zone/variantRows.ts'
import './bar/newVersion.ts'
import './bar/undoNote.ts'
import './edit/stationPanel.ts'
import './zone/bench.ts'
import './zone/dutyRow.ts'
import './zone/logLine.ts'
import './zone/overTime.ts'
import './zone/variants.ts'

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
  ['#L', () => import('./zone/report.ts')],
  ['grid-zone', () => import('./zone/grid.ts')],
]

/** Loads what waits as its places in the page come near. */
export function watchPlaces(page: ParentNode): () => void {
  const stops = WAITING.map(([places, load]) =>
    whenNear([...page.querySelectorAll(places)], () => void load()),
  )
  return () => {
    for (const stop of stops) stop()
  }
}

/** The zones below the answer, drawn from the state. */
export type Below = (state: State, shown: ShownJob | null, form: FormState) => TemplateResult

/** The variants, and two inputs against a figure. */
function variants(state: State, grid: { asked: GridAsked; scenario: Scenario }) {
  const { units } = state.settings
  const result = state.results.get(chosenOf(state).id)
  return html`<variants-zone .rows=${variantRows(state)} .columns=${columns(state)} .units=${units}
    .tries=${result ? coolingTries(state, result) : []}
    .pulley=${result ? (largerPulley(result, units) ?? result.job.parts.belt.machinePulley) : null}
    .makePulley=${result ? (text: string, d: number) => pulleyTry(state, result, text, d) : null}></variants-zone>
    <grid-zone .work=${state.studies.grid} ?stale=${isStale(state, 'grid')} .asked=${grid.asked}
      .scenario=${grid.scenario} .units=${units}></grid-zone>`
}

/** Zones D to G: their elements are plain until their modules are there. */
function studies(state: State) {
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
    <section class="zone study ${state.studies.limits.result === null ? 'bare' : ''}" id="E" tabindex="-1" aria-label="Minutes until the cutoff opens">
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

export function createBelow(): Below {
  const logStands = remembered((s) => [s.scenario, s.variants, s.chosen, s.logged], logOf)
  const grid = remembered(
    (s) => [s.scenario, s.variants, s.chosen, s.readings, s.settings, s.grid],
    (s) => ({ asked: gridOf(s), scenario: chosenText(s) }),
  )
  const drawn = remembered((s) => [s.results, s.variants, s.chosen], linesOf)

  return (state, shown, form) => {
    const { units } = state.settings
    const { logged, window: shownWindow } = state
    const reading = state.readings.get(chosenOf(state).id)
    const lines = drawn(state)
    const { inUse, stale } = logStands(state)
    return html`
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
            <duty-row .form=${form}></duty-row>`
          : html`<div class="room"></div>`
      }
    </section>
    <section class="zone" id="C" tabindex="-1" aria-label="Variants">
      <span class="letter" aria-hidden="true">C</span>
      ${variants(state, grid(state))}
    </section>
    ${studies(state)}
    <section class="zone study" id="H" tabindex="-1" aria-label="How sure is this">
      <span class="letter" aria-hidden="true">H</span>
      <sure-zone .work=${state.studies.sure} ?stale=${isStale(state, 'sure')} .job=${shown?.result.job ?? null} .units=${units}><div class="zone-head"><h2>How sure is this</h2></div></sure-zone>
    </section>
    <section class="zone" id="J" tabindex="-1" aria-label="Measure at the bench">
      <span class="letter" aria-hidden="true">J</span>
      <div class="zone-head"><h2>Measure at the bench</h2><p>Each reading takes the place of an estimate, and the answer follows at once.</p></div>
      <bench-zone .form=${form} .logged=${logged} ?inUse=${inUse} ?stale=${stale}></bench-zone>
    </section>
    <section class="zone study" id="K" tabindex="-1" aria-label="Wiring and safety">
      <span class="letter" aria-hidden="true">K</span>
      <div class="zone-head"><h2>Wiring and safety</h2><p>How to connect it so that a fault trips a breaker and not a person.</p></div>
      <wiring-zone .job=${reading?.ok ? reading.job : (shown?.result.job ?? null)} .bench=${reading?.ok ? reading.motor.bench : {}}
        .figures=${shown?.result.figures ?? null} .units=${units} .ticked=${state.ticked}></wiring-zone>
    </section>
    <section class="zone" id="L" tabindex="-1" aria-label="Report">
      <span class="letter" aria-hidden="true">L</span>
      <div class="zone-head"><h2>Report</h2><p>Two pages: the answer, the drawing, the traces, every input with where it came from; and the safety checklist.</p></div>
      <report-zone .state=${state}></report-zone>
    </section>`
  }
}
