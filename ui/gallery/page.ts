// The gallery: every picture in every state under its address, with switches for theme, units and size of text.
import { html, LitElement } from 'lit'
import { customElement, state } from 'lit/decorators.js'
import type { Units } from '../../sim/say/units.ts'
import { drives } from './cases/drive.ts'
import { lists } from './cases/lists.ts'
import { studied } from './cases/studies.ts'
import { times } from './cases/time.ts'
import type { Case, Group } from './case.ts'

const GROUPS: readonly Group[] = [drives, times, ...studied, ...lists]

@customElement('gallery-page')
export class GalleryPage extends LitElement {
  @state() private units: Units = { system: 'us', temperature: '°C' }
  @state() private dark = matchMedia('(prefers-color-scheme: dark)').matches
  @state() private large = false

  // In the light: addresses and the sheet's own styles reach it there.
  protected createRenderRoot() {
    return this
  }

  protected updated(): void {
    const root = document.documentElement
    root.dataset.theme = this.dark ? 'dark' : 'light'
    root.style.setProperty('--k', this.large ? '1.25' : '1')
  }

  private turn = {
    theme: () => {
      this.dark = !this.dark
    },
    size: () => {
      this.large = !this.large
    },
    system: () => {
      this.units = { ...this.units, system: this.units.system === 'us' ? 'metric' : 'us' }
    },
    temperature: () => {
      this.units = { ...this.units, temperature: this.units.temperature === '°C' ? '°F' : '°C' }
    },
  }

  private one = ({ id, title, draw }: Case) =>
    html`<section class="case" id=${id} aria-label=${`${title} (${id})`}>
      <h3>${title} <a href="#${id}" aria-label="Address of ${title}: ${id}">#${id}</a></h3>
      ${draw(this.units)}
    </section>`

  render() {
    const { units, dark, large, turn } = this
    return html`<header>
        <h1>Gallery</h1>
        <div class="switches">
          <button aria-pressed=${dark ? 'true' : 'false'} @click=${turn.theme}>Dark</button>
          <button aria-pressed=${units.system === 'metric' ? 'true' : 'false'} @click=${turn.system}>Metric</button>
          <button aria-pressed=${units.temperature === '°F' ? 'true' : 'false'} @click=${turn.temperature}>°F</button>
          <button aria-pressed=${large ? 'true' : 'false'} @click=${turn.size}>Larger text</button>
        </div>
      </header>
      <main>${GROUPS.map(({ title, cases }) => html`<h2>${title}</h2>${cases.map(this.one)}`)}</main>`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gallery-page': GalleryPage
  }
}
