// The site kept for use without a network, and word of a newer version: ui/offline/serviceWorker.ts does the keeping.

export interface Versions {
  /** Puts the version that waits into use, and opens the page anew on it. The job is kept as on any reload. */
  use(): void
}

/** Rest between two looks for a newer version while a page stays open, ms. */
const LOOK_AGAIN = 3_600_000

/**
 * Keeps this site from now on, and tells when a newer version is whole and waits. An open page is never changed under
 * its reader. Null where the browser keeps nothing: no such feature, or an address without encryption.
 */
export function keepSite(waits: () => void): Versions | null {
  const { serviceWorker } = navigator
  if (!serviceWorker) return null
  let registration: ServiceWorkerRegistration | undefined
  let looked = performance.now()

  const follow = (worker: ServiceWorker | null) => {
    const tell = () => {
      // The first version of all has no older one to wait for.
      if (worker?.state === 'installed' && serviceWorker.controller) waits()
    }
    worker?.addEventListener('statechange', tell)
    tell()
  }
  const look = () => {
    if (document.hidden || !registration || performance.now() - looked < LOOK_AGAIN) return
    looked = performance.now()
    registration.update().catch(() => {}) // no network: another time
  }

  serviceWorker.register('./serviceWorker.js', { updateViaCache: 'none' }).then(
    (found) => {
      registration = found
      follow(found.waiting)
      follow(found.installing)
      found.addEventListener('updatefound', () => follow(found.installing))
      document.addEventListener('visibilitychange', look)
    },
    () => {}, // The browser may be told to keep nothing: everything else works.
  )

  return {
    use() {
      const waiting = registration?.waiting
      // Another tab has put it into use already.
      if (!waiting) return location.reload()
      serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true })
      waiting.postMessage('use it now')
    },
  }
}
