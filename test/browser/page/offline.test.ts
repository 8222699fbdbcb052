// Without a network, in a real browser, at an address below the top of a plain host: whole after one visit; a new version waits.
import { readFile, rm } from 'node:fs/promises'
import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { extname, join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { build } from 'vite'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { mkdtemp } from 'node:fs/promises'
import { root } from '../../house/tree.ts'
import { findBrowser, launch } from '../find.ts'
import { buildSite } from '../page.ts'
import { sentence } from './sheet.ts'

const KINDS: Record<string, string> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.webmanifest': 'application/manifest+json',
}
const PATH = '/some/where/'

/** A plain host that can be given another folder, and be cut off. */
function host() {
  let folder = ''
  let down = false
  /** What was asked for and is not there. */
  const missing: string[] = []
  const server: Server = createServer(async (request, response) => {
    if (down) return void request.socket.destroy()
    const { pathname } = new URL(request.url!, 'http://host')
    const name = pathname.startsWith(PATH) ? pathname.slice(PATH.length) || 'index.html' : '..'
    const bytes = name.includes('..') ? null : await readFile(join(folder, name)).catch(() => null)
    if (!bytes) missing.push(pathname)
    response.writeHead(bytes ? 200 : 404, { 'content-type': KINDS[extname(name)] ?? 'text/plain' })
    response.end(bytes ?? 'not here')
  })
  return {
    missing,
    async open() {
      await new Promise<void>((done) => server.listen(0, '127.0.0.1', done))
      return `http://127.0.0.1:${(server.address() as AddressInfo).port}${PATH}`
    },
    serve(next: string) {
      folder = next
      down = false
    },
    cut() {
      down = true
    },
    close: () => server.close(),
  }
}

/** The site as it will be one day: the same, but for a word in its head. */
async function buildNext(): Promise<string> {
  const outDir = await mkdtemp(join(root, 'node_modules/.cache/site-next-'))
  await build({
    configFile: join(root, 'ui/vite.config.ts'),
    logLevel: 'warn',
    build: { outDir },
    plugins: [
      {
        name: 'next',
        transformIndexHtml: (html) =>
          html.replace('</head>', '<meta name="version" content="next" /></head>'),
      },
    ],
  })
  return outDir
}

const given = process.env.TEST_SITE
let browser: Browser
let site = ''
let next = ''
const plain = host()
let url = ''
beforeAll(async () => {
  const found = await findBrowser()
  if (typeof found === 'string') throw new Error(found)
  site = given ?? (await buildSite())
  next = await buildNext()
  browser = await launch(found)
  url = await plain.open()
})
afterAll(async () => {
  await browser?.close()
  plain.close()
  if (!given) await rm(site, { recursive: true })
  await rm(next, { recursive: true })
})

const visited = async () => {
  plain.serve(site)
  const context = await browser.newContext()
  const page = await context.newPage()
  await page.goto(`${url}#demo=appleMill`)
  await answered(page)
  await page.evaluate(() => navigator.serviceWorker.ready)
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller?.state)).toBe('activated')
  return page
}
const answered = (page: Page) => expect.poll(() => sentence(page), { timeout: 60_000 }).not.toBe('')
const cacheNames = (page: Page) => page.evaluate(async () => (await caches.keys()).sort())
const isNext = (page: Page) => page.locator('meta[name="version"]').count()
const note = (page: Page) => page.locator('new-version').getByText('A new version is ready.')

it('after one visit everything is there with the network off: the answer, zones that wait, workers, faces', async () => {
  const page = await visited()
  plain.cut()
  await page.context().setOffline(true)
  expect(
    await page.evaluate(() =>
      fetch('./nothing').then(
        () => 'came',
        () => 'did not',
      ),
    ),
  ).toBe('did not')

  const failed: string[] = []
  page.on('requestfailed', (request) => failed.push(request.url()))
  page.on('pageerror', (error) => failed.push(error.message))
  await page.reload()
  await answered(page)
  // Nobody has been near these on the first visit.
  await page.locator('#K').scrollIntoViewIfNeeded()
  await page.locator('wiring-zone svg').first().waitFor()
  await page.locator('#F').scrollIntoViewIfNeeded()
  await page.locator('ratio-zone svg').first().waitFor({ timeout: 60_000 })
  const faces = await page.evaluate(async () => {
    await document.fonts.ready
    return [...document.fonts].filter(({ status }) => status === 'loaded').length
  })
  expect(faces).toBeGreaterThanOrEqual(2)
  expect(failed).toEqual([])

  // By the name of the file and with a query, too; what is not part of the site stays the network's.
  await page.goto(`${url}index.html?from=bench#demo=appleMill`)
  await answered(page)
  await page.context().close()
})

it('keeps the site and nothing else, under the address it stands at', async () => {
  const page = await visited()
  const kept = await page.evaluate(async () => {
    const names = await caches.keys()
    const requests = await Promise.all(names.map(async (name) => (await caches.open(name)).keys()))
    return { names, addresses: requests.flat().map((request) => request.url) }
  })
  expect(kept.names).toHaveLength(1)
  expect(kept.names[0]).toContain(`dutywright ${url} `)
  expect(kept.addresses.filter((address) => !address.startsWith(url))).toEqual([])
  expect(kept.addresses).toContain(url)
  expect(kept.addresses.some((address) => address.endsWith('.woff2'))).toBe(true)
  const manifest = await page.evaluate(async () => {
    const link = document.querySelector<HTMLLinkElement>('link[rel="manifest"]')!
    const found = await (await fetch(link.href)).json()
    const icons = await Promise.all(
      found.icons.map(async ({ src, sizes }: { src: string; sizes: string }) => {
        const image = await createImageBitmap(await (await fetch(new URL(src, link.href))).blob()).catch(
          () => null,
        )
        return image ? `${image.width}x${image.height}` === sizes : src.endsWith('.svg')
      }),
    )
    return { name: found.name, start: new URL(found.start_url, link.href).href, icons }
  })
  expect(manifest).toEqual({ name: 'Dutywright', start: url, icons: [true, true, true, true] })
  await page.context().close()
})

it('a new version is offered, not forced: an open page stays as it is until it is asked for', async () => {
  const page = await visited()
  const other = await page.context().newPage()
  await other.goto(`${url}#demo=appleMill`)
  await answered(other)
  const [first] = await cacheNames(page)

  plain.serve(next)
  await page.reload()
  await answered(page)
  await note(page).waitFor({ timeout: 60_000 })
  expect(await isNext(page)).toBe(0)
  // Nor does opening it again bring it.
  await page.reload()
  await answered(page)
  expect(await isNext(page)).toBe(0)
  expect(await cacheNames(page)).toContain(first)
  await note(page).waitFor()

  await page.getByRole('button', { name: 'Use it now' }).click()
  await page.waitForFunction(() => document.querySelector('meta[name="version"]') !== null)
  await answered(page)
  expect(await note(page).count()).toBe(0)

  // The other page runs the old version on, and what it has not loaded yet is still to be had.
  expect(await isNext(other)).toBe(0)
  expect(await cacheNames(other)).toContain(first)
  plain.missing.length = 0
  await other.locator('#K').scrollIntoViewIfNeeded()
  await other.locator('wiring-zone svg').first().waitFor()
  expect(plain.missing).toEqual([])
  await other.context().close()
})

it('what was kept of an older version goes once the new one is in use', async () => {
  const page = await visited()
  const [first] = await cacheNames(page)
  plain.serve(next)
  await page.reload()
  await page.getByRole('button', { name: 'Use it now' }).click({ timeout: 60_000 })
  await page.waitForFunction(() => document.querySelector('meta[name="version"]') !== null)
  await expect.poll(() => cacheNames(page)).toHaveLength(1)
  expect(await cacheNames(page)).not.toContain(first)
  await page.context().close()
})
