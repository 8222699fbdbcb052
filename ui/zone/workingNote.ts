// The note of work under way: how far it has got, how long it may take, and the way to stop it.
import { css, html, LitElement, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { wish } from '../events.ts'
import type { State } from '../store.ts'
import { base, buttons } from '../style/base.ts'
import { noteStyle } from './notes.ts'
import { leftWords, reachedWords, underWay } from './notesWords.ts'
import { secondStyle } from './second.ts'

@customElement('working-note')
export class WorkingNote extends LitElement {
  static styles = [
    base,
    buttons,
    secondStyle,
    noteStyle,
    css`
      /* Each part at its own place: it comes and goes, and nothing moves for it. */
      .one {
        display: grid;
        grid-template-columns: 1fr 1fr auto;
        gap: 0 16px;
        width: min(440px, 100vw - 24px);
        margin: 0;
      }
      .one strong {
        grid-column: 1 / 3;
      }
      progress {
        grid-area: 3 / 1 / 4 / 3;
        width: 100%;
      }
      button {
        grid-area: 1 / 3 / 4 / 4;
      }
      @media print {
        .one {
          display: none;
        }
      }
    `,
  ]

  @property({ attribute: false }) state!: State

  render() {
    const { state } = this
    const under = state.slow ? underWay(state) : null
    if (!under) return nothing
    const { one, share, since, words } = under
    return html`<div class="one">
      <strong>${words}</strong>
      <span>${reachedWords(one.t, one.of)}</span>
      <span>${leftWords(share, performance.now() - since)}</span>
      <progress aria-label=${words} max="1" value=${share}></progress>
      <button class="act" @click=${() => wish(this, { kind: 'cancel' })}>Cancel</button>
    </div>`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'working-note': WorkingNote
  }
}
