// A lesson in a real browser: opened by its link, its answers hidden until asked for, printed on one page either way.
import { afterAll, beforeAll, expect, it } from 'vitest'
import { openBuilt, type Site } from '../page.ts'
import { violations } from './axe.ts'
import { pagesOf } from './pdf.ts'
import { sentence, settled, silence } from './sheet.ts'

let site: Site
beforeAll(async () => {
  site = await openBuilt()
})
afterAll(() => site?.close())

it('opens by link, hides its answers, prints a sheet with blanks and one with answers', async () => {
  const watched = await site.newPage({ width: 1024 })
  const { page } = watched
  await page.goto(`${site.url}#lesson=gearing`)
  const lesson = page.locator('lesson-sheet')
  await lesson.getByRole('heading', { name: 'Why slow running needs gearing' }).waitFor({ timeout: 60_000 })
  await expect.poll(() => sentence(page), { timeout: 30_000 }).not.toBe('')
  await settled(page)
  // 2 : 1 more reduction halves the amps that the cut adds (common practice, no source).
  const cells = async (name: RegExp) =>
    (await lesson.getByRole('row', { name }).getByRole('cell').allTextContents()).map(Number.parseFloat)
  const [once, twice, fourfold] = await cells(/^Amps that the cut adds/)
  expect([once / twice, once / fourfold].map((times) => Math.round(times * 10) / 10)).toEqual([2, 3.9])

  const asks = await lesson.locator('li .ask').count()
  expect(asks).toBeGreaterThan(0)
  expect(await lesson.locator('.answer').count()).toBe(0)
  await lesson.getByRole('button', { name: 'Show the answer' }).first().click()
  expect(await lesson.locator('.answer').count()).toBe(1)
  await lesson.getByRole('button', { name: 'Hide the answers' }).click()
  expect(await lesson.locator('.answer').count()).toBe(0)
  expect(await violations(page)).toEqual([])

  // What stands on the page at the moment of printing is kept, to be printed to a PDF.
  for (const [name, answers] of [
    ['Print with blanks', 'none'],
    ['Print with answers', 'block'],
  ]) {
    await page.evaluate(() => {
      window.print = () => {
        const { print } = document.documentElement.dataset
        const blanks = document.querySelector('lesson-sheet')!.hasAttribute('blanks')
        // After the page has put everything back.
        setTimeout(() => {
          document.documentElement.dataset.print = print
          document.querySelector('lesson-sheet')!.toggleAttribute('blanks', blanks)
          document.documentElement.dataset.printed = 'yes'
        }, 50)
      }
    })
    await lesson.getByRole('button', { name: 'Show the answer' }).first().click()
    await lesson.getByRole('button', { name }).click()
    await page.locator('html[data-printed]').waitFor()
    await page.emulateMedia({ media: 'print' })
    expect(await page.locator('main > section').first().isVisible(), name).toBe(false)
    expect(
      await lesson
        .locator('.answer')
        .first()
        .evaluate((element) => getComputedStyle(element).display),
      name,
    ).toBe(answers)
    for (const format of ['A4', 'Letter'])
      expect(pagesOf(await page.pdf({ format })), `${name}, ${format}`).toBe(1)
    await page.emulateMedia({ media: null })
    await page.evaluate(() => {
      delete document.documentElement.dataset.print
      delete document.documentElement.dataset.printed
      document.querySelector('lesson-sheet')!.removeAttribute('blanks')
    })
    await lesson.getByRole('button', { name: 'Hide the answers' }).click()
  }
  await lesson.getByRole('button', { name: 'Close the lesson' }).click()
  await lesson.waitFor({ state: 'detached' })
  silence(watched)
})
