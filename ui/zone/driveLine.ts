// Zone A's drawing: the drive line to scale at the moment looked at; its dimensions are fields.
import { html, nothing, type PropertyValues, type LitElement } from 'lit'
import { customElement, property, state } from 'lit/decorators.js'
import { guard } from 'lit/directives/guard.js'
import { phaseAt } from '../../sim/judge.ts'
import { identify } from '../../sim/identify/motor.ts'
import { USUAL } from '../../sim/identify/assume.ts'
import { told } from '../../sim/say/number.ts'
import { type Channel, valueAt } from '../../sim/trace.ts'
import { annotate, type Tag } from '../drawing/annotations.ts'
import { type Drawing, type Moment, readings, still, tints } from '../drawing/drawing.ts'
import { driveOf } from '../drawing/drive.ts'
import { drawingStyle } from '../drawing/drawingStyle.ts'
import { insetLabels } from '../drawing/insetLabels.ts'
import { sheetOf } from '../drawing/sheet.ts'
import { driveSentence } from '../drawing/words.ts'
import { type FormState, field } from '../edit/field.ts'
import { InTurn } from '../inTurn.ts'
import { exactClock } from '../plot/time.ts'
import type { Result } from '../store.ts'
import { base, buttons } from '../style/base.ts'
import { tagStyle } from './tagStyle.ts'

/** Mass of a motor nothing is known of, kg. */
const USUAL_MASS = 4
/** Width of the panel under a tag, px before enlarging. */
const PANEL = 232
/** Narrower than this it is not drawn: it slides in its frame instead. px */
const LEAST = 220
/** What the drawing's shapes and places depend on. */
const SHAPES: readonly PropertyKey[] = ['form', 'width', 'k']
const PHONE = matchMedia('(max-width: 759.98px)')

@customElement('drive-line')
export class DriveLine extends InTurn {
  static styles = [base, buttons, drawingStyle, tagStyle]

  @property({ attribute: false }) form!: FormState
  /** The answer on show; null until there is one. */
  @property({ attribute: false }) result: Result | null = null
  /** The moment looked at, s. */
  @property({ type: Number }) at = 0

  @state() private width = 0
  @state() private k = 1
  /** Path of the dimension that is open. */
  @state() private open: string | null = null

  private drawing: Drawing | null = null
  private watcher: ResizeObserver | undefined

  connectedCallback(): void {
    super.connectedCallback()
    this.watcher = new ResizeObserver(() => this.measure())
    this.watcher.observe(this)
    if (this.hasUpdated) this.watcher.observe(this.renderRoot.querySelector('.ruler') ?? this)
  }

  disconnectedCallback(): void {
    super.disconnectedCallback()
    this.watcher?.disconnect()
  }

  protected firstUpdated(): void {
    this.measure()
    this.watcher?.observe(this.renderRoot.querySelector('.ruler') ?? this)
  }

  private measure(): void {
    this.width = Math.floor(this.clientWidth)
    this.k = (this.renderRoot.querySelector('.ruler')?.getBoundingClientRect().width ?? 100) / 100
  }

  protected willUpdate(changed: PropertyValues<this>): void {
    if (this.drawing && [...changed.keys()].every((key) => !SHAPES.includes(key))) return
    const { form, k } = this
    if (this.width === 0) return
    const width = Math.max(LEAST, this.width)
    const { asked, motor } = form
    const drive = driveOf(asked, (motor && identify(motor, USUAL)?.mass) ?? USUAL_MASS)
    const sheet = sheetOf(drive, { width, k, narrow: PHONE.matches })
    this.drawing = {
      drive,
      sheet,
      annotations: annotate(drive, sheet, form.units),
      labels: insetLabels(drive, sheet),
    }
  }

  private now(): Moment | null {
    const { result, at, form } = this
    if (!result) return null
    const read = (channel: Channel) => valueAt(result.trace, channel, at)
    const { units } = form
    return {
      windingC: read('windingC'),
      frameC: read('frameC'),
      switchC: read('switchC'),
      motor: read('speed'),
      spindle: read('spindle'),
      gives:
        read('asked') > 0
          ? `${told(read('volts'), 'voltage', units)}, ${told(Math.max(0, read('current')), 'current', units)}`
          : 'off',
    }
  }

  private async turn(path: string | null): Promise<void> {
    const before = this.open
    this.open = path
    await this.updateComplete
    if (path === null) {
      if (before) this.renderRoot.querySelector<HTMLElement>(`[data-tag="${before}"]`)?.focus()
      return
    }
    const box = this.renderRoot.querySelector<LitElement>('.panel quantity-field')
    await box?.updateComplete
    box?.focus()
    box?.shadowRoot?.querySelector('input')?.select()
  }

  /** Escape leaves, whatever stands in the field; on the way down, before the field takes it for itself. */
  private keys = {
    capture: true,
    handleEvent: (event: KeyboardEvent) => {
      if (event.key === 'Escape') {
        event.stopPropagation()
        this.renderRoot.querySelector('quantity-field')?.takeBack()
        void this.turn(null)
      }
      if (event.key === 'Enter' && event.composedPath()[0] instanceof HTMLInputElement) this.entered()
    },
  }

  /** What was typed is asked for: the tag closes, unless it is refused. */
  private entered(): void {
    const path = this.open
    setTimeout(() => {
      if (this.open === path && !this.form.problems.some((problem) => problem.path === path))
        void this.turn(null)
    })
  }

  private left = (event: FocusEvent) => {
    const { relatedTarget, currentTarget } = event
    if (
      currentTarget instanceof Node &&
      relatedTarget instanceof Node &&
      currentTarget.contains(relatedTarget)
    )
      return
    if (document.hasFocus()) this.open = null
  }

  private tag(tag: Tag, sheet: Drawing['sheet']) {
    const { box, text, dimension } = tag
    const { input } = dimension
    const open = this.open === input.path
    const wrong = this.form.problems.some(({ path }) => path === input.path)
    const width = Math.min(PANEL * sheet.k, sheet.width)
    const x = Math.max(0, Math.min(sheet.width - width, box.x + box.width / 2 - width / 2))
    return html`<li @focusout=${open ? this.left : nothing} @keydown=${open ? this.keys : nothing}>
      <button class="tag ${wrong ? 'wrong' : ''}" data-tag=${input.path} aria-expanded=${open ? 'true' : 'false'}
        aria-label="${input.field.label}: ${text}. Change"
        style="left:${box.x}px;top:${box.y}px;width:${box.width}px;height:${box.height}px"
        @click=${() => void this.turn(open ? null : input.path)}><span>${text}</span></button>
      ${
        open
          ? html`<div class="panel" style="left:${x}px;top:${box.y + box.height + 6}px;width:${width}px">${field(input, this.form)}</div>`
          : nothing
      }
    </li>`
  }

  private head(now: Moment | null) {
    const { result, at } = this
    if (!result || !now) return html`<p class="note head">Drawn from what is given.</p>`
    const phase = result.job.duty.phases[phaseAt(result.job, at)]?.name.trim()
    return html`<p class="note head"><strong>At ${exactClock(at)}</strong>${phase ? `, ${phase}` : ''}</p>`
  }

  render() {
    const { drawing, form } = this
    const now = this.now()
    const { units } = form
    if (!drawing) return html`<div class="ruler"></div>`
    const { sheet, annotations, labels, drive } = drawing
    const tags = [...annotations.tags].sort((a, b) => a.box.x - b.box.x || a.box.y - b.box.y)
    const temperature = (reads: unknown) =>
      now && typeof reads === 'string' ? told(now[`${reads as 'winding'}C`], 'temperature', units) : ''
    return html`<div class="ruler"></div>
      ${this.head(now)}
      <div class="drawing" style="height:${sheet.height}px;${this.width < LEAST ? 'overflow-x:auto;' : ''}${tints(now)}">
        <svg role="img" aria-label=${driveSentence(drive, units)} width=${sheet.width} height=${sheet.height}
          viewBox="0 0 ${sheet.width} ${sheet.height}">
          ${guard([drawing, units], () => still(drawing, units))}
          ${readings(drawing, now, units)}
        </svg>
        <ul aria-label="Dimensions">${tags.map((tag) => this.tag(tag, sheet))}</ul>
      </div>
      ${
        now
          ? html`<ul class="unseen" aria-label="The drive line at this moment">
              <li>Controller: ${now.gives}</li>
              <li>Motor: ${told(Math.max(0, now.motor), 'angular speed', units)}</li>
              ${labels.map(({ name, reads }) => (typeof reads === 'string' ? html`<li>${name}: ${temperature(reads)}</li>` : nothing))}
              <li>Spindle: ${told(Math.max(0, now.spindle), 'angular speed', units)}</li>
            </ul>`
          : nothing
      }`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'drive-line': DriveLine
  }
}
