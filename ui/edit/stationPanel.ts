// All the inputs of a station, in their groups, across the sheet.
import { html, LitElement, nothing, type PropertyValues } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { type Input, inputAt, inputsOf } from '../../sim/scenario.ts'
import type { Job } from '../../sim/job.ts'
import { STATIONS, type Station } from '../../sim/say/stations.ts'
import { base, buttons } from '../style/base.ts'
import { type FormState, field } from './field.ts'
import { findField, openLids } from './findField.ts'
import { formStyle } from './formStyle.ts'
import { GROUPS, type Group } from './groups.ts'
import { panelStyle } from './panelStyle.ts'
import { type ReadingPath, readingKind } from './readings.ts'
import './beltFacts.ts'
import './beltSteps.ts'
import './dutyPattern.ts'
import './dutySteps.ts'
import './readingRows.ts'

interface Filled {
  readonly group: Group
  /** Its inputs, and where bench readings stand, their path. */
  readonly inputs: readonly (Input | ReadingPath)[]
}

@customElement('station-panel')
export class StationPanel extends LitElement {
  static styles = [base, buttons, formStyle, panelStyle]

  @property({ attribute: false }) station!: Station
  @property({ attribute: false }) form!: FormState
  /** The job as it reads; null where it never did. */
  @property({ attribute: false }) job: Job | null = null
  /** The field to bring into view. */
  @property({ attribute: false }) target: { readonly path: string; readonly n: number } | null = null

  /** The groups with their inputs: each input once, under the first heading that names it. */
  private get groups(): readonly Filled[] {
    const { asked } = this.form
    const seen = new Set<string>()
    return GROUPS[this.station].map((group) => ({
      group,
      inputs: group.paths
        .flatMap((path): readonly (Input | ReadingPath)[] => {
          if (readingKind(path)) return [path as ReadingPath]
          const input = inputAt(asked, path)
          return input ? [input] : inputsOf(asked, path)
        })
        .filter((each) => typeof each === 'string' || (!seen.has(each.path) && seen.add(each.path))),
    }))
  }

  protected updated(changed: PropertyValues<this>): void {
    if (changed.has('target') && this.target) void this.show(this.target.path)
  }

  private async show(path: string): Promise<void> {
    await Promise.all(
      [...this.renderRoot.querySelectorAll<LitElement>('duty-steps, reading-rows, belt-steps')].map(
        (each) => each.updateComplete,
      ),
    )
    const box = findField(this.renderRoot, path) ?? this.renderRoot.querySelector<HTMLElement>('[data-path]')
    if (!box) return
    openLids(box)
    box.scrollIntoView({ block: 'center' })
    box.focus({ preventScroll: true })
  }

  private group({ group, inputs }: Filled) {
    const { form } = this
    const about = html`<p class="note about">${group.about}</p>`
    const readings = inputs.filter((each) => typeof each === 'string')
    const singles = inputs.filter((each) => typeof each !== 'string')
    const fields = group.paths.includes('belt.steps')
      ? html`<belt-steps .form=${form}></belt-steps>`
      : html`${readings.map(
          (path) => html`<reading-rows data-path=${path} .path=${path} .form=${form}></reading-rows>`,
        )}
      ${singles.length > 0 ? html`<div class="fields">${singles.map((input) => field(input, form))}</div>` : nothing}`
    // A lid stands open over what needs a look.
    const paths = inputs.map((each) => (typeof each === 'string' ? each : each.path))
    const given = group.openWhenGiven === true && singles.some(({ text, usual }) => text !== '' && !usual)
    const look =
      given || [...form.problems, ...form.notes].some(({ path }) => paths.some((own) => path.startsWith(own)))
    return html`<section>${
      group.detail
        ? html`<details ?open=${look}><summary>${group.heading}</summary>${about}${fields}</details>`
        : html`<h3>${group.heading}</h3>${about}${fields}`
    }</section>`
  }

  /** Groups side by side in their columns, and those that stand across. */
  private laid(groups: readonly Filled[]) {
    if (groups.some(({ group }) => group.column))
      return html`<div class="columns">
          ${([1, 2, 3] as const).map(
            (column) =>
              html`<div>${groups.filter(({ group }) => group.column === column).map((each) => this.group(each))}</div>`,
          )}
        </div>
        ${groups.filter(({ group }) => !group.column).map((each) => this.group(each))}`
    const open = groups.filter(({ group }) => !group.detail)
    return html`<div class="groups">${open.map((each) => this.group(each))}</div>
      ${groups.filter(({ group }) => group.detail).map((each) => this.group(each))}`
  }

  render() {
    const { form, station, job } = this
    return html`${
      form.variant === null
        ? nothing
        : html`<p class="where">What you change here changes the variant <strong>${form.variant}</strong> alone.
            Choose “As found” to change the job itself.</p>`
    }
      <div role="group" aria-label=${STATIONS[station]}>
        ${this.laid(this.groups)}
        ${station === 'belt' && job ? html`<belt-facts .job=${job} .units=${form.units}></belt-facts>` : nothing}
        ${
          station === 'machine'
            ? html`<section><duty-steps .form=${form}></duty-steps></section>
              <section><duty-pattern></duty-pattern></section>`
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
