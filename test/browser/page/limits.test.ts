// Work and rest in a real browser: worked out when near, for another step and for a ready-made duty.
import { afterAll, beforeAll, expect, it } from 'vitest'
import { openBuilt, type Site } from '../page.ts'
import { violations } from './axe.ts'
import { opened, openStation, settled, silence } from './sheet.ts'

let site: Site
beforeAll(async () => {
  site = await openBuilt()
})
afterAll(() => site?.close())

it('limits and card when near; another step; a ready-made duty', async () => {
  const watched = await opened(site)
  const { page } = watched
  const card = page.locator('limits-zone limits-card figure')
  const text = async () => (await card.textContent())!.replace(/[\u00a0\s]+/g, ' ')
  await page.locator('#E').scrollIntoViewIfNeeded()
  await card.waitFor({ timeout: 120_000 })
  expect(await text()).toMatch(/milling, .*This cut, from cold \d+ min.*Cool down .* standing.*Stop at/)
  expect(await violations(page)).toEqual([])
  await page.locator('limits-zone').getByLabel('The cut').selectOption('loading')
  await expect.poll(text, { timeout: 120_000 }).toMatch(/loading, .*This cut, from cold all day/)
  await openStation(page, 'Machine')
  await page.getByLabel('Ready-made duty').selectOption('S3 25 %')
  await page.getByRole('button', { name: 'Put the hardest cut into it' }).click()
  await settled(page)
  await expect.poll(text, { timeout: 120_000 }).toMatch(/milling, .*7 min 30 s off/)
  silence(watched)
})
