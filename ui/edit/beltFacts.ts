// What pulleys, belt and shafts come to, under the inputs of the belt's station: and the other steps to try.
import { css, html, LitElement, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { stepFits } from '../../sim/drive/steps.ts'
import type { Job } from '../../sim/job.ts'
import { driveRows, stepRow } from '../../sim/say/drive.ts'
import type { Row } from '../../sim/say/stations.ts'
import type { Units } from '../../sim/say/units.ts'
import { stepVariant } from '../../sim/studies/ratio/steps.ts'
import { wish } from '../events.ts'
import { base, buttons } from '../style/base.ts'

@customElement('belt-facts')
export class BeltFacts extends LitElement {
  static styles = [
    base,
    buttons,
    css`
      :host {
        display: block;
        padding-top: 12px;
        border-top: 1px solid var(--rule);
      }
      .stages {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(min(100%, calc(340px * var(--k))), 1fr));
        gap: 12px 40px;
      }
      h3 {
        margin-bottom: 8px;
      }
      button {
        flex: none;
      }
      h4 {
        margin-bottom: 4px;
        font: var(--type-chart-title);
      }
      dl > div,
      li {
        display: flex;
        justify-content: space-between;
        align-items: baseline;
        gap: 12px;
        padding: 2px 0;
        font: var(--type-label);
      }
      li {
        align-items: center;
      }
      dt {
        flex: none;
        color: var(--ink2);
      }
      dd {
        text-align: right;
        font-weight: 500;
      }
    `,
  ]

  @property({ attribute: false }) job!: Job
  @property({ attribute: false }) units!: Units

  private rows(rows: readonly Row[]) {
    return html`<dl>${rows.map(({ label, value }) => html`<div><dt>${label}</dt><dd>${value}</dd></div>`)}</dl>`
  }

  private steps() {
    const { job, units } = this
    const { belt } = job.parts
    const fits = stepFits(belt)
    if (fits.length === 0) return nothing
    return html`<div>
      <h4>Steps</h4>
      <ul>${fits.map((fit) => {
        const { label, value } = stepRow(fit, belt, units)
        const { name, changes } = stepVariant(fit)
        return html`<li>
          <span>${label}: ${value}</span>
          ${
            fit.inUse
              ? nothing
              : html`<button @click=${() => wish(this, { kind: 'try', name, changes })}>Try step ${fit.step}</button>`
          }
        </li>`
      })}</ul>
    </div>`
  }

  render() {
    const { job, units } = this
    return html`<h3>What that comes to</h3>
      <div class="stages">
        ${driveRows(job, units).map(
          ({ name, rows }) =>
            html`<div>${name === null ? nothing : html`<h4>${name}</h4>`}${this.rows(rows)}</div>`,
        )}
        ${this.steps()}
      </div>`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'belt-facts': BeltFacts
  }
}
