// Dragging: from the press of a pointer to its release, wherever it goes in between.
import { nextTask } from '../../workers/nextTask.ts'

/**
 * Follows the pointer of a press until it is let go: `move` gets its distance from the left and top edges of `over`, px.
 * A move is taken up in a task of its own, the newest one: browsers tell moves in the task that draws a frame.
 */
export function drag(
  press: PointerEvent,
  move: (x: number, y: number) => void,
  over = press.currentTarget,
): void {
  const target = press.currentTarget
  if (press.button !== 0 || !(target instanceof Element) || !(over instanceof Element)) return
  let newest: PointerEvent | null = null
  const take = () => {
    if (!newest) return
    const { clientX, clientY } = newest
    newest = null
    const { left, top } = over.getBoundingClientRect()
    move(clientX - left, clientY - top)
  }
  const follow = (event: Event) => {
    if (!(event instanceof PointerEvent) || event.pointerId !== press.pointerId) return
    if (!newest) void nextTask().then(take)
    newest = event
  }
  const release = (event: Event) => {
    if (event instanceof PointerEvent && event.pointerId !== press.pointerId) return
    take()
    target.removeEventListener('pointermove', follow)
    target.removeEventListener('pointerup', release)
    target.removeEventListener('pointercancel', release)
  }
  target.setPointerCapture(press.pointerId)
  target.addEventListener('pointermove', follow)
  target.addEventListener('pointerup', release)
  target.addEventListener('pointercancel', release)
  newest = press
  take()
}
