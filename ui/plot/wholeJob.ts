// The whole job as ribbons, with a frame around the part shown below: dragged, or moved by keys.
import { html, nothing, svg, type TemplateResult } from 'lit'
import { guard } from 'lit/directives/guard.js'
import { drag } from './drag.ts'
import { tell } from './events.ts'
import { handleKey, movedWindow } from './keys.ts'
import { heading, heatKey, namesLine, tableOf } from './parts.ts'
import type { Ribbons } from './ribbons.ts'
import { exactWords } from './time.ts'
import type { View } from './view.ts'

function frameByKey(host: EventTarget, event: KeyboardEvent, what: 'from' | 'to', view: View): void {
  const by = handleKey(event.key, event.shiftKey)
  if (by === undefined || event.altKey || event.ctrlKey || event.metaKey) return
  event.preventDefault()
  tell(host, 'window', movedWindow(view, what, by, view.end))
}

/** A press on a handle moves that end; inside the frame, the frame; elsewhere, the frame's middle comes there. */
function dragFrame(host: EventTarget, event: PointerEvent, view: View): void {
  const { left, right, end, from, to } = view
  const pressed = event
    .composedPath()
    .find((target) => target instanceof HTMLElement && target.dataset.end !== undefined)
  const what = pressed instanceof HTMLElement ? (pressed.dataset.end === 'from' ? 'from' : 'to') : 'all'
  let start: number | undefined
  drag(event, (x) => {
    const t = ((x - left) / (right - left)) * end
    start ??= what === 'all' && (t < from || t > to) ? (from + to) / 2 : t
    const by = Math.round((t - start) / 10) * 10
    if (by !== 0) tell(host, 'window', movedWindow({ from, to }, what, by, end))
  })
}

/** The ribbons under their heading, as a table too where `open`; the part wanted is told to `host`. */
export function wholeJob(
  host: EventTarget,
  view: View,
  bars: Ribbons,
  open: boolean,
  turn: () => void,
): TemplateResult {
  const { left, right, end, units, narrow } = view
  const x = (t: number) => left + ((right - left) * t) / end
  const [top, bottom] = bars.frame
  const title = `Whole job, ${exactWords(end)}`
  const hint = narrow
    ? 'hatched: stopped by the cutoff'
    : 'colour: cutoff switch · hatched: stopped by the cutoff · frame: the part shown below'
  const edge = (what: 'from' | 'to', t: number) => html`
    <div class="edge" role="slider" tabindex="0" data-end=${what}
      aria-label=${what === 'from' ? 'Part shown begins' : 'Part shown ends'}
      aria-valuemin="0" aria-valuemax=${Math.round(end)} aria-valuenow=${Math.round(t)} aria-valuetext=${exactWords(t)}
      style="left: ${x(t)}px; top: ${(top + bottom) / 2}px"
      @keydown=${(event: KeyboardEvent) => frameByKey(host, event, what, view)}></div>`
  return html`
    ${heading({ title, unit: '', hint: html`${hint} ${heatKey(units)}`, left: narrow ? 0 : left }, open, turn)}
    ${narrow ? namesLine(view.variants, view.active) : nothing}
    <div class="chart" @pointerdown=${(event: PointerEvent) => dragFrame(host, event, view)}>
      <svg role="img" aria-label=${bars.words} width=${view.width} height=${bars.height}>
        ${guard([bars], () => bars.still)}
        ${svg`<rect class="window" x=${x(view.from)} y=${top} width=${x(view.to) - x(view.from)} height=${bottom - top} rx="2" />`}
      </svg>
      ${edge('from', view.from)}${edge('to', view.to)}
    </div>
    ${open ? tableOf(title, bars.table(), narrow ? 0 : left) : nothing}`
}
