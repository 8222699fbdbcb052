// The cut helper in the machine's panel: by keyboard, from the work to torque and speed at once, and the answer follows.
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { openBuilt, type Site } from '../page.ts'
import { violations } from './axe.ts'
import { enter, opened, openStation, sentence, settled, silence } from './sheet.ts'

let site: Site
beforeAll(async () => {
  site = await openBuilt()
})
afterAll(() => site?.close())

const asks = (page: Page) =>
  page
    .locator('duty-steps .asks')
    .textContent()
    .then((text) => (text ?? '').trim().replaceAll('\u00a0', ' '))

it('turning a rod in the third step: torque, spread and row at once; the newer speed stands', async () => {
  const watched = await opened(site)
  const { page } = watched
  await openStation(page, 'Machine')
  const takes = page.getByLabel('The work takes', { exact: true }).nth(2)
  await takes.focus()
  await takes.press('Home')
  await takes.press('ArrowDown')
  await expect.poll(() => takes.inputValue()).toBe('cut')
  expect(await page.getByLabel('Kind of work', { exact: true }).inputValue()).toBe('turning')
  // By hand: 1.88 kJ/cm³ × 3^0.2 × 1.3 × 0.1 mm² × 24.5 mm is 7.46 N·m, 5.5 lbf·ft.
  await expect
    .poll(() => asks(page))
    .toMatch(/^The spindle asks 5\.5 lbf·ft at 350 rpm: .* 8 times in 10 it is 4\.1 to 7\.7 lbf·ft\./)
  expect(await asks(page)).toContain('Machinery’s Handbook, 31st ed., Table 1b')
  await enter(page, 'Surface speed', '30 m/min')
  await expect.poll(() => asks(page)).toMatch(/ at 191 rpm: /)
  expect(await page.getByLabel('Speed asked at the spindle', { exact: true }).nth(2).inputValue()).toBe('')
  await enter(page, 'Depth of cut', '4 in')
  await page.locator('duty-steps .wrong').waitFor()
  await enter(page, 'Depth of cut', '2 mm')
  await expect.poll(() => asks(page)).toMatch(/^The spindle asks 10\.8 lbf·ft at 191 rpm/)
  await settled(page)
  expect(await sentence(page)).toMatch(/^No\./)
  expect(await violations(page)).toEqual([])
  silence(watched)
})

it('on a phone in the dark the longest kinds fit, and axe finds nothing', async () => {
  const watched = await opened(site, { width: 390, height: 844, dark: true })
  const { page } = watched
  await openStation(page, 'Machine')
  await page.getByLabel('The work takes', { exact: true }).nth(2).selectOption('cut')
  const kind = page.getByLabel('Kind of work', { exact: true })
  // Those with the most inputs; that every kind reads is seen without a browser.
  for (const each of ['milling', 'sawingMetal', 'hoisting']) {
    await kind.selectOption(each)
    await expect.poll(() => asks(page)).toMatch(/^The spindle asks /)
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    )
  }
  expect(await violations(page)).toEqual([])
  silence(watched)
})
