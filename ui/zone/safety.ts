// The cautions at the end of zone A: calm, in sight, and on paper.
import { css, html, LitElement } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import type { Job } from '../../sim/job.ts'
import { cautions } from '../../sim/say/safety.ts'
import { base } from '../style/base.ts'

@customElement('safety-strip')
export class SafetyStrip extends LitElement {
  static styles = [
    base,
    css`
      ul {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(min(100%, calc(200px * var(--k))), 1fr));
        gap: 14px 32px;
        padding-top: 16px;
        border-top: 1.5px solid var(--ink);
      }
      strong {
        display: block;
        font: var(--type-note-strong);
      }
      li {
        break-inside: avoid;
      }
    `,
  ]

  @property({ attribute: false }) job!: Job

  render() {
    return html`<ul aria-label="Before you touch it">
      ${cautions(this.job).map(({ what, so }) => html`<li class="note"><strong>${what}</strong>${so}</li>`)}
    </ul>`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'safety-strip': SafetyStrip
  }
}
