// Zone E: minutes until the cutoff opens, at any speed and torque, with the fan and without; any point becomes a variant.
import { html, nothing, svg } from 'lit'
import { customElement, property, state } from 'lit/decorators.js'
import {
  COOLING_TITLE,
  heatNote,
  markWords,
  neverSentence,
  panelSentence,
  plainWords,
  pointWords,
  untilWords,
} from '../../sim/say/map.ts'
import { CELL_NOTE, type MapTable, mapTable } from '../../sim/say/mapReport.ts'
import { told } from '../../sim/say/number.ts'
import type { Units } from '../../sim/say/units.ts'
import { type Cooling, type HeatMap, mapPoint } from '../../sim/studies/map.ts'
import type { Try } from '../change/tries.ts'
import { wish } from '../events.ts'
import { InTurn } from '../inTurn.ts'
import { frameStyles } from '../plot/frameStyles.ts'
import { drag } from '../plot/drag.ts'
import { handle } from '../plot/handle.ts'
import { type MapDrawing, mapDrawing, mapKey } from '../plot/mapChart.ts'
import { markStyles } from '../plot/markStyles.ts'
import { Measured } from '../plot/measured.ts'
import { heading, tableOf } from '../plot/parts.ts'
import type { Work } from '../study/work.ts'
import { base, buttons } from '../style/base.ts'
import { mapStyle } from './mapStyle.ts'
import { secondStyle } from './second.ts'
import { studyLine } from './studyLine.ts'
import { studyStyle } from './studyStyle.ts'

/** Narrower than this the panels stand one under the other, px; the gap between them. */
const TWO = 900
const GAP = 40
/** Half the width of the cross-hair's handle, px before enlarging. */
const HALF = 84

interface LookedAt {
  readonly panel: number
  readonly speed: number
  readonly torque: number
}

/** A try at a speed and torque of a step, with another cooling if one is named. */
export type MakePoint = (phase: number, speed: number, torque: number, cooling: Cooling | null) => Try

@customElement('map-zone')
export class MapZone extends InTurn {
  static styles = [base, buttons, secondStyle, markStyles, frameStyles, studyStyle, mapStyle]

  @property({ attribute: false }) work!: Work<HeatMap>
  /** The map is of another job than the one asked now. */
  @property({ type: Boolean }) stale = false
  @property({ attribute: false }) units!: Units
  @property({ attribute: false }) makePoint: MakePoint | null = null
  @state() private at: LookedAt | null = null
  @state() private open: readonly boolean[] = []

  private readonly measured = new Measured(this)
  private drawings: readonly (MapDrawing | null)[] = []
  /** Tables that were opened, by panel: not worked out again while the cross-hair moves. */
  private readonly tables = new Map<number, MapTable>()
  /** What the drawings are of. */
  private drawn: readonly unknown[] = []

  // Not sooner: an element that was there before its module has no properties until then.
  protected firstUpdated(): void {
    if (!this.work.wanted) wish(this, { kind: 'want study', study: 'map' })
  }

  protected willUpdate(changed: Map<PropertyKey, unknown>): void {
    const map = this.work.result
    const before = changed.get('work') as Work<HeatMap> | undefined
    if (before && map !== before.result) this.at = null
    const { width, k } = this.measured
    const now = [map, this.units, width, k]
    if (now.every((each, n) => each === this.drawn[n])) return
    this.drawn = now
    this.tables.clear()
    const each = this.two ? Math.floor((width - GAP) / 2) : width
    this.drawings = map && width > 0 ? map.panels.map((_, n) => mapDrawing(map, n, this.units, each, k)) : []
  }

  private table(map: HeatMap, n: number): MapTable {
    const table = this.tables.get(n) ?? mapTable(map, map.panels[n], this.units)
    this.tables.set(n, table)
    return table
  }

  private get two(): boolean {
    return this.measured.width >= TWO * this.measured.k
  }

  /** Where the cross-hair stands on a panel: where it was put, or on the hardest step. */
  private placeOn(map: HeatMap, panel: number): LookedAt {
    if (this.at?.panel === panel) return this.at
    const [mark] = map.marks
    const { speeds, torques } = map
    return {
      panel,
      speed: mark?.speed ?? (speeds[0] + speeds[speeds.length - 1]) / 2,
      torque: mark?.torque ?? torques[torques.length - 1] / 2,
    }
  }

  private tryOf(map: HeatMap, { panel, speed, torque }: LookedAt): Try | null {
    const [mark] = map.marks
    if (!mark) return null
    const { cooling } = map.panels[panel]
    return this.makePoint?.(mark.phase, speed, torque, panel === 0 ? null : cooling) ?? null
  }

  private key(event: KeyboardEvent, map: HeatMap, place: LookedAt): void {
    const use = this.tryOf(map, place)
    if (event.key === 'Enter' && use) {
      event.preventDefault()
      wish(this, use.wish)
      return
    }
    const to = mapKey(event.key, event.shiftKey, place, map)
    if (to === undefined) return
    event.preventDefault()
    this.at = { panel: place.panel, ...to }
  }

  private follow(press: PointerEvent, panel: number, drawing: MapDrawing): void {
    const { currentTarget: chart } = press
    if (press.button !== 0 || !(chart instanceof HTMLElement)) return
    chart.querySelector<HTMLElement>('.handle')?.focus({ preventScroll: true })
    drag(press, (x, y) => {
      this.at = { panel, ...drawing.at(x, y) }
    })
  }

  private panel(map: HeatMap, n: number) {
    const drawing = this.drawings[n]
    if (!drawing) return nothing
    const { units } = this
    const { k } = this.measured
    const panel = map.panels[n]
    const title = COOLING_TITLE[panel.cooling]
    const place = this.placeOn(map, n)
    const looked = this.at?.panel === n
    const { speed, torque } = place
    const said = looked
      ? pointWords(mapPoint(map.parts, panel.cooling, speed, torque), speed, torque, map, units)
      : map.marks.length > 0
        ? markWords(map, panel, 0, units)
        : ''
    const use = looked ? this.tryOf(map, place) : null
    const short = `${told(speed, 'angular speed', units)}, ${told(torque, 'torque', units)}`
    return html`<div>
      ${heading({ title, unit: n === 0 ? 'as it is' : '', hint: '', left: 0 }, this.open[n] ?? false, () => {
        this.open = map.panels.map((_, at) => (at === n ? !this.open[at] : (this.open[at] ?? false)))
      })}
      <div class="chart" @pointerdown=${(event: PointerEvent) => this.follow(event, n, drawing)}
        @mousedown=${(event: Event) => event.preventDefault()}>
        <svg role="img" aria-label=${panelSentence(map, panel, units)} width=${drawing.width} height=${drawing.height}>${drawing.drawn}<g
          class="cross">${looked ? drawing.cross(speed, torque) : svg``}</g></svg>
        ${handle({
          ...{
            label: `Speed and torque looked at, ${title}`,
            text: said === '' ? short : said,
            shown: short,
          },
          ...{ low: map.speeds[0], high: map.speeds[map.speeds.length - 1], now: speed },
          ...{ x: drawing.x(speed), top: drawing.bottom + 50 * k, half: HALF * k, width: drawing.width },
          onKey: (event) => this.key(event, map, place),
        })}
      </div>
      <div class="row"><span class="under">${said}</span>
        ${use ? html`<button class="act" @click=${() => wish(this, use.wish)}>${use.label}</button>` : nothing}</div>
      ${
        this.open[n]
          ? html`${tableOf(`${untilWords(map)}, ${title}`, this.table(map, n), 0)}<p class="note">${CELL_NOTE}</p>`
          : nothing
      }
    </div>`
  }

  render() {
    const map = this.work.result
    const { units } = this
    return html`<div class="ruler"></div>${studyLine(this, 'map', this.work, this.stale, 'Map of minutes', 'Working out the minutes at every speed and torque')}
      ${
        map && this.drawings.length > 0
          ? html`<p class="note">${plainWords(map)} ${heatNote(map, units)} Drag, or arrow keys: Enter makes that speed and torque a variant.</p>
            <div class="panels ${this.two ? 'two' : ''}">${map.panels.map((_, n) => this.panel(map, n))}</div>
            ${map.panels.map((panel) => html`<p class="said">${neverSentence(map, panel, units)}</p>`)}`
          : nothing
      }`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'map-zone': MapZone
  }
}
