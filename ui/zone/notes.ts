// Notes over the sheet: work given up, values that need a look, a file that was not opened.
import { css, html, LitElement, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { amiss } from '../change/blank.ts'
import { stationOf } from '../edit/groups.ts'
import { wish } from '../events.ts'
import { chosenOf, type State } from '../store.ts'
import { base, buttons } from '../style/base.ts'
import { looks, stillUses } from './notesWords.ts'

/** A note that stands over the page. */
export const noteStyle = css`
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
  @media (max-width: 759.98px) {
    .one {
      margin-block: 8px 0;
    }
  }
`

@customElement('page-notes')
export class PageNotes extends LitElement {
  static styles = [
    base,
    buttons,
    noteStyle,
    css`
      :host {
        display: grid;
        gap: 8px;
      }
      .one.wrong {
        border-color: var(--bad);
        background: var(--bad-soft);
      }
      strong {
        font-weight: 600;
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

  private looking() {
    const { state } = this
    const { id } = chosenOf(state)
    const reading = state.readings.get(id)
    if (reading?.ok !== false) return nothing
    const problems = amiss(state, reading.problems)
    if (problems.length === 0) return nothing
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
    return html`${this.looking()}
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
