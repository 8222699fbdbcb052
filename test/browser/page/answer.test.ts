// The answer in a real browser: there without a click, new when an input is, and never lost to a bad one or a long one.
import { afterAll, beforeAll, expect, it } from 'vitest'
import { openBuilt, type Site } from '../page.ts'
import { enter, figures, openStation, opened, sentence, settled, silence } from './sheet.ts'

let site: Site
beforeAll(async () => {
  site = await openBuilt()
})
afterAll(() => site?.close())

it('answers the example without a click, and says so to a screen reader once', async () => {
  const watched = await opened(site)
  const { page } = watched
  expect(await sentence(page)).toMatch(/^No\. The cutoff opens \d+ min( \d+ s)? into the job, during milling/)
  expect(await page.locator('answer-zone dl.numbers > div').count()).toBe(5)
  const spoken = await page.locator('dw-page > [role=status]').textContent()
  expect(spoken?.replaceAll('\u00a0', ' ')).toBe(await sentence(page))
  expect(await page.title()).toBe('Orchard workshop apple mill – Dutywright')
  silence(watched)
})

it('a changed input changes the answer', async () => {
  const watched = await opened(site)
  const { page } = watched
  const before = await figures(page)
  await openStation(page, 'Belt')
  await enter(page, 'Machine pulley', '14')
  await expect.poll(() => figures(page)).not.toBe(before)
  await settled(page)
  expect(await page.locator('station-strip').getByText('14 in').count()).toBeGreaterThan(0)
  await openStation(page, 'Motor')
  await page.getByRole('radio', { name: /^Fan on the shaft/ }).check()
  await expect.poll(() => sentence(page)).toMatch(/^Yes\./)
  silence(watched)
})

it('a bad value is told beside its field and over the sheet, the answer stays, and the offer mends it', async () => {
  const { page } = await opened(site)
  const before = await figures(page)
  await openStation(page, 'Motor')
  await enter(page, 'Plate speed', '40000')
  await page.getByText('One value needs a look: plate speed.').waitFor()
  await page.getByText('The result below still uses 4000\u00a0rpm.').waitFor()
  expect(await page.getByLabel('Plate speed', { exact: true }).getAttribute('aria-invalid')).toBe('true')
  expect(await figures(page)).toBe(before)
  await page.getByText('Previous result', { exact: true }).waitFor()

  await page.getByRole('button', { name: 'Close: Motor' }).click()
  await page.getByRole('button', { name: 'Go to the field' }).click()
  await expect
    .poll(() => page.getByLabel('Plate speed', { exact: true }).evaluate((box) => box.matches(':focus')))
    .toBe(true)
  await page.getByRole('button', { name: 'Use 4000 rpm' }).click()
  await page.locator('page-notes').getByText('One value needs a look').waitFor({ state: 'detached' })
  await expect.poll(() => page.getByLabel('Plate speed', { exact: true }).inputValue()).toBe('4000')
  expect(await page.getByText('Previous result', { exact: true }).count()).toBe(0)
})

it('one comma before three digits is asked about, not guessed', async () => {
  const { page } = await opened(site)
  await openStation(page, 'Motor')
  await enter(page, 'Plate speed', '4,000')
  await page.getByRole('button', { name: 'Use 4.000 rpm' }).waitFor()
  await page.getByRole('button', { name: 'Use 4000 rpm' }).click()
  await expect.poll(() => page.getByLabel('Plate speed', { exact: true }).inputValue()).toBe('4000')
})

it('a long job tells its progress, leaves the page free, and gives up when told, the old answer kept', async () => {
  const watched = await opened(site)
  const { page } = watched
  const before = await figures(page)
  await openStation(page, 'Machine')
  await enter(page, 'Repeat for', '30 d')
  await page.getByText(/day \d+ of 30/).waitFor()
  await page.getByText('Previous result', { exact: true }).waitFor()
  // The page goes on meanwhile: the scrubber moves, the theme turns.
  await page.getByRole('button', { name: 'Dark' }).click()
  expect(await page.evaluate(() => document.documentElement.dataset.theme)).toBe('dark')
  await page.locator('working-note').getByRole('button', { name: 'Cancel' }).click()
  await page.getByText('Stopped. Previous result kept.').waitFor()
  expect(await figures(page)).toBe(before)
  await enter(page, 'Repeat for', '2 h')
  await page.getByText('Stopped.').waitFor({ state: 'detached' })
  await settled(page)
  await expect.poll(() => page.locator('answer-zone .support').textContent()).toContain('Over 2')
  silence(watched)
})

it('a second method is asked, tells how far it is, and agrees', async () => {
  const watched = await opened(site)
  const { page } = watched
  await openStation(page, 'Machine')
  await enter(page, 'Repeat for', '3 min')
  await settled(page)
  await page.getByRole('button', { name: 'Check with a second method' }).click()
  await page.getByText('An unrelated method').waitFor({ timeout: 120_000 })
  silence(watched)
})

it('the second method can be given up', async () => {
  const { page } = await opened(site)
  await page.getByRole('button', { name: 'Check with a second method' }).click()
  await page.getByRole('progressbar', { name: 'Second method' }).waitFor()
  await page.locator('answer-zone').getByRole('button', { name: 'Cancel' }).click()
  await page.getByRole('button', { name: 'Check with a second method' }).waitFor()
})
