// Dragging: from the press of a pointer to its release, wherever it goes in between.

/** Follows the pointer of a press until it is let go: `move` gets its distance from the element's left edge, px. */
export function drag(press: PointerEvent, move: (x: number) => void): void {
  const target = press.currentTarget
  if (press.button !== 0 || !(target instanceof Element)) return
  const follow = (event: Event) => {
    if (event instanceof PointerEvent && event.pointerId === press.pointerId)
      move(event.clientX - target.getBoundingClientRect().left)
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
