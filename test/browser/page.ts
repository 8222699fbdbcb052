// Builds the site, serves it on this machine alone and opens pages on it that note what goes wrong.
import { mkdir, mkdtemp, rm } from 'node:fs/promises'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { build, preview } from 'vite'
import { root } from '../house/tree.ts'
import { findBrowser, launch } from './find.ts'

/** How a page is opened: size in CSS pixels, dark theme or not. */
export interface View {
  width?: number
  height?: number
  dark?: boolean
}

/** A page, and what it did that it should not have. */
export interface Watched {
  page: Page
  /** Messages written with console.error. */
  consoleErrors: string[]
  /** Errors nobody caught. */
  pageErrors: string[]
  /** Addresses asked for on any host but ours. */
  foreign: string[]
}

/** The built site, served, with a browser on it. */
export interface Site {
  browser: Browser
  /** Address of the site, ending in a slash. */
  url: string
  /** The same with the apple mill on its sheet. */
  demo: string
  /** Opens an empty page in a profile of its own; `goto(url)` is the caller's. */
  newPage(view?: View): Promise<Watched>
  close(): Promise<void>
}

const configs = { site: 'ui/vite.config.ts', gallery: 'ui/gallery/vite.config.ts' } as const
/** What is built: the page, or the gallery of its pictures. */
export type Built = keyof typeof configs
const cache = join(root, 'node_modules/.cache')

/** Builds the site, or the gallery, into a folder of its own under node_modules/.cache and returns that folder. */
export async function buildSite(what: Built = 'site'): Promise<string> {
  const configFile = join(root, configs[what])
  await mkdir(cache, { recursive: true })
  const outDir = await mkdtemp(join(cache, 'site-test-'))
  await build({ configFile, logLevel: 'warn', build: { outDir } }).catch(async (error) => {
    await rm(outDir, { recursive: true })
    throw error
  })
  return outDir
}

/**
 * Serves the site in the folder TEST_SITE names, or else one built for the occasion, and launches the browser.
 * Throws where no browser can be had. `close` ends both and removes what was built.
 */
export async function openBuilt(what: Built = 'site'): Promise<Site> {
  const found = await findBrowser()
  if (typeof found === 'string') throw new Error(found)
  const given = what === 'site' ? process.env.TEST_SITE : undefined
  const outDir = given ?? (await buildSite(what))
  const server = await preview({
    configFile: join(root, configs[what]),
    logLevel: 'warn',
    build: { outDir },
    preview: { host: '127.0.0.1', port: 0, open: false },
  })
  const url = server.resolvedUrls!.local[0]!
  const browser = await launch(found)
  return {
    browser,
    url,
    demo: `${url}#demo=appleMill`,
    newPage: (view) => openPage(browser, url, view),
    async close() {
      await browser.close()
      await server.close()
      if (!given) await rm(outDir, { recursive: true })
    },
  }
}

async function openPage(browser: Browser, url: string, view: View = {}): Promise<Watched> {
  const { width = 1440, height = 900, dark = false } = view
  const context = await browser.newContext({
    viewport: { width, height },
    colorScheme: dark ? 'dark' : 'light',
  })
  // A page left open goes on working, in the way of the tests after it. One that no test opened closes with its site.
  if (process.env.VITEST) {
    const { onTestFinished } = await import('vitest')
    try {
      onTestFinished(() => context.close())
    } catch {
      // Opened before the tests of a file, or by a command that a test runs.
    }
  }
  const page = await context.newPage()
  const watched: Watched = { page, consoleErrors: [], pageErrors: [], foreign: [] }
  page.on('console', (message) => {
    if (message.type() === 'error') watched.consoleErrors.push(message.text())
  })
  page.on('pageerror', (error) => watched.pageErrors.push(error.message))
  context.on('request', (request) => {
    const { protocol, host } = new URL(request.url())
    if (/^(https?|wss?):$/.test(protocol) && host !== new URL(url).host) watched.foreign.push(request.url())
  })
  return watched
}
