// The letters of the zones that exist, as links down the sheet.
import { css, html, LitElement } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { base } from '../style/base.ts'

export interface Zone {
  readonly letter: string
  readonly name: string
}

@customElement('zone-letters')
export class ZoneLetters extends LitElement {
  static styles = [
    base,
    css`
      :host {
        border-top: 1px solid var(--rule);
        background: var(--bench);
      }
      nav {
        max-width: 1440px;
        margin: 0 auto;
        padding: 0 40px;
      }
      ul {
        display: flex;
        flex-wrap: wrap;
        gap: 0 18px;
        padding: 4px 0;
      }
      a {
        display: block;
        padding: 6px 0;
        color: var(--ink2);
        font: var(--type-label);
        text-decoration: none;
      }
      a:hover {
        text-decoration: underline;
        text-underline-offset: 3px;
      }
      b {
        margin-right: 5px;
        color: var(--ink);
      }
      @media (max-width: 1399.98px) {
        ul {
          gap: 0 11px;
        }
      }
      @media (max-width: 759.98px) {
        :host {
          flex-basis: 100%;
          border: 0;
        }
        nav {
          padding: 0;
        }
        ul {
          display: block;
          columns: 2;
        }
        a {
          padding: 12px 0;
        }
      }
      @media print {
        :host {
          display: none;
        }
      }
    `,
  ]

  @property({ attribute: false }) zones: readonly Zone[] = []

  private go = (event: Event, { letter }: Zone) => {
    const to = document.getElementById(letter)
    if (!to) return
    event.preventDefault()
    this.dispatchEvent(new Event('gone'))
    history.replaceState(null, '', `#${letter}`)
    to.focus({ preventScroll: true })
    to.scrollIntoView()
  }

  render() {
    return html`<nav aria-label="Zones of the sheet">
      <ul>
        ${this.zones.map(
          (zone) =>
            html`<li><a href="#${zone.letter}" @click=${(event: Event) => this.go(event, zone)}><b>${zone.letter}</b>${zone.name}</a></li>`,
        )}
      </ul>
    </nav>`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'zone-letters': ZoneLetters
  }
}
