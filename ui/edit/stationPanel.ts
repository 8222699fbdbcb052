// All the inputs of a station, in their groups, across the sheet.
import { css, html, LitElement, nothing, type PropertyValues } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { type Input, inputAt, inputsOf } from '../../sim/scenario.ts'
import { STATIONS, type Station } from '../../sim/say/stations.ts'
import { base, buttons } from '../style/base.ts'
import { type FormState, field } from './field.ts'
import { formStyle } from './formStyle.ts'
import { GROUPS, type Group } from './groups.ts'
import './dutySteps.ts'

@customElement('station-panel')
export class StationPanel extends LitElement {
  static styles = [
    base,
    buttons,
    formStyle,
    css`
      :host {
        padding: 20px 24px 24px;
        border: 1.5px solid var(--ink);
        border-radius: var(--round-panel);
        background: var(--raise);
        overflow-wrap: anywhere;
      }
      .where {
        margin-bottom: 16px;
        padding-bottom: 12px;
        border-bottom: 1px solid var(--rule);
      }
      .groups {
        display: grid;
        grid-template-columns: repeat(6, minmax(0, 1fr));
        gap: 32px 40px;
      }
      section {
        grid-column: span 2;
        min-width: 0;
      }
      section.wide {
        grid-column: 1 / -1;
      }
      section.half {
        grid-column: span 3;
      }
      summary {
        width: fit-content;
        min-height: 32px;
        font: var(--type-station);
        cursor: pointer;
      }
      @media (max-width: 1199.98px) {
        section,
        section.half {
          grid-column: 1 / -1;
        }
      }
      @media (max-width: 759.98px) {
        :host {
          padding: 16px 14px 20px;
        }
      }
    `,
  ]

  @property({ attribute: false }) station!: Station
  @property({ attribute: false }) form!: FormState
  /** The field to bring into view. */
  @property({ attribute: false }) target: { readonly path: string; readonly n: number } | null = null

  /** The groups with their inputs: each input once, under the first heading that names it. */
  private get groups(): readonly { group: Group; inputs: readonly Input[] }[] {
    const { asked } = this.form
    const seen = new Set<string>()
    return GROUPS[this.station].map((group) => ({
      group,
      inputs: group.paths
        .flatMap((path) => inputAt(asked, path) ?? inputsOf(asked, path))
        .filter(({ path }) => !seen.has(path) && seen.add(path)),
    }))
  }

  protected updated(changed: PropertyValues<this>): void {
    if (changed.has('target') && this.target) void this.show(this.target.path)
  }

  private async show(path: string): Promise<void> {
    const steps = this.renderRoot.querySelector('duty-steps')
    await steps?.updateComplete
    const places = [this.renderRoot, ...(steps ? [steps.renderRoot] : [])]
    const found = places.flatMap((place) => [...place.querySelectorAll<HTMLElement>(`[data-path]`)])
    const box = found.find(({ dataset }) => dataset.path === path) ?? found[0]
    const lid = box?.closest('details')
    if (lid) lid.open = true
    box?.scrollIntoView({ block: 'center' })
    box?.focus({ preventScroll: true })
  }

  private group(group: Group, inputs: readonly Input[], count: number) {
    const { form } = this
    const fields = html`<div class="fields">${inputs.map((input) => field(input, form))}</div>`
    if (group.detail)
      return html`<section class="wide"><details>
        <summary>${group.heading}</summary><p class="note about">${group.about}</p>${fields}
      </details></section>`
    const width = count === 1 ? 'wide' : count === 2 ? 'half' : ''
    return html`<section class=${width}><h3>${group.heading}</h3><p class="note about">${group.about}</p>${fields}</section>`
  }

  render() {
    const { form, station } = this
    const groups = this.groups
    return html`${
      form.variant === null
        ? nothing
        : html`<p class="where">What you change here changes the variant <strong>${form.variant}</strong> alone.
            Choose “As found” to change the job itself.</p>`
    }
      <div class="groups" role="group" aria-label=${STATIONS[station]}>
        ${groups.map(({ group, inputs }) => this.group(group, inputs, groups.length))}
        ${
          station === 'machine'
            ? html`<section class="wide"><duty-steps .form=${form}></duty-steps></section>`
            : nothing
        }
      </div>`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'station-panel': StationPanel
  }
}
