// Zone E's map in a real browser: worked out when near, read off by pointer and keys, a point made a variant, tabulated.
import { afterAll, beforeAll, expect, it } from 'vitest'
import { openBuilt, type Site } from '../page.ts'
import { violations } from './axe.ts'
import { opened, settled, silence } from './sheet.ts'

let site: Site
beforeAll(async () => {
  site = await openBuilt()
})
afterAll(() => site?.close())

it('minutes until the cutoff opens: both panels, a point by pointer and keys, a variant, a table', async () => {
  const watched = await opened(site)
  const { page } = watched
  await page.locator('#E').scrollIntoViewIfNeeded()
  const charts = page.locator('map-zone .chart')
  await charts.first().waitFor({ timeout: 120_000 })
  expect(await charts.count()).toBe(2)
  const plain = (text: string | null) => (text ?? '').replaceAll('\u00a0', ' ')
  const under = page.locator('map-zone .under').first()
  expect(plain(await under.textContent())).toMatch(/^Milling without a pause: the cutoff opens in 25 min/)
  await charts.first().click({ position: { x: 300, y: 130 } })
  await expect.poll(async () => plain(await under.textContent())).toMatch(/^\d+ rpm, \d+\.\d lbf·ft: /)
  const handle = page.locator('map-zone').getByRole('slider', { name: /No fan$/ })
  const before = Number(await handle.getAttribute('aria-valuenow'))
  await page.keyboard.press('ArrowRight')
  await expect.poll(async () => Number(await handle.getAttribute('aria-valuenow'))).toBeGreaterThan(before)
  await page.keyboard.press('PageDown')
  await page
    .locator('map-zone')
    .getByRole('button', { name: /^Show as table: No fan/ })
    .click()
  await page.getByRole('region', { name: /No fan, table$/ }).waitFor()
  expect(await violations(page)).toEqual([])
  await handle.focus()
  await page.keyboard.press('Enter')
  await settled(page)
  expect(plain((await page.locator('variants-zone .pick').allTextContents()).at(-1) ?? '')).toMatch(
    /^\d+ rpm, \d+\.\d lbf·ft$/,
  )
  silence(watched)
})
