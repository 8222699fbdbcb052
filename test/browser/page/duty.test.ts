// The duty by drag, key and number, in a real browser: three ways to the same length; a drag is undone as one step.
import { afterAll, beforeAll, expect, it } from 'vitest'
import { openBuilt, type Site } from '../page.ts'
import { opened, settled, silence } from './sheet.ts'

let site: Site
beforeAll(async () => {
  site = await openBuilt()
})
afterAll(() => site?.close())

it('the edge of a step is dragged, moved by keys and typed; the answer follows', async () => {
  const watched = await opened(site)
  const { page } = watched
  const milling = page.locator('duty-row').getByLabel('milling', { exact: true })
  const edge = page.getByRole('slider', { name: 'End of milling' })
  await edge.scrollIntoViewIfNeeded()
  const box = (await edge.boundingBox())!
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2)
  await page.mouse.down()
  for (const by of [5, 15, 30]) await page.mouse.move(box.x + box.width / 2 - by, box.y + box.height / 2)
  await page.mouse.up()
  // An hour over some thousand pixels: 30 px are under two minutes.
  await expect.poll(async () => Number(await milling.inputValue())).toBeLessThan(250)
  const dragged = await milling.inputValue()
  await edge.press('Shift+ArrowRight')
  await expect.poll(async () => Number(await edge.getAttribute('aria-valuenow'))).toBe(Number(dragged) + 60)
  await milling.fill('2.5 min')
  await milling.press('Enter')
  await expect.poll(() => edge.getAttribute('aria-valuenow')).toBe('150')
  const undo = page.getByRole('button', { name: 'Undo', exact: true }).first()
  for (let n = 0; n < 3; n++) await undo.click()
  await expect.poll(() => milling.inputValue()).toBe('5')
  expect(await undo.isDisabled()).toBe(true)
  await settled(page)
  silence(watched)
})
