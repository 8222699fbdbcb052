// Dragging: from the press of a pointer to its release, wherever it goes in between.

/** Follows the pointer of a press until it is let go: `move` gets its distance from the left and top edges of `over`, px. */
export function drag(
  press: PointerEvent,
  move: (x: number, y: number) => void,
  over = press.currentTarget,
): void {
  const target = press.currentTarget
  if (press.button !== 0 || !(target instanceof Element) || !(over instanceof Element)) return
  const follow = (event: Event) => {
    if (!(event instanceof PointerEvent) || event.pointerId !== press.pointerId) return
    const { left, top } = over.getBoundingClientRect()
    move(event.clientX - left, event.clientY - top)
  }
  const release = (event: Event) => {
    if (event instanceof PointerEvent && event.pointerId !== press.pointerId) return
    target.removeEventListener('pointermove', follow)
    target.removeEventListener('pointerup', release)
    target.removeEventListener('pointercancel', release)
  }
  target.setPointerCapture(press.pointerId)
  target.addEventListener('pointermove', follow)
  target.addEventListener('pointerup', release)
  target.addEventListener('pointercancel', release)
  follow(press)
}
