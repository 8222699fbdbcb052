// What was just added or removed, with the way back: at the foot of the window for ten seconds.
import { css, html, LitElement, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { wish } from '../events.ts'
import type { Undo } from '../store.ts'
import { base, buttons } from '../style/base.ts'

/** How long undo is offered, ms. It waits while the pointer or the keyboard is on it. */
const OFFERED = 10_000

@customElement('undo-note')
export class UndoNote extends LitElement {
  static styles = [
    base,
    buttons,
    css`
      div {
        position: fixed;
        bottom: 24px;
        left: 50%;
        z-index: 4;
        display: flex;
        align-items: center;
        gap: 16px;
        max-width: calc(100vw - 24px);
        padding: 8px 10px 8px 18px;
        border-radius: var(--round-panel);
        background: var(--ink);
        color: var(--paper);
        transform: translateX(-50%);
      }
      span {
        overflow: hidden;
        text-overflow: ellipsis;
        white-space: nowrap;
      }
      button,
      button:hover {
        flex: none;
        border-color: var(--paper);
        background: none;
        color: inherit;
      }
      button:focus-visible {
        outline-color: var(--paper);
      }
      @media (max-width: 759.98px) {
        div {
          bottom: 84px;
        }
      }
      @media print {
        div {
          display: none;
        }
      }
    `,
  ]

  @property({ attribute: false }) undo: Undo | null = null
  private timer: ReturnType<typeof setTimeout> | undefined

  private wait = () => {
    clearTimeout(this.timer)
    if (this.undo) this.timer = setTimeout(() => wish(this, { kind: 'forget undo' }), OFFERED)
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
    if (!this.undo) return nothing
    return html`<div @pointerenter=${this.hold} @pointerleave=${this.wait} @focusin=${this.hold} @focusout=${this.wait}>
      <span>${this.undo.words}</span><button @click=${() => wish(this, { kind: 'undo' })}>Undo</button>
    </div>`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'undo-note': UndoNote
  }
}
