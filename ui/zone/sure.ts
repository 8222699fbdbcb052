// Zone H: how sure the answer is, and what to measure next.
import { css, html, nothing } from 'lit'
import { customElement, property, state } from 'lit/decorators.js'
import type { Job } from '../../sim/job.ts'
import { fateShares, sureWords } from '../../sim/say/sure.ts'
import { estimatedWords, firstToMeasure, measureWords } from '../../sim/say/sure/measuring.ts'
import type { Units } from '../../sim/say/units.ts'
import type { Sure } from '../../sim/studies/sure.ts'
import { wish } from '../events.ts'
import { InTurn } from '../inTurn.ts'
import { frameStyles } from '../plot/frameStyles.ts'
import { markStyles } from '../plot/markStyles.ts'
import { Measured } from '../plot/measured.ts'
import { heading, tableOf } from '../plot/parts.ts'
import { sureDrawing } from '../plot/sureChart.ts'
import { base, buttons } from '../style/base.ts'
import type { Work } from '../study/work.ts'
import { studyLine } from './studyLine.ts'
import { studyStyle } from './studyStyle.ts'

@customElement('sure-zone')
export class SureZone extends InTurn {
  static styles = [
    base,
    buttons,
    markStyles,
    frameStyles,
    studyStyle,
    css`
      .zone-head {
        display: flex;
        flex-wrap: wrap;
        align-items: baseline;
        gap: 2px 16px;
        margin-bottom: 8px;
      }
      .named {
        font: var(--type-note-strong);
        font-stretch: var(--body-stretch);
      }
      .row {
        margin-block: 4px 10px;
      }
      .dot {
        fill: var(--paper);
        stroke: var(--ink);
        stroke-width: 1.5px;
      }
      .dot.lasts {
        stroke: var(--ok);
        stroke-dasharray: 3 2;
      }
      .run {
        fill: var(--hatch);
      }
      .doubt.whole {
        fill: var(--ink);
      }
      .doubt.best {
        fill: var(--act);
      }
      .doubt.other {
        fill: var(--ink3);
      }
    `,
  ]

  @property({ attribute: false }) work!: Work<Sure>
  @property({ type: Boolean }) stale = false
  @property({ attribute: false }) job: Job | null = null
  @property({ attribute: false }) units!: Units
  @state() private open = false

  private readonly measured = new Measured(this)

  private next(sure: Sure, job: Job) {
    const first = firstToMeasure(sure)
    if (!first) return nothing
    const { title, how, path, bench } = measureWords(first, job, this.units)
    return html`<div class="row"><span><strong>${title}.</strong> ${how}</span>
      ${
        bench
          ? html`<a href="#J">To its step in J</a>`
          : path
            ? html`<button class="act" @click=${() => wish(this, { kind: 'go to field', path })}>Go to the field</button>`
            : nothing
      }</div>`
  }

  private found(sure: Sure, job: Job) {
    const { units, open } = this
    const { width, k } = this.measured
    const drawing = width > 0 ? sureDrawing(sure, job, units, width, k) : null
    return html`${heading(
      {
        title: sure.of === 'time' ? 'When it fails' : 'Whether it fails',
        unit: '',
        hint: '40 dots, each an equally likely outcome with what you know now',
        left: 0,
      },
      open,
      () => {
        this.open = !open
      },
    )}
      ${
        drawing
          ? html`<div class="chart still"><svg role="img" aria-label="${sureWords(sure, job, units)} ${fateShares(sure)}." width=${width}
              height=${drawing.height}>${drawing.drawn}</svg></div>
              ${open ? tableOf('How sure', drawing.table(), 0) : nothing}`
          : nothing
      }
      <p class="said"><strong>${estimatedWords(sure, job, units)}</strong></p>
      ${this.next(sure, job)}
      <p class="note">${sure.samples} seeded samples of the job, each read and run as a whole: ${fateShares(sure)}.</p>`
  }

  render() {
    const { work, stale, job, units } = this
    const sure = stale ? null : work.result
    return html`<div class="ruler"></div>
      <div class="zone-head"><h2>How sure is this</h2><p>${sure && job ? sureWords(sure, job, units) : 'Two hundred likely readings of what was not measured, each run through the whole job.'}</p></div>
      ${studyLine(this, 'sure', work, stale, 'How sure', 'Drawing likely readings, and running each')}
      ${sure && job ? this.found(sure, job) : nothing}`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'sure-zone': SureZone
  }
}
