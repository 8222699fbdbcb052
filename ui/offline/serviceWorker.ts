// The service worker: after one visit the site needs no network, and a new version waits until it is asked for.
declare const self: ServiceWorkerGlobalScope
/** Written in front of this file by the build: every file by its address from here, with its hash. */
declare const SITE: { readonly version: string; readonly files: Readonly<Record<string, string>> }

const here = self.registration.scope
/** Caches of this site at this address, whatever the version: a space is in no address. */
const OURS = `dutywright ${here} `
const CACHE = OURS + SITE.version
/** Hosts add headers that say nothing about these files. */
const LOOSE = { ignoreVary: true, ignoreSearch: true }

/** The first 72 bits of SHA-256, in base64: as ui/build/offline.ts has it. */
async function hashOf(bytes: ArrayBuffer): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes))
  return btoa(String.fromCharCode(...digest.subarray(0, 9)))
}

/** Puts a file into the cache: from an older version where it has not changed, else from the network. Throws where what comes is not that file. */
async function keep(cache: Cache, name: string, hash: string): Promise<void> {
  const address = here + name
  const sources = [() => caches.match(address, LOOSE), () => fetch(address, { cache: 'no-cache' })]
  for (const source of sources) {
    const found = await source()
    if (!found?.ok) continue
    const bytes = await found.arrayBuffer()
    if ((await hashOf(bytes)) !== hash) continue
    const headers = new Headers(found.headers)
    headers.delete('content-encoding') // these bytes are unpacked
    return cache.put(address, new Response(bytes, { headers }))
  }
  throw new Error(`${address} is not what this version needs`)
}

/** A version is kept whole or not at all: one file that fails, and the version before stays in use. */
async function keepAll(): Promise<void> {
  const cache = await caches.open(CACHE)
  await Promise.all(Object.entries(SITE.files).map(([name, hash]) => keep(cache, name, hash)))
}

/** From here on this version answers. Older ones go, unless a page is open that may still be running one. */
async function takeOver(): Promise<void> {
  await self.clients.claim()
  const pages = await self.clients.matchAll({ type: 'window' })
  if (pages.length > 1) return
  const names = await caches.keys()
  const older = names.filter((name) => name.startsWith(OURS) && name !== CACHE)
  await Promise.all(older.map((name) => caches.delete(name)))
}

/** A file as this version has it. A name in assets/ holds its hash: there any version will do, for a page that runs an older one. */
async function answer(name: string, request: Request): Promise<Response> {
  const where = name.startsWith('assets/') ? LOOSE : { ...LOOSE, cacheName: CACHE }
  return (await caches.match(here + name, where)) ?? fetch(request)
}

self.addEventListener('install', (event) => event.waitUntil(keepAll()))
self.addEventListener('activate', (event) => event.waitUntil(takeOver()))
self.addEventListener('message', (event) => {
  if (event.data === 'use it now') void self.skipWaiting()
})
self.addEventListener('fetch', (event) => {
  const { request } = event
  // Nothing of other hosts, nor of what else this host may have.
  if (request.method !== 'GET' || !request.url.startsWith(here)) return
  const name = request.url
    .slice(here.length)
    .replace(/[?#].*/s, '')
    .replace(/^index\.html$/, '')
  if (name in SITE.files || name.startsWith('assets/')) event.respondWith(answer(name, request))
})
