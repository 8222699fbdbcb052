// The card to pin on the machine, as it is cut out: an element of its own, for the page and for the report.
import { css, html, LitElement } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import type { Card } from '../../sim/say/limitsCard.ts'
import { base } from '../style/base.ts'

@customElement('limits-card')
export class LimitsCard extends LitElement {
  static styles = [
    base,
    css`
      figure {
        max-width: calc(460px * var(--k));
        padding: 14px 18px;
        border: 1.5px solid var(--ink);
        border-radius: var(--round-panel);
        background: var(--raise);
        break-inside: avoid;
      }
      figcaption {
        padding-bottom: 8px;
        border-bottom: 1px solid var(--rule);
      }
      h3,
      h3 + p {
        overflow-wrap: anywhere;
      }
      h3 + p {
        font: var(--type-label);
      }
      dl > div {
        display: flex;
        flex-wrap: wrap;
        gap: 0 12px;
        padding: 7px 0;
        border-bottom: 1px solid var(--rule);
      }
      dt {
        flex: 3 1 calc(88px * var(--k));
        padding-top: 3px;
        font: var(--type-label);
        color: var(--ink2);
      }
      dd {
        flex: 7 1 calc(140px * var(--k));
        min-width: 0;
        overflow-wrap: anywhere;
      }
      dd strong {
        font: var(--type-value);
      }
      dd span {
        display: block;
      }
      .foot {
        padding-top: 8px;
      }
      @media print {
        figure {
          background: none;
        }
      }
    `,
  ]

  @property({ attribute: false }) card!: Card

  render() {
    const { title, cut, rows, foot } = this.card
    return html`<figure>
      <figcaption><h3>${title}</h3><p>${cut}</p></figcaption>
      <dl>${rows.map(
        ({ name, value, about }) => html`<div>
          <dt>${name}</dt>
          <dd><strong>${value}</strong>${about === '' ? '' : html` <span class="note">${about}</span>`}</dd>
        </div>`,
      )}</dl>
      <p class="note foot">${foot}</p>
    </figure>`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'limits-card': LimitsCard
  }
}
