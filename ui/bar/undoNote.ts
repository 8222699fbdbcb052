// What was just added or removed, with the way back, for ten seconds: in the row of letters, or at the top of the window once that is gone.
import { css, html, LitElement, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { wish } from '../events.ts'
import { base, buttons } from '../style/base.ts'

/** How long undo is offered, ms. It waits while the pointer or the keyboard is on it. */
const OFFERED = 10_000

@customElement('undo-note')
export class UndoNote extends LitElement {
  static styles = [
    base,
    buttons,
    css`
      :host {
        position: sticky;
        top: 52px;
        z-index: 4;
        height: 0;
      }
      div {
        position: absolute;
        right: max(40px, calc(50vw - 680px));
        bottom: 2px;
        display: flex;
        align-items: center;
        gap: 16px;
        max-width: calc(100vw - 24px);
        padding: 0 2px 0 14px;
        border-radius: var(--round-panel);
        background: var(--ink);
        color: var(--paper);
        font: var(--type-label);
      }
      span {
        overflow: hidden;
        text-overflow: ellipsis;
        white-space: nowrap;
      }
      button,
      button:hover {
        flex: none;
        min-height: 32px;
        border-color: transparent;
        text-decoration: underline;
        text-underline-offset: 3px;
        background: none;
        color: inherit;
      }
      button:focus-visible {
        outline-color: var(--paper);
      }
      @media (max-width: 759.98px) {
        :host {
          position: fixed;
          inset: auto 12px calc(12px + 64px * var(--k));
          height: auto;
        }
        div {
          position: static;
          justify-content: space-between;
        }
        button,
        button:hover {
          min-height: 44px;
        }
      }
      @media print {
        div {
          display: none;
        }
      }
    `,
  ]

  @property({ attribute: false }) undo: string | null = null
  private timer: ReturnType<typeof setTimeout> | undefined

  private wait = () => {
    clearTimeout(this.timer)
    if (this.undo !== null) this.timer = setTimeout(() => wish(this, { kind: 'forget undo' }), OFFERED)
  }

  private hold = () => clearTimeout(this.timer)

  protected updated(changed: Map<PropertyKey, unknown>): void {
    if (changed.has('undo')) this.wait()
  }

  disconnectedCallback(): void {
    super.disconnectedCallback()
    this.hold()
  }

  render() {
    if (this.undo === null) return nothing
    return html`<div role="region" aria-label="Last change" @pointerenter=${this.hold} @pointerleave=${this.wait} @focusin=${this.hold} @focusout=${this.wait}>
      <span>${this.undo}</span><button @click=${() => wish(this, { kind: 'undo' })}>Undo</button>
    </div>`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'undo-note': UndoNote
  }
}
