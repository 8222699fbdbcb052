// Zone A: the answer beside the drive line, and the four stations where everything can be changed.
import { css, html, LitElement, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import type { Job } from '../../sim/job.ts'
import type { Problem } from '../../sim/problem.ts'
import type { Station } from '../../sim/say/stations.ts'
import type { Try } from '../change/tries.ts'
import type { FormState } from '../edit/field.ts'
import { stationOf } from '../edit/groups.ts'
import { wish } from '../events.ts'
import type { Check, Result } from '../store.ts'
import { base, buttons } from '../style/base.ts'
import { firstRun, firstRunStyle } from './firstRun.ts'
import { second, secondStyle } from './second.ts'
import type { ShownJob } from './shownJob.ts'
import { limits, numbers, sentence, wordStyle } from './words.ts'
import './driveLine.ts'
import './safety.ts'
import './stations.ts'

const isMotors = ({ path }: Problem): boolean => /^(plate|bench)\b/.test(path)

@customElement('answer-zone')
export class AnswerZone extends LitElement {
  static styles = [
    base,
    buttons,
    wordStyle,
    secondStyle,
    firstRunStyle,
    css`
      .top {
        display: grid;
        grid-template: 'drive words' auto 'drive numbers' 1fr / minmax(0, 1fr) calc(392px * var(--k));
        gap: 20px 48px;
        padding-bottom: 24px;
      }
      .words {
        grid-area: words;
      }
      .drive {
        grid-area: drive;
      }
      .figures {
        grid-area: numbers;
      }
      .why {
        margin: 4px 0 14px;
      }
      .worth {
        margin-top: 12px;
        padding-left: 12px;
        border-left: 3px solid var(--hatch);
      }
      .waiting {
        min-height: 216px;
        font: var(--type-answer);
        color: var(--ink2);
      }
      /* Room for the longer of its two wordings, before and after it is known how sure it is: nothing below moves. */
      .sentence {
        min-height: 4lh;
      }
      @media (max-width: 1199.98px) {
        .top {
          grid-template: 'words' 'drive' 'numbers' / minmax(0, 1fr);
        }
        .sentence {
          min-height: 3lh;
          max-width: 34ch;
        }
      }
      @media (max-width: 759.98px) {
        .waiting {
          min-height: 300px;
        }
        .sentence {
          min-height: 4lh;
        }
      }
      safety-strip {
        margin-top: 10px;
      }
      @media print {
        button {
          display: none;
        }
      }
    `,
  ]

  /** The answer on show; null until the first one is there. */
  @property({ attribute: false }) shown: ShownJob | null = null
  @property({ attribute: false }) next: Try | null = null
  @property({ attribute: false }) check: Check | null = null
  @property({ type: Number }) at = 0
  /** The example's answer, to stand on an empty sheet. */
  @property({ attribute: false }) example: Result | null = null
  /** A job is on its way, out of a link: nothing else is asked. */
  @property({ type: Boolean }) expecting = false
  /** The job as asked, for the stations' summaries. */
  @property({ attribute: false }) job: Job | null = null
  @property({ attribute: false }) form!: FormState
  @property({ attribute: false }) station: Station | null = null
  @property({ attribute: false }) target: { readonly path: string; readonly n: number } | null = null

  private figures(shown: ShownJob) {
    const { units } = this.form
    const { next } = this
    return html`${numbers(shown, units)} ${limits(shown, units)}
      ${next ? html`<button class="main" @click=${() => wish(this, next.wish)}>${next.label}</button>` : nothing}
      ${second(this, this.check, units)}
      ${this.worth(shown.result.reading.notes)}`
  }

  /** What is worth a look; what plate and bench say against each other is told at their fields and in J. */
  private worth(notes: readonly Problem[]) {
    const motor = notes.filter(isMotors)
    return html`${notes
      .filter((note) => !isMotors(note))
      .map(
        ({ path, wrong, wouldDo }) => html`<p class="note worth">${wrong} ${wouldDo}
            ${
              stationOf(path)
                ? html`<button class="link" @click=${() => wish(this, { kind: 'go to field', path })}>Go to the field</button>`
                : nothing
            }</p>`,
      )}
      ${
        motor.length === 0
          ? nothing
          : html`<p class="note worth">Plate and bench raise ${motor.length === 1 ? 'a question' : `${motor.length} questions`}:
              ${motor[0].wrong} <button class="link" @click=${() => wish(this, { kind: 'go to field', path: motor[0].path })}>Go to the field</button></p>`
      }`
  }

  private question() {
    const { lacking, units } = this.form
    return lacking && !this.expecting
      ? firstRun(this, lacking, this.example, units)
      : html`<p class="waiting">Will this motor do the job?</p>`
  }

  render() {
    const { shown, form } = this
    return html`<div class="top">
        <div class="words">${shown ? sentence(shown, form.units) : this.question()}</div>
        <drive-line class="drive" .form=${form} .result=${shown?.result ?? null} .at=${this.at}></drive-line>
        <div class="figures">${shown ? this.figures(shown) : nothing}</div>
      </div>
      <station-strip .job=${this.job} .form=${this.form} .open=${this.station} .target=${this.target}></station-strip>
      ${this.job ? html`<safety-strip .job=${this.job}></safety-strip>` : nothing}`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'answer-zone': AnswerZone
  }
}
