// A newer version of the page is ready: said quietly, used when asked, never forced under an open page.
import { css, html, LitElement, nothing } from 'lit'
import { customElement, state } from 'lit/decorators.js'
import { keepSite, type Versions } from '../keep/version.ts'
import { base, buttons } from '../style/base.ts'

@customElement('new-version')
export class NewVersion extends LitElement {
  static styles = [
    base,
    buttons,
    css`
      p {
        display: flex;
        align-items: center;
        justify-content: space-between;
        gap: 16px;
        padding: 4px 16px;
        border: 1.5px solid var(--ink);
        border-radius: var(--round-panel);
        background: var(--raise);
        font: var(--type-label);
      }
      @media (max-width: 759.98px) {
        button {
          min-height: 44px;
        }
      }
      @media print {
        p {
          display: none;
        }
      }
    `,
  ]

  @state() private ready = false
  private versions: Versions | null = null

  connectedCallback(): void {
    super.connectedCallback()
    this.versions = keepSite(() => {
      this.ready = true
    })
  }

  render() {
    const later = () => {
      this.ready = false
    }
    const note = html`<p><span>A new version is ready.</span>
      <button class="link" @click=${() => this.versions?.use()}>Use it now</button>
      <button class="link" @click=${later}>Later</button></p>`
    return html`<div role="status">${this.ready ? note : nothing}</div>`
  }
}
