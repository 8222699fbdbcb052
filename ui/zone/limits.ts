// Work and rest: how long a cut goes, how long to rest, and the card to pin on the machine. Worked out when it comes near.
import { css, html, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import type { Job } from '../../sim/job.ts'
import { canSentence, cutWords, limitsSentences } from '../../sim/say/limits.ts'
import { limitsCard } from '../../sim/say/limitsCard.ts'
import { limitRows } from '../../sim/say/limitsReport.ts'
import type { Units } from '../../sim/say/units.ts'
import type { LimitsStudy } from '../../sim/studies/limits.ts'
import { wish } from '../events.ts'
import { InTurn } from '../inTurn.ts'
import type { Work } from '../study/work.ts'
import { base, buttons, selects } from '../style/base.ts'
import './limitsCard.ts'
import { secondStyle } from './second.ts'
import { studyLine } from './studyLine.ts'
import { studyStyle } from './studyStyle.ts'

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

@customElement('limits-zone')
export class LimitsZone extends InTurn {
  static styles = [
    base,
    buttons,
    selects,
    secondStyle,
    studyStyle,
    css`
      .both {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(min(100%, calc(400px * var(--k))), 1fr));
        gap: 20px var(--column-gap);
        align-items: start;
        margin-top: 14px;
      }
      table {
        width: 100%;
        border-collapse: collapse;
        font: var(--type-label);
      }
      th,
      td {
        padding: 5px 8px 5px 0;
        border-bottom: 1px solid var(--rule);
        text-align: left;
        vertical-align: baseline;
        font-weight: 400;
      }
      thead th {
        color: var(--ink2);
      }
      td:last-child {
        font-weight: 600;
      }
      .pick {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: 8px;
        margin-bottom: 8px;
        font: var(--type-label);
      }
      .wide {
        overflow-x: auto;
      }
      .caution {
        margin-top: 8px;
      }
      @media print {
        .pick {
          display: none;
        }
      }
    `,
  ]

  @property({ attribute: false }) work!: Work<LimitsStudy>
  @property({ type: Boolean }) stale = false
  /** The job as it reads; null while it does not. */
  @property({ attribute: false }) job: Job | null = null
  @property({ attribute: false }) units!: Units
  /** What the card is headed with. */
  @property() name = ''

  // Not sooner: an element that was there before its module has no properties until then.
  protected firstUpdated(): void {
    if (!this.work.wanted) wish(this, { kind: 'want study', study: 'limits' })
  }

  /** Which step is the cut: asked only where several run. */
  private pick(study: LimitsStudy) {
    const names = [
      ...new Set(this.job?.duty.phases.filter(({ speed }) => speed > 0).map(({ name }) => name) ?? []),
    ]
    if (names.length < 2) return nothing
    return html`<label class="pick">The cut
      <select @change=${(event: Event) => wish(this, { kind: 'limits cut', phase: (event.currentTarget as HTMLSelectElement).value })}>
        ${names.map((name) => html`<option value=${name} ?selected=${name === study.phase.name}>${name || 'without a name'}</option>`)}
      </select>
    </label>`
  }

  private table(study: LimitsStudy) {
    return html`<div class="wide" role="group" aria-label="Limits of work and rest, table" tabindex="0"><table aria-label="Limits of work and rest">
      <thead><tr><th scope="col">Limit</th><th scope="col">likely</th><th scope="col">careful</th></tr></thead>
      <tbody>${limitRows(study, this.units).map(
        ([name, likely, careful]) =>
          html`<tr><th scope="row">${name}</th><td>${likely}</td><td>${careful}</td></tr>`,
      )}</tbody>
    </table></div>`
  }

  render() {
    const { work, units, name } = this
    const study = work.result
    return html`${studyLine(this, 'limits', work, this.stale, 'Work and rest', 'Finding how long it may work')}
      ${
        study
          ? html`${this.pick(study)}
            <p class="said"><strong>${capital(cutWords(study, units))}.</strong> ${limitsSentences(study, units)}</p>
            <p class="said caution">${canSentence(study, units)}</p>
            <div class="both">
              ${this.table(study)}
              <limits-card .card=${limitsCard(name, study, units)}></limits-card>
            </div>
            <p class="note caution">Careful: every doubt about the motor moved against you as far as 8 in 10 go together; 9 in 10 such motors do better.</p>`
          : nothing
      }`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'limits-zone': LimitsZone
  }
}
