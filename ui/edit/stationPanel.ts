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

interface Filled {
  readonly group: Group
  readonly inputs: readonly Input[]
}

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
        columns: 3 calc(300px * var(--k));
        column-gap: 40px;
      }
      .groups.few {
        columns: auto;
      }
      .groups + section {
        margin-top: 8px;
      }
      section {
        margin-bottom: 12px;
        break-inside: avoid;
      }
      section:last-child {
        margin-bottom: 0;
      }
      summary {
        width: fit-content;
        min-height: 32px;
        font: var(--type-station);
        cursor: pointer;
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
  private get groups(): readonly Filled[] {
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

  private group({ group, inputs }: Filled) {
    const about = html`<p class="note about">${group.about}</p>`
    const fields = html`<div class="fields">${inputs.map((input) => field(input, this.form))}</div>`
    return html`<section>${
      group.detail
        ? html`<details><summary>${group.heading}</summary>${about}${fields}</details>`
        : html`<h3>${group.heading}</h3>${about}${fields}`
    }</section>`
  }

  render() {
    const { form, station } = this
    const groups = this.groups
    const open = groups.filter(({ group }) => !group.detail)
    return html`${
      form.variant === null
        ? nothing
        : html`<p class="where">What you change here changes the variant <strong>${form.variant}</strong> alone.
            Choose “As found” to change the job itself.</p>`
    }
      <div role="group" aria-label=${STATIONS[station]}>
        <div class="groups ${open.length < 3 ? 'few' : 'narrow'}">${open.map((each) => this.group(each))}</div>
        ${groups.filter(({ group }) => group.detail).map((each) => this.group(each))}
        ${station === 'machine' ? html`<section><duty-steps .form=${form}></duty-steps></section>` : nothing}
      </div>`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'station-panel': StationPanel
  }
}
