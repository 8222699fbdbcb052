// For everyone: axe in both themes, wide and narrow, with a panel open; no sideways scroll; no small print.
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { openBuilt, type Site } from '../page.ts'
import { violations } from './axe.ts'
import { enter, opened, openStation, silence } from './sheet.ts'

let site: Site
beforeAll(async () => {
  site = await openBuilt()
})
afterAll(() => site?.close())

it.each([
  [1440, false],
  [1440, true],
  [390, false],
  [390, true],
])(
  'axe finds nothing at %i, dark %s: at rest, with each panel open, with a bad value',
  async (width, dark) => {
    const watched = await opened(site, { width, height: 900, dark })
    const { page } = watched
    expect(await violations(page)).toEqual([])
    for (const station of ['Supply and controller', 'Belt', 'Machine', 'Motor']) {
      await openStation(page, station)
      expect(await violations(page), station).toEqual([])
    }
    await enter(page, 'Plate speed', '40000')
    await page.locator('page-notes').getByText('One value needs a look').waitFor()
    expect(await violations(page)).toEqual([])
    silence(watched)
  },
)

it('axe would notice an image without words and a pale text', async () => {
  const { page } = await opened(site)
  await page.evaluate(() => {
    const bad = document.createElement('div')
    bad.innerHTML = '<img src="data:,"><p style="color:#ccc;background:#fff">pale</p>'
    document.querySelector('main')?.append(bad)
  })
  const ids = (await violations(page)).map((line) => line.split(':')[0])
  expect(ids).toContain('image-alt')
  expect(ids).toContain('color-contrast')
})

/** Every element that holds text of its own, through all shadow trees: smallest size there is, and whose. */
const smallest = (page: Page) =>
  page.evaluate(() => {
    const found: { size: number; text: string }[] = []
    const visit = (node: ParentNode) => {
      for (const el of node.querySelectorAll('*')) {
        if (el.shadowRoot) visit(el.shadowRoot)
        if (el.tagName === 'STYLE' || el.tagName === 'SCRIPT') continue
        const own = [...el.childNodes].some((n) => n.nodeType === Node.TEXT_NODE && n.textContent?.trim())
        if (own)
          found.push({ size: Number.parseFloat(getComputedStyle(el).fontSize), text: el.textContent ?? '' })
      }
    }
    visit(document.body)
    return { count: found.length, least: found.sort((a, b) => a.size - b.size)[0] }
  })

it.each([360, 390, 768, 1024, 1440])(
  'at %i px nothing scrolls sideways and no text is under 13 px, panels open too',
  async (width) => {
    const { page } = await opened(site, { width, height: 900 })
    const sideways = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
    const check = async (where: string) => {
      expect(await sideways(), where).toBeLessThanOrEqual(0)
      const { count, least } = await smallest(page)
      expect(count).toBeGreaterThan(50)
      expect(least.size, `${where}: ${least.text}`).toBeGreaterThanOrEqual(13)
    }
    await check('at rest')
    for (const station of ['Supply and controller', 'Belt', 'Machine', 'Motor']) {
      await openStation(page, station)
      await check(station)
    }
    await page.evaluate(() => document.documentElement.style.setProperty('--k', '1.25'))
    expect(await sideways(), 'larger text').toBeLessThanOrEqual(0)
  },
)

it('with the browser’s text twice as large, and down to 195 px, no zone sticks out', async () => {
  const { page } = await site.newPage({ width: 360, height: 800 })
  const devtools = await page.context().newCDPSession(page)
  await devtools.send('Page.setFontSizes', { fontSizes: { standard: 32 } })
  await page.goto(site.demo)
  await page.locator('variants-zone td').first().waitFor({ timeout: 30_000 })
  const k = () => page.evaluate(() => getComputedStyle(document.documentElement).getPropertyValue('--k'))
  expect(await k()).toBe('2')
  const zones = {
    D: 'li',
    E: 'limits-card',
    F: 'svg',
    G: 'svg',
    H: '.dot',
    J: 'input',
    K: 'svg',
    L: 'button',
  }
  for (const [id, part] of Object.entries(zones)) {
    await page.locator(`#${id}`).scrollIntoViewIfNeeded()
    await page.locator(`#${id} ${part}`).first().waitFor({ timeout: 60_000 })
  }
  const sideways = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
  for (const width of [360, 320]) {
    await page.setViewportSize({ width, height: 800 })
    await expect.poll(sideways, { message: `${width} px, text doubled` }).toBeLessThanOrEqual(0)
  }
  await page.getByRole('button', { name: 'Menu' }).click()
  expect(await sideways(), 'menu').toBeLessThanOrEqual(0)
  // A window of 390 px at 200 %.
  await page.getByRole('button', { name: 'Larger text' }).click()
  expect(await k()).toBe('1')
  for (const width of [240, 195]) {
    await page.setViewportSize({ width, height: 420 })
    await expect.poll(sideways, { message: `${width} px` }).toBeLessThanOrEqual(0)
  }
})

it('on a phone the answer stands at the foot, charts are drawn, and every button can be hit', async () => {
  const watched = await opened(site, { width: 390, height: 844 })
  const { page } = watched
  const strip = page.locator('answer-strip .strip')
  await strip.getByText(/^No · opens after/).waitFor()
  // The whole sentence stands in A: down here it is told in short, and leaves the window to the sheet.
  for (const width of [360, 390]) {
    await page.setViewportSize({ width, height: 844 })
    await expect.poll(async () => (await strip.boundingBox())!.height).toBeLessThanOrEqual(64)
  }
  const small = await page.evaluate(() => {
    const found: string[] = []
    const visit = (node: ParentNode) => {
      for (const el of node.querySelectorAll('*')) {
        if (el.shadowRoot) visit(el.shadowRoot)
        const box = el.getBoundingClientRect()
        if (el.tagName === 'BUTTON' && box.width > 0 && box.height < 43.5)
          found.push(`${el.textContent?.trim()} ${box.height}`)
      }
    }
    visit(document.body)
    return found
  })
  expect(small).toEqual([])
  await page.getByRole('button', { name: 'Menu' }).click()
  await page.getByRole('link', { name: 'Variants' }).click()
  await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('C')
  await page.locator('answer-strip').getByRole('button').click()
  await expect.poll(() => strip.textContent()).toMatch(/Yes · cutoff gets to/)
  silence(watched)
})

it('the keyboard goes through the page in the order it is read', async () => {
  const { page } = await opened(site)
  const order: string[] = []
  const zones: string[] = []
  for (let n = 0; n < 400; n++) {
    await page.keyboard.press('Tab')
    const [host, zone] = await page.evaluate(() => {
      let el: Element | null = document.activeElement
      const zone = el?.closest('main > section')?.id ?? ''
      let name = el?.tagName.toLowerCase() ?? ''
      while (el?.shadowRoot?.activeElement) {
        el = el.shadowRoot.activeElement
        if (el.tagName.includes('-')) name = el.tagName.toLowerCase()
      }
      return [name, zone]
    })
    if (host === 'body') break
    if (order.at(-1) !== host) order.push(host)
    if (zone !== '' && zones.at(-1) !== zone) zones.push(zone)
  }
  expect(order.slice(0, 7)).toEqual([
    'a',
    'top-bar',
    'zone-letters',
    'drive-line',
    'answer-zone',
    'station-strip',
    'over-time',
  ])
  // Each zone once, in the order of the sheet; the last thing on it is reached.
  const sheet = await page.evaluate(() =>
    [...document.querySelectorAll('main > section')].map(({ id }) => id),
  )
  expect(zones).toEqual(sheet.filter((id) => zones.includes(id)))
  expect(zones).toEqual(expect.arrayContaining(['A', 'B', 'C', 'J', sheet.at(-1)]))
})
