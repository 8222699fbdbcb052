// The four stations along the drive: a summary each, and under the strip the panel of the one that is open.
import { css, html, LitElement, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import type { Job } from '../../sim/job.ts'
import { STATIONS, type Station, stationRows } from '../../sim/say/stations.ts'
import type { FormState } from '../edit/field.ts'
import { stationOf } from '../edit/groups.ts'
import '../edit/stationPanel.ts'
import { wish } from '../events.ts'
import { base, buttons } from '../style/base.ts'

const ALL = Object.keys(STATIONS) as Station[]

@customElement('station-strip')
export class StationStrip extends LitElement {
  static styles = [
    base,
    buttons,
    css`
      .strip {
        display: grid;
        grid-template-columns: repeat(4, minmax(0, 1fr));
        /* The panel stands right behind its station; the stations after it close up before it. */
        grid-auto-flow: row dense;
        border-top: 1.5px solid var(--ink);
      }
      .station {
        padding: 12px 20px 14px;
      }
      .station:first-child {
        padding-left: 0;
      }
      .station + .station,
      station-panel + .station,
      .station ~ .station {
        border-left: 1px solid var(--rule);
      }
      header {
        display: flex;
        align-items: center;
        justify-content: space-between;
        gap: 12px;
        margin-bottom: 6px;
      }
      dl > div {
        display: flex;
        justify-content: space-between;
        gap: 12px;
        padding: 1px 0;
        font: var(--type-label);
      }
      dt {
        flex: none;
        color: var(--ink2);
      }
      dd {
        text-align: right;
        font-weight: 500;
      }
      .look {
        margin-top: 6px;
      }
      .open {
        position: relative;
        grid-column: 1 / -1;
        margin-top: 14px;
      }
      .open::before {
        content: '';
        position: absolute;
        bottom: 100%;
        left: calc(var(--at) * 25% + 48px);
        border: 14px solid transparent;
        border-top-width: 0;
        border-bottom: 11px solid var(--ink);
      }
      @media (max-width: 1199.98px) {
        .strip {
          grid-template-columns: repeat(2, minmax(0, 1fr));
        }
        .station:nth-of-type(odd) {
          padding-left: 0;
          border-left: 0;
        }
        .open::before {
          left: calc(var(--at2) * 50% + 48px);
        }
      }
      @media (max-width: 759.98px) {
        .strip {
          grid-template-columns: minmax(0, 1fr);
        }
        .station,
        .station ~ .station {
          padding: 12px 0 16px;
          border-left: 0;
        }
        .station + .station,
        .open + .station {
          border-top: 1px solid var(--rule);
        }
        dl > div {
          display: inline;
        }
        dl > div:not(:last-child)::after {
          content: ' · ';
        }
        dt {
          display: none;
        }
        dd {
          display: inline;
          font-weight: 400;
        }
        .open {
          margin: 0 0 16px;
        }
        .open::before {
          left: 24px;
        }
      }
      @media print {
        button,
        .open {
          display: none;
        }
      }
    `,
  ]

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
    return html`<section class="station">
        <header>
          <h3>${STATIONS[station]}</h3>
          <button id="change-${station}" aria-expanded=${open === station ? 'true' : 'false'}
            aria-label="${open === station ? 'Close' : 'Change'}: ${STATIONS[station]}"
            @click=${() => this.turn(station)}>${open === station ? 'Close' : 'Change'}</button>
        </header>
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
              <station-panel .station=${station} .form=${form} .target=${this.target}></station-panel>
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
