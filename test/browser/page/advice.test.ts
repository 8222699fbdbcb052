// Zone D in a real browser: findings come when it is near, a cure becomes a variant, a symptom is told apart.
import { afterAll, beforeAll, expect, it } from 'vitest'
import { openBuilt, type Site } from '../page.ts'
import { violations } from './axe.ts'
import { opened, sentence, settled, silence } from './sheet.ts'

let site: Site
beforeAll(async () => {
  site = await openBuilt()
})
afterAll(() => site?.close())

it('what to do about it: findings in order, the first cure tried, a symptom that is a fault', async () => {
  const watched = await opened(site)
  const { page } = watched
  await page.locator('#D').scrollIntoViewIfNeeded()
  const rows = page.locator('advice-zone .findings > li')
  await rows.first().waitFor({ timeout: 120_000 })
  // Hands first, then what nobody has measured, then the cause.
  for (const [index, headline] of [
    'Stop the mill from restarting by itself.',
    'Measure the earth before the first run.',
    'Put air through the motor.',
  ].entries())
    expect(await rows.nth(index).locator('h3').textContent()).toBe(headline)
  await page.getByLabel('It does this:').selectOption({ label: 'too hot to touch in a minute' })
  await expect
    .poll(() => page.locator('advice-zone .verdict').textContent())
    .toMatch(/^A fault, not the load: /)
  expect(await violations(page)).toEqual([])
  await page.locator('advice-zone').getByRole('button', { name: 'Try with the shaft fan' }).click()
  await settled(page)
  expect(await sentence(page)).toMatch(/^Yes\./)
  // The advice follows the variant: nothing is left to fix.
  await expect
    .poll(() => page.locator('advice-zone .kind').allTextContents(), { timeout: 120_000 })
    .not.toContain('Fix')
  silence(watched)
})
