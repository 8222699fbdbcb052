// The empty sheet's words: the question, the four things to give, and the ways to begin.
import { css, html, type LitElement, nothing, type TemplateResult } from 'lit'
import { answerOf } from '../../sim/say/answer.ts'
import { STATIONS, type Station } from '../../sim/say/stations.ts'
import type { Units } from '../../sim/say/units.ts'
import { isGiven } from '../change/blank.ts'
import { wish } from '../events.ts'
import { FIRST_LINK } from '../firstDemo.ts'
import type { Result } from '../store.ts'
import { tick } from '../style/marks.ts'

export const firstRunStyle = css`
  .question {
    margin-bottom: 12px;
    font: var(--type-answer);
  }
  .things {
    margin: 14px 0 20px;
  }
  .things button {
    display: grid;
    grid-template-columns: calc(34px * var(--k)) 1fr auto;
    gap: 0 8px;
    width: 100%;
    padding: 9px 0;
    border: 0;
    border-top: 1px solid var(--rule);
    border-radius: 0;
    font: var(--type-body);
    text-align: left;
  }
  .things button:hover {
    background: var(--act-soft);
  }
  .nth {
    grid-row: 1 / 3;
    font: var(--type-value);
  }
  .things strong {
    font-weight: 600;
  }
  .things .note {
    grid-column: 2;
  }
  .things .sign {
    grid-area: 1 / 3 / 3 / 4;
    align-self: center;
  }
  .ways {
    display: grid;
    gap: 12px;
  }
  .ways > button,
  .ways > .button {
    min-height: var(--control-alone);
    font-weight: 600;
  }
  .ways .file {
    position: relative;
    font-weight: 500;
  }
  .ways .file:focus-within {
    outline: var(--focus-ring);
    outline-offset: var(--focus-offset);
  }
  .ways .said {
    min-height: 2lh; /* what comes later pushes nothing */
    margin-top: -6px;
  }
`

interface Thing {
  readonly station: Station
  readonly title: string
  /** To finish "Start with …", "Go on with …". */
  readonly what: string
  /** The field it begins at. */
  readonly path: string
}

const THINGS: readonly Thing[] = [
  { station: 'motor', title: 'Motor plate', what: 'the motor plate', path: 'plate.volts' },
  { station: 'supply', title: STATIONS.supply, what: 'the supply', path: 'supply.volts' },
  { station: 'belt', title: 'Pulleys', what: 'the pulleys', path: 'belt.motorPulley' },
  { station: 'machine', title: 'Machine and duty', what: 'the work', path: 'duty.phases.0.lasts' },
]

const ABOUT: Readonly<Record<Station, (units: Units) => string>> = {
  motor: ({ system }) => `${system === 'us' ? 'hp' : 'kW'}, rpm, volts, amps: what you can read`,
  supply: () => 'most volts it gives, its current limit',
  belt: () => 'both diameters',
  machine: () => 'speed you want, how hard it cuts, minutes of work and rest',
}

/** What an empty sheet says in place of an answer. `lacking`: paths of what is still open. */
export function firstRun(
  host: LitElement,
  lacking: readonly string[],
  example: Result | null,
  units: Units,
): TemplateResult {
  const open = THINGS.filter(({ station }) => !isGiven(lacking, station))
  const go = ({ path }: Thing) => wish(host, { kind: 'go to field', path })
  const opened = (event: Event) => {
    const box = event.currentTarget as HTMLInputElement
    const file = box.files?.[0]
    if (file) wish(host, { kind: 'open file', file })
    box.value = ''
  }
  const [next] = open
  return html`<h2 class="question">Will this motor do the job?</h2>
    <p>Copy the motor’s plate, the pulleys, and how you work and rest. The whole job is run, and the answer stands
      here as soon as four things are known.</p>
    <ol class="things">
      ${THINGS.map(
        (thing, n) => html`<li><button @click=${() => go(thing)}>
          <span class="nth">${n + 1}</span><strong>${thing.title}</strong>
          <span class="note">${ABOUT[thing.station](units)}</span>
          ${open.includes(thing) ? nothing : html`${tick}<span class="unseen">given</span>`}
        </button></li>`,
      )}
    </ol>
    <div class="ways">
      ${
        next
          ? html`<button class="main" @click=${() => go(next)}>${open.length === THINGS.length ? 'Start' : 'Go on'} with ${next.what}</button>`
          : nothing
      }
      <a class="button" href=${FIRST_LINK}>Open the apple mill example</a>
      <p class="note said">${
        example
          ? html`Its answer: “${answerOf(example.job, example.figures, units).sentence}”`
          : 'It is being worked out.'
      }</p>
      <label class="button file"><input class="unseen" type="file" accept=".json,application/json"
        @change=${opened} />Open a job file</label>
      <p class="note">Everything stays on this device. After this visit it works without a network.</p>
    </div>`
}
