// The four stations along the drive: a summary each, and under the strip the panel of the one that is open.
import { html, LitElement, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import type { Job } from '../../sim/job.ts'
import { STATIONS, type Station, stationRows } from '../../sim/say/stations.ts'
import { isGiven } from '../change/blank.ts'
import type { FormState } from '../edit/field.ts'
import { stationOf } from '../edit/groups.ts'
import { wish } from '../events.ts'
import { base, buttons } from '../style/base.ts'
import { stationStyle } from './stationStyle.ts'

const ALL = Object.keys(STATIONS) as Station[]

@customElement('station-strip')
export class StationStrip extends LitElement {
  static styles = [base, buttons, stationStyle]

  @property({ attribute: false }) job: Job | null = null
  @property({ attribute: false }) form!: FormState
  @property({ attribute: false }) open: Station | null = null
  @property({ attribute: false }) target: { readonly path: string; readonly n: number } | null = null

  private turn = (station: Station) =>
    wish(this, { kind: 'open station', station: this.open === station ? null : station })

  private key = (event: KeyboardEvent) => {
    if (event.key !== 'Escape' || !this.open) return
    const change = this.renderRoot.querySelector<HTMLElement>(`#change-${this.open}`)
    wish(this, { kind: 'open station', station: null })
    change?.focus()
  }

  private station(station: Station) {
    const { open, job, form } = this
    const wrong = form.problems.filter(({ path }) => stationOf(path) === station).length
    const index = ALL.indexOf(station)
    const lacking = job ? null : form.lacking
    const word = open === station ? 'Close' : lacking && !isGiven(lacking, station) ? 'Fill in' : 'Change'
    return html`<section class="station">
        <header>
          <h3>${STATIONS[station]}</h3>
          <button id="change-${station}" aria-expanded=${open === station ? 'true' : 'false'}
            aria-label="${word}: ${STATIONS[station]}"
            @click=${() => this.turn(station)}>${word}</button>
        </header>
        ${lacking ? html`<p class="note">${isGiven(lacking, station) ? 'filled in' : 'not set'}</p>` : nothing}
        <dl>
          ${(job ? stationRows(station, job, form.units) : []).map(
            ({ label, value }) => html`<div><dt>${label}</dt><dd>${value}</dd></div>`,
          )}
        </dl>
        ${wrong > 0 ? html`<p class="look note bad"><strong>${wrong === 1 ? 'One value needs' : `${wrong} values need`} a look.</strong></p>` : nothing}
      </section>
      ${
        open === station
          ? html`<div class="open" style="--at:${index};--at2:${index % 2}">
              <station-panel .station=${station} .form=${form} .job=${job} .target=${this.target}></station-panel>
            </div>`
          : nothing
      }`
  }

  render() {
    return html`<div class="strip" @keydown=${this.key}>${ALL.map((station) => this.station(station))}</div>`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'station-strip': StationStrip
  }
}
