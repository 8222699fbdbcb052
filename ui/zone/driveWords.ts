// The drive line in words: each part with what it is and what it does at the moment looked at.
import { html, LitElement, nothing, type TemplateResult } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import { phaseAt } from '../../sim/judge.ts'
import { assemble } from '../../sim/plant.ts'
import { ratioText, told } from '../../sim/say/number.ts'
import { stationRows } from '../../sim/say/stations.ts'
import type { Units } from '../../sim/say/units.ts'
import { type Channel, valueAt } from '../../sim/trace.ts'
import { exactClock } from '../plot/time.ts'
import { HEAT_STOPS_C, heatColour, heatGradient } from '../plot/heat.ts'
import type { Result } from '../store.ts'
import { base } from '../style/base.ts'
import { parts } from '../style/marks.ts'
import { driveStyle } from './driveStyle.ts'

const NODES = [
  ['cutoff switch', 'switchC'],
  ['winding', 'windingC'],
  ['frame', 'frameC'],
] as const

@customElement('drive-words')
export class DriveWords extends LitElement {
  static styles = [base, driveStyle]

  @property({ attribute: false }) result!: Result
  @property({ attribute: false }) units!: Units
  /** The moment looked at, s. */
  @property({ type: Number }) at = 0

  private now(channel: Channel): number {
    return valueAt(this.result.trace, channel, this.at)
  }

  /** Value of a summary row of a station. */
  private row(station: Parameters<typeof stationRows>[0], label: string): string {
    return stationRows(station, this.result.job, this.units).find((row) => row.label === label)?.value ?? ''
  }

  private link(glyph: TemplateResult, name: string, about: string, now: unknown, more: unknown = nothing) {
    return html`<li>
      <span class="glyph">${glyph}</span>
      <div class="is"><h3>${name}</h3><p class="note">${about}</p></div>
      <p class="does">${now}</p>
      ${more}
    </li>`
  }

  private heat() {
    const { units } = this
    return html`<dl class="heat">
      ${NODES.map(
        ([name, channel]) => html`<div>
          <dt class="note">${name}</dt>
          <dd><i style="background:${heatColour(this.now(channel))}"></i>${told(this.now(channel), 'temperature', units)}</dd>
        </div>`,
      )}
    </dl>`
  }

  render() {
    const { units, at } = this
    const { job } = this.result
    const { ratio } = assemble(job.parts)
    const { supply, machine, belt } = job.parts
    const speed = Math.max(0, this.now('speed'))
    const amps = Math.max(0, this.now('current'))
    const phase = job.duty.phases[phaseAt(job, at)]?.name.trim()
    const rpm = (value: number) => told(value, 'angular speed', units)
    const running = this.now('asked') > 0
    const apart =
      belt.centreDistance === undefined ? '' : `, ${told(belt.centreDistance, 'length', units)} apart`
    const jackshaft = this.row('belt', 'Jackshaft')
    const by = jackshaft === '' ? '' : `, by a jackshaft of ${jackshaft},`
    const kind =
      machine.kind === 'other' ? 'Machine' : machine.kind.charAt(0).toUpperCase() + machine.kind.slice(1)
    const stop = HEAT_STOPS_C
    const low = stop[0]
    const range = stop[stop.length - 1] - low
    return html`
      <p class="note head"><strong>The drive line at ${exactClock(at)}</strong>${phase ? html`, in ${phase}` : nothing}</p>
      <ol>
        ${this.link(
          parts.supply,
          'Controller',
          `up to ${told(supply.volts, 'voltage', units)}, limit ${this.row('supply', 'Current limit')}`,
          running
            ? html`<b>${told(this.now('volts'), 'voltage', units)}</b><b>${told(amps, 'current', units)}</b>`
            : html`<b>off</b>`,
        )}
        ${this.link(
          parts.motor,
          'Motor',
          `${this.row('motor', 'Plate')}; ${this.row('motor', 'Cooling')}`,
          html`<b>${rpm(speed)}</b>`,
          this.heat(),
        )}
        ${this.link(
          parts.belt,
          'Belt',
          `${this.row('belt', 'Motor pulley')}${by} on ${this.row('belt', 'Machine pulley')}${apart}`,
          html`<b>${ratioText(ratio)}</b>`,
        )}
        ${this.link(
          machine.kind === 'mill' ? parts.mill : parts.machine,
          kind,
          `${this.row('machine', 'Wanted')}; ${this.row('machine', 'Duty')}`,
          html`<b>${rpm(Math.max(0, this.now('spindle')))}</b><b>${told(Math.max(0, this.now('load')), 'torque', units)}</b>`,
        )}
      </ol>
      <figure class="key" aria-label="Colours of temperature">
        <figcaption class="note">temperature of the part</figcaption>
        <div class="bar" style="background:${heatGradient()}"></div>
        <div class="stops" aria-hidden="true">
          ${stop.map(
            (c) =>
              html`<span class="note" style="left:${((c - low) / range) * 100}%">${told(c, 'temperature', units)}</span>`,
          )}
        </div>
      </figure>`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'drive-words': DriveWords
  }
}
