// Notes over the sheet: work under way, work given up, values that need a look, a file that was not opened.
import { css, html, LitElement, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { stationOf } from '../edit/groups.ts'
import { wish } from '../events.ts'
import { chosenOf, type State } from '../store.ts'
import { base, buttons } from '../style/base.ts'
import { leftWords, looks, reachedWords, stillUses, underWay } from './notesWords.ts'
import { secondStyle } from './second.ts'

@customElement('page-notes')
export class PageNotes extends LitElement {
  static styles = [
    base,
    buttons,
    secondStyle,
    css`
      :host {
        display: grid;
        gap: 8px;
      }
      .one {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: 6px 16px;
        min-height: 48px;
        padding: 6px 16px;
        border: 1.5px solid var(--ink);
        border-radius: var(--round-panel);
        background: var(--raise);
      }
      .one.wrong {
        border-color: var(--bad);
        background: var(--bad-soft);
      }
      strong {
        font-weight: 600;
      }
      /* Over the page and not in it, each part at its own place: it comes and goes, and nothing else moves for it. */
      .working {
        position: fixed;
        right: max(40px, calc(50vw - 680px));
        bottom: 16px;
        display: grid;
        grid-template-columns: 1fr 1fr auto;
        gap: 0 16px;
        width: min(440px, 100vw - 24px);
      }
      .working strong {
        grid-column: 1 / 3;
      }
      .working progress {
        grid-area: 3 / 1 / 4 / 3;
        width: 100%;
      }
      .working button {
        grid-area: 1 / 3 / 4 / 4;
      }
      @media (max-width: 759.98px) {
        .working {
          right: 12px;
          bottom: 148px;
        }
      }
      ul {
        flex-basis: 100%;
        max-height: 40vh;
        overflow: auto;
        overflow-wrap: anywhere;
      }
      li {
        padding: 4px 0;
      }
      code {
        font: var(--type-note-strong);
      }
      @media print {
        :host {
          display: none;
        }
      }
    `,
  ]

  @property({ attribute: false }) state!: State

  private working() {
    const { state } = this
    const under = state.slow ? underWay(state) : null
    if (!under) return nothing
    const { one, share, since, words } = under
    return html`<div class="one working">
      <strong>${words}</strong>
      <span>${reachedWords(one.t, one.of)}</span>
      <span>${leftWords(share, performance.now() - since)}</span>
      <progress aria-label=${words} max="1" value=${share}></progress>
      <button class="act" @click=${() => wish(this, { kind: 'cancel' })}>Cancel</button>
    </div>`
  }

  private looking() {
    const { state } = this
    const { id } = chosenOf(state)
    const reading = state.readings.get(id)
    if (reading?.ok !== false) return nothing
    const { problems } = reading
    const first = problems.find(({ path }) => stationOf(path) !== null)
    return html`<div class="one wrong">
      <strong>${looks(state.scenario, problems)}</strong>
      <span>${stillUses(state.results.get(id), problems, state.settings.units)}</span>
      ${
        first
          ? html`<button class="link" @click=${() => wish(this, { kind: 'go to field', path: first.path })}>Go to the field</button>`
          : problems.map(
              ({ path, wrong, wouldDo }) => html`<span><code>${path}</code> ${wrong} ${wouldDo}</span>`,
            )
      }
    </div>`
  }

  render() {
    const { stopped, notice } = this.state
    return html`${this.looking()} ${this.working()}
      ${
        stopped === null
          ? nothing
          : html`<div class="one stopped"><strong>${stopped}</strong>
              <button class="act" @click=${() => wish(this, { kind: 'again' })}>Work it out again</button></div>`
      }
      ${
        notice === null
          ? nothing
          : html`<div class="one wrong notice"><strong>${notice.words}</strong>
              <button @click=${() => wish(this, { kind: 'dismiss' })}>Close</button>
              <ul>${notice.problems.map(
                ({ path, wrong, wouldDo }) =>
                  html`<li>${path === '' ? nothing : html`<code>${path}</code>: `}${wrong} ${wouldDo}</li>`,
              )}</ul></div>`
      }`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'page-notes': PageNotes
  }
}
