// What is kept, in a real browser: edits and their undo survive a reload, jobs are listed, a link holds the whole job.
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { openBuilt, type Site } from '../page.ts'
import { violations } from './axe.ts'
import { opened, settled, silence } from './sheet.ts'

let site: Site
beforeAll(async () => {
  site = await openBuilt()
})
afterAll(() => site?.close())

const kept = (page: Page) =>
  page.evaluate(() => Object.keys(localStorage).filter((key) => key.startsWith('dutywright job ')).length)
const names = (page: Page) => page.locator('variants-zone .pick').allTextContents()
const click = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).first().click()
const notice = (page: Page) => page.locator('page-notes .notice strong').textContent()

it('a change and its undo survive a reload; the job is listed beside the examples', async () => {
  const watched = await opened(site)
  const { page } = watched
  expect(await page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true)
  await click(page, 'Copy as new variant')
  await expect.poll(() => kept(page)).toBe(1)
  await page.reload()
  await settled(page)
  await expect.poll(() => names(page)).toHaveLength(5)
  await page.keyboard.press('Control+z')
  await expect.poll(() => names(page)).toHaveLength(4)
  await page.keyboard.press('Control+Shift+z')
  await expect.poll(() => names(page)).toHaveLength(5)
  const list = page.getByLabel('Job on the sheet; choose another')
  await list.selectOption({ index: 2 })
  await settled(page)
  expect(await list.locator('optgroup[label="Kept in this browser"] option').count()).toBe(1)
  await list.selectOption({ index: 1 })
  await settled(page)
  await expect.poll(() => names(page)).toHaveLength(5)
  silence(watched)
})

it('a link holds the whole job, and a newer or broken one is a clear message', async () => {
  const watched = await opened(site)
  const { page } = watched
  await click(page, 'Copy as new variant')
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write'])
  await click(page, 'Copy link')
  expect(await notice(page)).toMatch(/^Link copied\./)
  const link = await page.evaluate(() => navigator.clipboard.readText())
  const other = await opened(site)
  await other.page.goto(link)
  await expect.poll(() => names(other.page)).toHaveLength(5)
  expect(new URL(other.page.url()).hash).toBe('')
  await other.page.goto(link.replace('#job=1', '#job=2'))
  await expect
    .poll(() => notice(other.page))
    .toBe('That link was not opened. The job on this page is untouched.')
  await other.page.getByText('The link was made by a newer version.').waitFor()
  await expect.poll(() => names(other.page)).toHaveLength(5)
  silence(watched)
  silence(other)
})

it('the wiring list is ticked off, and what is ticked is there again', async () => {
  const watched = await opened(site)
  const { page } = watched
  await page.locator('#K').scrollIntoViewIfNeeded()
  const box = page.getByRole('checkbox', { name: /^Earth the motor frame/ })
  await box.check()
  await page.getByText('1 of', { exact: false }).filter({ hasText: 'seen to' }).waitFor()
  await expect.poll(() => kept(page)).toBe(1)
  await page.reload()
  await settled(page)
  await page.locator('#K').scrollIntoViewIfNeeded()
  await expect.poll(() => box.isChecked()).toBe(true)
  expect(await violations(page)).toEqual([])
  silence(watched)
})
