// Modules that wait: loaded once the place they are for comes near the window, or is asked for by its letter.

/** How far off is near: a window's height and a half. */
const NEAR = '150% 0px'

/** Loads once any of the places is near; returns what stops watching. */
export function whenNear(places: readonly Element[], load: () => void): () => void {
  const watcher = new IntersectionObserver(
    (entries) => {
      // The last word on each place: it may have been near only until something above it was drawn.
      const now = new Map(entries.map(({ target, isIntersecting }) => [target, isIntersecting]))
      if (![...now.values()].includes(true)) return
      watcher.disconnect()
      load()
    },
    { rootMargin: NEAR },
  )
  // Not before what stands above them has been drawn: while it has no height, everything is near.
  let frame = requestAnimationFrame(() => {
    frame = requestAnimationFrame(() => {
      for (const place of places) watcher.observe(place)
    })
  })
  return () => {
    cancelAnimationFrame(frame)
    watcher.disconnect()
  }
}

/** A function that does its work the first time only. */
export function once(work: () => unknown): () => void {
  let done = false
  return () => {
    if (done) return
    done = true
    work()
  }
}
