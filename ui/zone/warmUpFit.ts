// The fitted warm-up as a chart of its own, as wide as it is given.
import { css, html, LitElement, nothing } from 'lit'
import { customElement, property, state } from 'lit/decorators.js'
import type { Fit } from '../../sim/identify/fit.ts'
import type { Log } from '../../sim/identify/log.ts'
import type { Units } from '../../sim/say/units.ts'
import { frameStyles } from '../plot/frameStyles.ts'
import { markStyles } from '../plot/markStyles.ts'
import { heading, tableOf } from '../plot/parts.ts'
import { warmUpChart, type WarmUpChart } from '../plot/warmUpChart.ts'

@customElement('warm-up-fit')
export class WarmUpFit extends LitElement {
  static styles = [
    markStyles,
    frameStyles,
    css`
      .chart {
        cursor: default;
        user-select: auto;
        touch-action: auto;
      }
    `,
  ]

  @property({ attribute: false }) log!: Log
  @property({ attribute: false }) fit!: Fit
  @property({ attribute: false }) units!: Units
  @state() private width = 0
  @state() private k = 1
  @state() private open = false

  private chart: WarmUpChart | null = null
  private watcher: ResizeObserver | undefined

  connectedCallback(): void {
    super.connectedCallback()
    this.watcher = new ResizeObserver(() => this.measure())
    this.watcher.observe(this)
  }

  disconnectedCallback(): void {
    super.disconnectedCallback()
    this.watcher?.disconnect()
  }

  protected firstUpdated(): void {
    const ruler = this.renderRoot.querySelector('.ruler')
    if (ruler) this.watcher?.observe(ruler)
  }

  private measure(): void {
    this.width = Math.floor(this.clientWidth)
    this.k = (this.renderRoot.querySelector('.ruler')?.getBoundingClientRect().width ?? 100) / 100
  }

  protected willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (changed.size === 1 && changed.has('open')) return
    const { log, fit, units, width, k } = this
    this.chart = warmUpChart({ log, fit, units, width, k })
  }

  render() {
    const { chart, open, width, units, fit } = this
    const title = 'The warm-up and its fit'
    const ohms = !fit.windingReadC.every(Number.isNaN)
    const hint = `rings: can as read${ohms ? ', squares: winding by its ohms' : ''}`
    return html`<div class="ruler"></div>
      ${heading({ title, unit: units.temperature, hint, left: 0 }, open, () => {
        this.open = !open
      })}
      ${
        chart
          ? html`<div class="chart">
              <svg role="img" aria-label=${chart.words} width=${width} height=${chart.height}>${chart.drawn}</svg>
            </div>`
          : nothing
      }
      ${open && chart ? tableOf(title, chart.table(), 0) : nothing}`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'warm-up-fit': WarmUpFit
  }
}
