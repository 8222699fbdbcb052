// Variants in a real browser: chosen, tried, copied, renamed, removed, brought back; and edited on their own.
import { afterAll, beforeAll, expect, it } from 'vitest'
import { openBuilt, type Site } from '../page.ts'
import { enter, figures, openStation, opened, sentence, settled, silence, takeBack } from './sheet.ts'

let site: Site
beforeAll(async () => {
  site = await openBuilt()
})
afterAll(() => site?.close())

const names = (page: Awaited<ReturnType<typeof opened>>['page']) =>
  page.locator('variants-zone .pick').allTextContents()

it('carries the example’s own, and a click shows another', async () => {
  const watched = await opened(site)
  const { page } = watched
  expect(await names(page)).toEqual([
    'As found',
    'With the shaft fan',
    'Fan, ratio 2 : 1',
    'Fan, ratio 5.6 : 1',
  ])
  await page.getByRole('button', { name: 'With the shaft fan', exact: true }).first().click()
  await expect.poll(() => sentence(page)).toMatch(/^Yes\./)
  expect(await page.locator('answer-zone .variant').textContent()).toContain('With the shaft fan')
  silence(watched)
})

it('a try adds one and chooses it; undo takes it away again', async () => {
  const { page } = await opened(site)
  await page.getByRole('button', { name: 'With a blower' }).click()
  await settled(page)
  expect(await names(page)).toHaveLength(5)
  expect(await page.locator('variants-zone tr.chosen .pick').textContent()).toBe('With a blower')
  await takeBack(page)
  expect(await names(page)).toHaveLength(4)
  expect(await page.locator('variants-zone tr.chosen .pick').textContent()).toBe('As found')
})

it('another pulley is tried by its diameter', async () => {
  const { page } = await opened(site)
  await page.getByLabel('or a machine pulley of').fill('8')
  await page.getByRole('button', { name: /Try ratio 3\.2/ }).click()
  await settled(page)
  expect((await names(page)).at(-1)).toBe('Ratio 3.2\u00a0:\u00a01')
})

it('is copied, renamed, and edited without touching the job as found', async () => {
  const { page } = await opened(site)
  const before = await figures(page)
  await page.getByRole('button', { name: 'Copy as new variant' }).click()
  await page.getByRole('button', { name: 'Rename' }).click()
  await page.getByLabel('Name of the variant').fill('<b>Slower</b>')
  await page.keyboard.press('Enter')
  expect((await names(page)).at(-1)).toBe('<b>Slower</b>')
  await openStation(page, 'Machine')
  await page.getByText('changes the variant').waitFor()
  await page.getByLabel('Speed asked at the spindle').nth(2).fill('200')
  await page.getByLabel('Speed asked at the spindle').nth(2).press('Enter')
  await settled(page)
  await page.getByText('This variant only. As found: 350 rpm.').waitFor()
  await page.getByRole('button', { name: 'As found', exact: true }).click()
  await expect.poll(() => figures(page)).toBe(before)
  expect(await page.getByLabel('Speed asked at the spindle').nth(2).inputValue()).toBe('350')
})

it('works by keyboard: arrows between rows, Enter chooses, Delete removes, but not the job as found', async () => {
  const watched = await opened(site)
  const { page } = watched
  await page.getByRole('button', { name: 'As found', exact: true }).focus()
  await page.keyboard.press('Delete')
  expect(await names(page)).toHaveLength(4)
  await page.keyboard.press('ArrowDown')
  await page.keyboard.press('Enter')
  expect(await page.locator('variants-zone tr.chosen .pick').textContent()).toBe('With the shaft fan')
  await page.keyboard.press('Delete')
  expect(await names(page)).toEqual(['As found', 'Fan, ratio 2 : 1', 'Fan, ratio 5.6 : 1'])
  expect(await page.locator('variants-zone tr.chosen .pick').textContent()).toBe('As found')
  await takeBack(page)
  expect(await names(page)).toHaveLength(4)
  silence(watched)
})

it('a step is added, filled in, and counted', async () => {
  const { page } = await opened(site)
  const before = await figures(page)
  await openStation(page, 'Machine')
  await page.locator('duty-steps').getByRole('button', { name: 'Add a step' }).click()
  await page.locator('duty-steps').getByLabel('Lasts', { exact: true }).nth(3).fill('30 min')
  await page.locator('duty-steps').getByLabel('Lasts', { exact: true }).nth(3).press('Enter')
  await expect.poll(() => figures(page)).not.toBe(before)
  await page.getByRole('button', { name: 'Remove step 4: rest' }).click()
  await expect.poll(() => figures(page)).toBe(before)
  await enter(page, 'Repeat for', '0 s')
  await page.getByText('The job lasts no time at all.').first().waitFor()
})
