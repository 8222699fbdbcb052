// Two inputs at once in a real browser: asked for, filled, walked by keys, a cell made a variant, and given up.
import { afterAll, beforeAll, expect, it } from 'vitest'
import { openBuilt, type Site } from '../page.ts'
import { violations } from './axe.ts'
import { opened, settled, silence } from './sheet.ts'

let site: Site
beforeAll(async () => {
  site = await openBuilt()
})
afterAll(() => site?.close())

it('a grid fills, is walked by keys, and a cell becomes a variant; another is given up half way', async () => {
  const watched = await opened(site, { width: 390, height: 844 })
  const { page } = watched
  const zone = page.locator('grid-zone')
  await zone.scrollIntoViewIfNeeded()
  await zone.getByRole('button', { name: 'Work it out' }).click()
  const cells = zone.locator('td button')
  await expect.poll(() => cells.count(), { timeout: 120_000 }).toBe(30)
  await expect.poll(() => zone.locator('progress').count()).toBe(0)
  expect(await zone.locator('.said').textContent()).toMatch(/^Cutoff first opens at: least .*; most /)
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390)
  expect(await violations(page)).toEqual([])

  await zone.getByLabel('Figure').selectOption({ label: 'Hottest winding' })
  await expect.poll(() => cells.first().textContent()).toMatch(/^\d+†?,/)
  await cells.first().focus()
  await page.keyboard.press('ArrowDown')
  await page.keyboard.press('ArrowRight')
  await page.keyboard.press('ArrowUp')
  const on = zone.locator('td button:focus')
  expect(await on.textContent()).toBe(await cells.nth(1).textContent())
  await page.keyboard.press('Enter')
  await settled(page)
  expect((await page.locator('variants-zone .pick').allTextContents()).at(-1)).toMatch(
    /^Machine pulley .*\sin, torque of the cut/,
  )

  // It is worked out again about the variant, until it is told to stop.
  await zone.getByRole('button', { name: 'Cancel' }).click({ timeout: 60_000 })
  await zone.getByText('Stopped. This is of other inputs').or(zone.getByText('Stopped.')).first().waitFor()
  silence(watched)
})
