// Zone K: how to connect it without hurting anyone: the circuit in principle, and a checklist with its sources.
import { css, html, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import type { Job } from '../../sim/job.ts'
import type { Figures } from '../../sim/judge.ts'
import type { Bench } from '../../sim/parts/bench.ts'
import { GROUP_WORDS, wiringLead, wiringWords } from '../../sim/say/wiring.ts'
import type { Units } from '../../sim/say/units.ts'
import { GROUPS, type Statement, wiringOf } from '../../sim/wiring.ts'
import { wish } from '../events.ts'
import { InTurn } from '../inTurn.ts'
import { base, buttons } from '../style/base.ts'
import './circuit.ts'

@customElement('wiring-zone')
export class WiringZone extends InTurn {
  static styles = [
    base,
    buttons,
    css`
      .sides {
        display: grid;
        grid-template-columns: minmax(0, calc(380px * var(--k))) minmax(0, 1fr);
        gap: 24px var(--column-gap);
        align-items: start;
      }
      .sides > div > p {
        margin-bottom: 8px;
      }
      /* The list is long: the circuit stays beside what it is about. */
      @media (min-width: 1200px) {
        circuit-figure {
          position: sticky;
          top: 24px;
        }
      }
      .lead {
        margin-bottom: 16px;
        padding-left: 12px;
        border-left: 3px solid var(--bad);
        color: var(--bad);
        font-weight: 600;
      }
      .lists {
        columns: 2;
        column-gap: var(--column-gap);
      }
      section {
        break-inside: auto;
        padding-bottom: 16px;
      }
      h3 {
        padding: 6px 0;
        border-top: 1.5px solid var(--ink);
        break-after: avoid;
      }
      li {
        display: grid;
        grid-template-columns: auto 1fr;
        gap: 0 10px;
        padding: 8px 0;
        border-top: 1px solid var(--rule);
        break-inside: avoid;
      }
      li:first-child {
        border-top: 0;
      }
      input {
        width: 20px;
        height: 20px;
        margin: 1px 0 0;
        accent-color: var(--act);
      }
      label {
        font-weight: 600;
        cursor: pointer;
      }
      .wrong label,
      .now {
        color: var(--bad);
      }
      li p {
        grid-column: 2;
      }
      @media (max-width: 1199.98px) {
        .lists {
          columns: 1;
        }
      }
      @media (max-width: 759.98px) {
        .sides {
          grid-template-columns: minmax(0, 1fr);
        }
        input {
          width: 24px;
          height: 24px;
          margin: 0;
        }
        li {
          padding: 11px 0;
        }
      }
    `,
  ]

  @property({ attribute: false }) job: Job | null = null
  @property({ attribute: false }) bench: Partial<Bench> = {}
  @property({ attribute: false }) figures: Figures | null = null
  @property({ attribute: false }) units!: Units
  /** Names of what has been seen to. */
  @property({ attribute: false }) ticked: readonly string[] = []

  private statement(statement: Statement) {
    const { what, so } = wiringWords(statement, this.units)
    const { name, wrong, source } = statement
    const id = `tick-${name}`
    return html`<li class=${wrong ? 'wrong' : ''}>
      <input type="checkbox" id=${id} .checked=${this.ticked.includes(name)} aria-describedby="${id}-so"
        @change=${(event: Event) => wish(this, { kind: 'tick', name, on: (event.currentTarget as HTMLInputElement).checked })} />
      <label for=${id}>${what}</label>
      <p id="${id}-so">${wrong ? html`<b class="now">As it stands.</b> ` : nothing}${so} <span class="note">${source}.</span></p>
    </li>`
  }

  render() {
    const { job, units } = this
    if (!job) return nothing
    const all = wiringOf(job, this.bench, this.figures)
    const done = all.filter(({ name }) => this.ticked.includes(name)).length
    return html`<p class="lead">${wiringLead(job)}</p>
      <div class="sides">
        <circuit-figure .job=${job} .units=${units}></circuit-figure>
        <div>
          <p>${done} of ${all.length} seen to.</p>
          <div class="lists">${GROUPS.map((group) => {
            const own = all.filter((statement) => statement.group === group)
            return own.length === 0
              ? nothing
              : html`<section><h3>${GROUP_WORDS[group]}</h3><ul>${own.map((statement) => this.statement(statement))}</ul></section>`
          })}</div>
        </div>
      </div>`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wiring-zone': WiringZone
  }
}
