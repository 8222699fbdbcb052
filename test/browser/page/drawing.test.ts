// The drive line in zone A: its dimensions are fields, its heat follows the scrubber, its picture fits every width.
import { afterAll, beforeAll, expect, it } from 'vitest'
import type { Page } from 'playwright-core'
import { openBuilt, type Site } from '../page.ts'
import { opened, settled, silence } from './sheet.ts'

let site: Site
beforeAll(async () => {
  site = await openBuilt()
})
afterAll(() => site?.close())

const tags = async (page: Page) =>
  (await page.locator('drive-line .tag').allTextContents()).map((text) =>
    text.replaceAll('\u00a0', ' ').trim(),
  )
const panel = (page: Page) => page.locator('drive-line .panel')
/** Label of what has the focus, however deep. */
const focused = (page: Page) =>
  page.evaluate(() => {
    let el = document.activeElement
    while (el?.shadowRoot?.activeElement) el = el.shadowRoot.activeElement
    return (el?.getAttribute('aria-label') ?? el?.id ?? '').replaceAll('\u00a0', ' ')
  })

it('a dimension opens in place, commits on Enter, is refused where it is wrong, and Escape leaves it', async () => {
  const watched = await opened(site)
  const { page } = watched
  expect((await tags(page)).sort()).toEqual(['10 in', '2.5 in', '23 in'])
  const before = await page.locator('drive-line .belt').getAttribute('d')
  await page.getByRole('button', { name: 'Machine pulley: 10 in. Change' }).focus()
  await page.keyboard.press('Enter')
  await expect.poll(() => focused(page)).toBe('box')
  await page.keyboard.type('12 1/2')
  await page.keyboard.press('Enter')
  await expect.poll(() => panel(page).count()).toBe(0)
  await expect.poll(() => focused(page)).toBe('Machine pulley: 12 1/2 in. Change')
  expect(await page.locator('drive-line .belt').getAttribute('d')).not.toBe(before)
  await settled(page)
  await expect.poll(() => page.locator('answer-zone .variant').textContent()).toMatch(/ratio 5\s:\s1/)

  await page.keyboard.press('Enter')
  await expect.poll(() => focused(page)).toBe('box')
  await page.keyboard.type('99')
  await page.keyboard.press('Escape')
  await expect.poll(() => panel(page).count()).toBe(0)
  await expect.poll(() => focused(page)).toBe('Machine pulley: 12 1/2 in. Change')
  expect(await tags(page)).toContain('12 1/2 in')

  await page.keyboard.press('Enter')
  await expect.poll(() => focused(page)).toBe('box')
  await page.keyboard.type('5,000')
  await page.keyboard.press('Enter')
  await panel(page).getByRole('button', { name: 'Use 5.000 in' }).click()
  await expect.poll(() => tags(page)).toContain('5.000 in')
  silence(watched)
})

it('tags follow each other from left to right, and every text is at least 13 px in its own place', async () => {
  for (const width of [1440, 900, 390]) {
    const { page } = await opened(site, { width, height: 900 })
    const found = await page.locator('drive-line').evaluate((host) => {
      const root = host.shadowRoot!
      const frame = root.querySelector('.drawing')!.getBoundingClientRect()
      const texts = [...root.querySelectorAll('svg text')].filter((text) => text.textContent !== '')
      const boxes = texts
        .filter((text) => !text.classList.contains('tag-text'))
        .map((text) => ({ text: text.textContent, box: text.getBoundingClientRect() }))
      const over = boxes.flatMap((a, n) =>
        boxes
          .slice(n + 1)
          .filter(
            ({ box: b }) =>
              a.box.left < b.right - 1 &&
              b.left < a.box.right - 1 &&
              a.box.top < b.bottom - 5 &&
              b.top < a.box.bottom - 5,
          )
          .map((b) => `${a.text} on ${b.text}`),
      )
      return {
        over,
        out: boxes
          .filter(({ box }) => box.left < frame.left - 1 || box.right > frame.right + 1)
          .map(({ text }) => text),
        small: texts.filter((text) => Number.parseFloat(getComputedStyle(text).fontSize) < 13).length,
        lefts: [...root.querySelectorAll('.tag')].map((tag) => tag.getBoundingClientRect().left),
        touch: [...root.querySelectorAll('.tag')].map((tag) => tag.getBoundingClientRect().height),
      }
    })
    expect(found).toMatchObject({ over: [], out: [], small: 0 })
    expect(found.lefts).toEqual([...found.lefts].sort((a, b) => a - b))
    if (width < 760) expect(Math.min(...found.touch)).toBeGreaterThanOrEqual(44)
    await page.context().close()
  }
})

it('moving the moment tints the same drawing anew', async () => {
  const watched = await opened(site)
  const { page } = watched
  const drawn = page.locator('drive-line .drawing')
  const colours = () =>
    drawn.evaluate((el) =>
      ['winding', 'frame', 'switch'].map((node) => getComputedStyle(el).getPropertyValue(`--${node}`)),
    )
  await drawn.evaluate((el) => {
    ;(el.querySelector('.belt') as SVGElement).dataset.kept = 'yes'
  })
  const hot = await colours()
  await page.getByRole('slider', { name: 'Moment of the job' }).focus()
  await page.keyboard.press('Home')
  await expect.poll(colours).not.toEqual(hot)
  expect(await page.locator('drive-line .belt').getAttribute('data-kept')).toBe('yes')
  expect(await page.locator('drive-line svg').first().getAttribute('aria-label')).toMatch(
    /2\.5\sin on 10\sin/,
  )
  silence(watched)
})
