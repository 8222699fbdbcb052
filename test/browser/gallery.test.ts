// The gallery: every picture in every state can be read, at every width, size of text and unit, by everyone.
import { readdirSync, readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { root } from '../house/tree.ts'
import { buildSite, openBuilt, type Site, type Watched } from './page.ts'
import { violations } from './page/axe.ts'
import { silence } from './page/sheet.ts'
import { look, still } from './gallery/legible.ts'

/** The gallery as it opens, drawn. */
async function open(on: Page): Promise<void> {
  await on.goto(site.url)
  await on.locator('.case').last().waitFor()
  await still(on)
}

let site: Site
let watched: Watched
let page: Page
beforeAll(async () => {
  site = await openBuilt('gallery')
  watched = await site.newPage()
  page = watched.page
  await open(page)
})
afterAll(() => site?.close())

const press = (name: string) => page.getByRole('button', { name, exact: true }).click()

it('every picture has an address and a heading of its own, and something in it', async () => {
  const cases = await page.locator('.case').evaluateAll((all) =>
    all.map((one) => ({
      id: one.id,
      title: one.querySelector('h3')?.textContent ?? '',
      // Every zone draws into its shadow.
      empty: ![...one.children].some(({ shadowRoot }) => (shadowRoot?.childElementCount ?? 0) > 0),
    })),
  )
  expect(cases.length).toBeGreaterThan(100)
  expect(new Set(cases.map(({ id }) => id)).size).toBe(cases.length)
  for (const { id, title, empty } of cases) {
    expect(id).toMatch(/^[a-z][a-z0-9-]+$/)
    expect(title.trim().length).toBeGreaterThan(id.length + 1)
    expect(empty, id).toBe(false)
  }
  silence(watched)
})

it('no text stands on another, leaves its picture or is under 13 px: both units, larger text, five widths', async () => {
  await open(page)
  for (const setting of ['as opened', 'Larger text', 'Metric', '°F']) {
    if (setting !== 'as opened') await press(setting)
    for (const width of [1440, 1024, 768, 390, 360]) {
      await page.setViewportSize({ width, height: 900 })
      await still(page)
      const { texts, ...amiss } = await look(page)
      expect(texts).toBeGreaterThan(1000)
      expect(amiss, `${width} px, ${setting}`).toEqual({ touching: [], outside: [], small: [] })
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
      ).toBeLessThanOrEqual(0)
    }
  }
  await page.setViewportSize({ width: 1440, height: 900 })
  silence(watched)
})

it('the look would notice a text on another, one that leaves, and two that are small', async () => {
  const spoilt = await site.newPage()
  await open(spoilt.page)
  await spoilt.page.evaluate(() => {
    const svg = document.querySelector('#time-opens over-time')?.shadowRoot?.querySelectorAll('.chart svg')[1]
    const [first, second] = svg?.querySelectorAll('text') ?? []
    for (const name of ['x', 'y', 'text-anchor', 'dy']) {
      const value = first.getAttribute(name)
      if (value === null) second.removeAttribute(name)
      else second.setAttribute(name, value)
    }
    const drive = document.querySelector('#drive-mill drive-line')?.shadowRoot
    drive?.querySelector('svg text')?.setAttribute('x', '-40')
    document
      .querySelector('#card limits-card')
      ?.shadowRoot?.querySelector('h3')
      ?.setAttribute('style', 'font-size: 12px')
    const circuit = document.querySelector('#circuit-pwm circuit-figure')?.shadowRoot?.querySelector('svg')
    circuit?.setAttribute('style', 'max-width: 300px')
  })
  const { touching, outside, small } = await look(spoilt.page)
  expect(touching.map((line) => line.split(':')[0])).toEqual(['time-opens'])
  expect(outside.map((line) => line.split(':')[0])).toEqual(['drive-mill'])
  expect(new Set(small.map((line) => line.split(':')[0]))).toEqual(new Set(['card', 'circuit-pwm']))
  await spoilt.page.context().close()
})

// So many of each kind of picture, at most; in the dark only colours are others.
it.each([
  ['light', 8, undefined],
  ['dark', 2, ['color-contrast']],
] as const)('axe finds nothing in the pictures, %s', async (theme, most, rules) => {
  await open(page)
  if (theme === 'dark') await press('Dark')
  expect(await page.evaluate(() => document.documentElement.dataset.theme)).toBe(theme)
  const ids = await page.locator('.case').evaluateAll((all) => all.map(({ id }) => id))
  const kindOf = (id: string) => id.split('-')[0]
  const kinds = [...new Set(ids.map(kindOf))]
  expect(kinds.length).toBeGreaterThan(10)
  // One kind at a time, the others out of the way: all at once take axe minutes.
  for (const kind of kinds) {
    const shown = ids.filter((id) => kindOf(id) === kind).slice(0, most)
    await page.evaluate((wanted) => {
      for (const one of document.querySelectorAll<HTMLElement>('.case')) one.hidden = !wanted.includes(one.id)
    }, shown)
    expect(await violations(page, rules), kind).toEqual([])
  }
  await page.evaluate(() =>
    document.querySelector('.case:not([hidden]) h3')?.setAttribute('style', 'color: #777; background: #888'),
  )
  expect(await violations(page, rules)).not.toEqual([])
})

it('nothing moves for a reader who asked for less motion', async () => {
  const longest = () =>
    page.evaluate(() => {
      const lengths: number[] = []
      const visit = (node: ParentNode) => {
        for (const el of node.querySelectorAll('*')) {
          if (el.shadowRoot) visit(el.shadowRoot)
          const { transitionDuration, animationName, animationDuration } = getComputedStyle(el)
          lengths.push(...transitionDuration.split(',').map(Number.parseFloat))
          if (animationName !== 'none') lengths.push(Number.parseFloat(animationDuration))
        }
      }
      visit(document)
      return lengths.reduce((a, b) => Math.max(a, b), 0)
    })
  expect(await longest()).toBe(0.12)
  await page.emulateMedia({ reducedMotion: 'reduce' })
  expect(await longest()).toBe(0)
  await page.emulateMedia({ reducedMotion: null })
})

it('is no part of the site, and `npm run gallery` builds it', async () => {
  const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
    scripts: Record<string, string>
  }
  expect(scripts.gallery).toBe('tsx ui/serve.ts --gallery')
  const given = process.env.TEST_SITE
  const built = given ?? (await buildSite())
  const files = readdirSync(built, { recursive: true, encoding: 'utf8' })
  expect(files.filter((name) => /gallery/.test(name))).toEqual([])
  const scriptsBuilt = files.filter((name) => name.endsWith('.js'))
  expect(scriptsBuilt.length).toBeGreaterThan(3)
  for (const name of scriptsBuilt)
    expect(readFileSync(join(built, name), 'utf8'), name).not.toContain('gallery-page')
  if (!given) rmSync(built, { recursive: true })
})
