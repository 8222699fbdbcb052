// Handles at the ends of the duty's steps, in its first cycle: dragged, or moved by keys.
import { html, nothing } from 'lit'
import type { Chart } from './chart.ts'
import { drag } from './drag.ts'
import { type Edge, lengthAt, lengthBy } from './dutyEdges.ts'
import { tell } from './events.ts'
import { handleKey } from './keys.ts'
import { exactWords } from './time.ts'
import type { View } from './view.ts'

function dragEdge(host: EventTarget, event: PointerEvent, edge: Edge, { left, right, from, to }: View): void {
  event.stopPropagation()
  const chart = (event.currentTarget as Element).closest('.chart')
  if (!chart) return
  // What is undone at once: the changes of this press.
  const during = `step ${edge.index} ${event.timeStamp}`
  let start: number | undefined
  // Over the chart, which stands still: the handle moves under the pointer.
  const move = (x: number) => {
    start ??= x
    const t = edge.from + edge.seconds + ((x - start) / (right - left)) * (to - from)
    if (x !== start) tell(host, 'step', { index: edge.index, seconds: lengthAt(edge, t), during })
  }
  drag(event, move, chart)
}

function edgeByKey(host: EventTarget, event: KeyboardEvent, edge: Edge): void {
  const by = handleKey(event.key, event.shiftKey)
  if (by === undefined || event.altKey || event.ctrlKey || event.metaKey) return
  event.preventDefault()
  tell(host, 'step', { index: edge.index, seconds: lengthBy(edge, by), during: '' })
}

/** A frame around the first cycle, with a handle at the end of each step; told to `host`. */
export function stepEdges(
  host: EventTarget,
  edges: readonly Edge[],
  view: View,
  { scales: { x, box } }: Chart,
) {
  const end = edges.at(-1)
  if (!end || view.from >= end.from + end.seconds) return nothing
  const at = (t: number) => Math.min(box.right, Math.max(box.left, x(t)))
  const middle = (box.top + box.bottom) / 2
  return html`<div class="cycle" style="left: ${at(0)}px; top: ${box.top}px; width: ${at(end.from + end.seconds) - at(0)}px;
        height: ${box.bottom - box.top}px"></div>
      ${edges
        .filter(({ from, seconds }) => from + seconds >= view.from && from + seconds <= view.to)
        .map(
          (edge) => html`<div class="edge" role="slider" tabindex="0" aria-label="End of ${edge.name}"
            aria-valuemin="0" aria-valuemax=${Math.round(view.end)} aria-valuenow=${Math.round(edge.seconds)}
            aria-valuetext="lasts ${exactWords(edge.seconds)}" style="left: ${x(edge.from + edge.seconds)}px; top: ${middle}px"
            @pointerdown=${(event: PointerEvent) => dragEdge(host, event, edge, view)}
            @keydown=${(event: KeyboardEvent) => edgeByKey(host, event, edge)}></div>`,
        )}`
}
