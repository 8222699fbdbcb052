// Zone H in a real browser: the headline follows the samples; dots, bars, a table, and the way to what is to be measured.
import { afterAll, beforeAll, expect, it } from 'vitest'
import { openBuilt, type Site } from '../page.ts'
import { violations } from './axe.ts'
import { enter, opened, openStation, sentence, silence } from './sheet.ts'

let site: Site
beforeAll(async () => {
  site = await openBuilt()
})
afterAll(() => site?.close())

it('the sentence says so until the samples are in, and rounds to the doubt then', async () => {
  const watched = await opened(site)
  const { page } = watched
  expect(await sentence(page)).toMatch(/with the values as given\.$/)
  await page.locator('#H').scrollIntoViewIfNeeded()
  await page.locator('sure-zone .dot').first().waitFor({ timeout: 60_000 })
  expect(await page.locator('sure-zone .dot').count()).toBe(40)
  expect(await sentence(page)).toMatch(
    /^No\. The cutoff opens \d+ min into the job, likely between .+ and .+\.$/,
  )
  // The strip at a phone's foot says the same, in short.
  const [, at, likely] = /opens (.+) into the job, (.+)\.$/.exec(await sentence(page))!
  const strip = await page.locator('answer-strip p').textContent()
  expect(strip?.replaceAll('\u00a0', ' ')).toBe(
    `No · opens after ${at}${likely.replace('between ', '').replace(' and ', ' to ')}`,
  )
  await page.getByRole('button', { name: 'Show as table: When it fails' }).click()
  const rows = page.getByRole('region', { name: 'How sure, table' }).locator('tbody tr')
  await expect.poll(() => rows.count()).toBeGreaterThan(5)
  expect(await violations(page)).toEqual([])
  await page.locator('sure-zone').getByRole('button', { name: 'Go to the field' }).click()
  await page.getByLabel('Torque of the cut', { exact: true }).first().waitFor()
  // Another job: the old doubt is not told of it.
  await openStation(page, 'Belt')
  await enter(page, 'Machine pulley', '11')
  await expect.poll(() => sentence(page)).toMatch(/with the values as given\.$/)
  silence(watched)
})
