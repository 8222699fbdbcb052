// Two inputs at once: a grid of the job over both, each cell a figure, and a variant when it is pressed.
import { html, LitElement, nothing } from 'lit'
import { customElement, property, state } from 'lit/decorators.js'
import {
  axisWords,
  cellSentence,
  cellWords,
  crossingName,
  figureWords,
  gridSentence,
  valueWords,
} from '../../sim/say/grid.ts'
import type { Units } from '../../sim/say/units.ts'
import { type Input, inputAt, type Scenario } from '../../sim/scenario.ts'
import { FIGURE_NAMES, FIGURES, type FigureName } from '../../sim/studies/figures.ts'
import { changesAt } from '../../sim/studies/grid.ts'
import { axisInputs, axisRead } from '../change/grid.ts'
import type { GridAsked } from '../change/gridAsked.ts'
import { stationOf } from '../edit/groups.ts'
import { wish } from '../events.ts'
import { placeOf, shadesOf } from '../plot/gridShade.ts'
import type { GridShown } from '../study/work.ts'
import type { Work } from '../study/work.ts'
import { base, buttons } from '../style/base.ts'
import { gridStyle } from './gridStyle.ts'
import { secondStyle } from './second.ts'
import { studyLine } from './studyLine.ts'
import { studyStyle } from './studyStyle.ts'

const STATIONS = {
  supply: 'Supply and controller',
  motor: 'Motor',
  belt: 'Belt',
  machine: 'Machine and duty',
} as const

const STEPS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
}

@customElement('grid-zone')
export class GridZone extends LitElement {
  static styles = [base, buttons, secondStyle, studyStyle, gridStyle]

  @property({ attribute: false }) work!: Work<GridShown>
  @property({ type: Boolean }) stale = false
  @property({ attribute: false }) asked!: GridAsked
  /** The chosen variant as text. */
  @property({ attribute: false }) scenario!: Scenario
  @property({ attribute: false }) units!: Units
  /** The cell that the keyboard is on. */
  @state() private cell = 0

  private axis(name: 'x' | 'y', inputs: readonly Input[]) {
    const { path, range } = this.asked[name]
    const read = axisRead(this.scenario, this.asked[name], name)
    const wrong = 'wrong' in read ? `${read.wrong} ${read.wouldDo}` : ''
    const which = name === 'x' ? 'Across' : 'Down'
    const groups = Object.entries(STATIONS).map(
      ([station, words]) => [words, inputs.filter((input) => stationOf(input.path) === station)] as const,
    )
    const choice = inputAt(this.scenario, path)?.field.kind === 'choice'
    return html`<div class="pair">
      <label>${which}
        <select @change=${(event: Event) => wish(this, { kind: 'grid', [name]: { path: (event.currentTarget as HTMLSelectElement).value } })}>
          ${groups.map(
            ([words, own]) => html`<optgroup label=${words}>
              ${own.map((input) => html`<option value=${input.path} ?selected=${input.path === path}>${axisWords(this.scenario, input.path)}</option>`)}
            </optgroup>`,
          )}
        </select>
      </label>
      ${
        choice
          ? nothing
          : html`<label>${which}: from .. to
              <input type="text" autocomplete="off" .value=${range} aria-invalid=${wrong ? 'true' : 'false'}
                aria-describedby=${wrong ? `wrong-${name}` : nothing}
                @change=${(event: Event) => wish(this, { kind: 'grid', [name]: { range: (event.currentTarget as HTMLInputElement).value } })} />
            </label>`
      }
      ${wrong ? html`<span class="note bad" id="wrong-${name}">${wrong}</span>` : nothing}
    </div>`
  }

  private figures() {
    return html`<label>Figure
      <select @change=${(event: Event) => wish(this, { kind: 'grid', figure: (event.currentTarget as HTMLSelectElement).value as FigureName })}>
        ${FIGURE_NAMES.map((name) => html`<option value=${name} ?selected=${name === this.asked.figure}>${FIGURES[name].label}</option>`)}
      </select>
    </label>`
  }

  private move(event: KeyboardEvent, columns: number, rows: number): void {
    const step = STEPS[event.key]
    if (!step || event.altKey || event.ctrlKey || event.metaKey) return
    event.preventDefault()
    const column = Math.min(columns - 1, Math.max(0, (this.cell % columns) + step[0]))
    const row = Math.min(rows - 1, Math.max(0, Math.floor(this.cell / columns) + step[1]))
    this.cell = row * columns + column
    void this.updateComplete.then(() =>
      this.renderRoot.querySelector<HTMLElement>('td button[tabindex="0"]')?.focus(),
    )
  }

  private cells({ spec, points }: GridShown) {
    const { x, y } = spec
    const { units, scenario } = this
    const { figure } = this.asked
    const columns = x.texts.length
    const shades = shadesOf(points, figure)
    const here = { x: this.present(spec.scenario, x), y: this.present(spec.scenario, y) }
    const at = Math.min(this.cell, points.length - 1)
    const one = (n: number) => {
      const point = points[n]
      if (!point) return html`<td><span>…</span></td>`
      const changes = changesAt(spec, n)
      const name = crossingName(scenario, changes)
      const now = n % columns === here.x && Math.floor(n / columns) === here.y
      const none = !point.ok || point.figures[figure] === null
      return html`<td class=${now ? 'now' : ''}>
        <button class=${none ? 'none' : ''} style="--tint: ${shades[n]}%" tabindex=${n === at ? 0 : -1} ?disabled=${!point.ok}
          @focus=${() => {
            this.cell = n
          }}
          @click=${() => wish(this, { kind: 'try', name, changes })}>${cellWords(figure, point, units)}<i class="unseen">, ${cellSentence(figure, point, units)}: ${name}${now ? ', as it is now' : ''}</i></button>
      </td>`
    }
    return html`<p class="said">${gridSentence(spec, points, figure, units)}</p>
      <p class="note">${figureWords(figure, units)}. Across: ${axisWords(scenario, x.path)}. Down: ${axisWords(scenario, y.path)}. Press a cell to make it a variant.</p>
      <div class="cells">
        <table aria-label=${figureWords(figure, units)} @keydown=${(event: KeyboardEvent) => this.move(event, columns, y.texts.length)}>
          <thead><tr><td class="corner"></td>${x.texts.map((text) => html`<th scope="col">${valueWords(scenario, x.path, text)}</th>`)}</tr></thead>
          <tbody>
            ${y.texts.map(
              (text, row) =>
                html`<tr><th scope="row">${valueWords(scenario, y.path, text)}</th>${x.texts.map((_, column) => one(row * columns + column))}</tr>`,
            )}
          </tbody>
        </table>
      </div>`
  }

  private present(scenario: Scenario, axis: GridShown['spec']['x']): number | null {
    return placeOf(scenario, axis, inputAt(scenario, axis.path)?.text ?? '')
  }

  render() {
    const { work, asked } = this
    const same = asked.x.path === asked.y.path
    const inputs = axisInputs(this.scenario)
    return html`<h3>Two inputs at once</h3>
      <div class="fields">${this.axis('x', inputs)}${this.axis('y', inputs)}${this.figures()}
        ${
          work.wanted
            ? nothing
            : html`<button class="act" @click=${() => wish(this, { kind: 'want study', study: 'grid' })}>Work it out</button>`
        }
      </div>
      ${same ? html`<p class="note bad">Both are the same input: choose two.</p>` : nothing}
      ${studyLine(this, 'grid', work, this.stale, 'Grid', 'Working the grid out')}
      ${work.result ? this.cells(work.result) : nothing}`
  }
}
