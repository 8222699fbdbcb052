// The built site opens without an error or a foreign request, and the watching itself would notice each.
import { afterAll, beforeAll, expect, it } from 'vitest'
import { openBuilt, type Site } from './page.ts'

let site: Site
beforeAll(async () => {
  site = await openBuilt()
})
afterAll(() => site?.close())

it('opens in silence, with its own fonts', async () => {
  const { page, consoleErrors, pageErrors, foreign } = await site.newPage()
  await page.goto(site.url)
  const loaded = await page.evaluate(async () => {
    const faces = await Promise.all(
      ['National Park', 'Archivo'].map((name) => document.fonts.load(`16px "${name}"`)),
    )
    return faces.map((found) => found.length)
  })
  expect(loaded).toEqual([1, 1])
  expect({ consoleErrors, pageErrors, foreign }).toEqual({ consoleErrors: [], pageErrors: [], foreign: [] })
})

it('would notice an error, an uncaught error and a request to another host', async () => {
  const { page, consoleErrors, pageErrors, foreign } = await site.newPage({
    width: 390,
    height: 844,
    dark: true,
  })
  await page.goto(site.url)
  expect(await page.evaluate(() => [innerWidth, matchMedia('(prefers-color-scheme: dark)').matches])).toEqual(
    [390, true],
  )
  await page.evaluate(async () => {
    console.error('said')
    setTimeout(() => {
      throw new Error('uncaught')
    })
    await fetch('http://elsewhere.invalid/').catch(() => undefined)
  })
  await expect.poll(() => pageErrors).toEqual(['uncaught'])
  expect(consoleErrors).toContain('said')
  // The page's own policy let that request not out; going there is noticed.
  expect(foreign).toEqual([])
  expect(consoleErrors.join(' ')).toContain('Content Security Policy')
  await page.goto('http://elsewhere.invalid/').catch(() => undefined)
  expect(foreign).toEqual(['http://elsewhere.invalid/'])
})

it('answers a missing file with 404', async () => {
  const { page } = await site.newPage()
  expect((await page.request.get(`${site.url}nothing-here`)).status()).toBe(404)
})

it("was built with Lit's production bundle", async () => {
  const { page } = await site.newPage()
  const scripts: string[] = []
  page.on('response', async (response) => {
    if (response.url().endsWith('.js')) scripts.push(await response.text())
  })
  await page.goto(site.url, { waitUntil: 'networkidle' })
  expect(scripts.length).toBeGreaterThan(0)
  expect(scripts.join('')).not.toContain('Lit is in dev mode')
})
