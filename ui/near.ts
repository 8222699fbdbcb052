// Modules that wait: loaded once the place they are for comes near the window, or is asked for by its letter.

/** How far off is near: a window's height and a half. */
const NEAR = '150% 0px'

/** Loads once any of the places is near; returns what stops watching. */
export function whenNear(places: readonly Element[], load: () => void): () => void {
  const watcher = new IntersectionObserver(
    (entries) => {
      if (!entries.some(({ isIntersecting }) => isIntersecting)) return
      watcher.disconnect()
      load()
    },
    { rootMargin: NEAR },
  )
  for (const place of places) watcher.observe(place)
  return () => watcher.disconnect()
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
