// Zones F and G in a real browser: loaded and worked out when near, given up when told; tried, typed, tabulated.
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { openBuilt, type Site } from '../page.ts'
import { violations } from './axe.ts'
import { enter, opened, sentence, settled, silence } from './sheet.ts'

let site: Site
beforeAll(async () => {
  site = await openBuilt()
})
afterAll(() => site?.close())

const names = (page: Page) => page.locator('variants-zone .pick').allTextContents()
const fan = (page: Page) =>
  page.getByRole('button', { name: 'With the shaft fan', exact: true }).first().click()

/** Comes near the ratio study and waits for it. */
async function study(page: Page): Promise<void> {
  await page.locator('#F').scrollIntoViewIfNeeded()
  await page.locator('ratio-zone .handle').waitFor({ timeout: 120_000 })
}

it('the modules of F and G wait until they are near', async () => {
  const watched = await opened(site, { width: 1440, height: 500 })
  const { page } = watched
  const there = () => page.evaluate(() => customElements.get('ratio-zone') !== undefined)
  expect(await there()).toBe(false)
  await page.locator('#F').scrollIntoViewIfNeeded()
  await expect.poll(there).toBe(true)
  silence(watched)
})

it('which belt ratio: the window, a ratio by keys that becomes a variant, a pair to buy', async () => {
  const watched = await opened(site)
  const { page } = watched
  await fan(page)
  await study(page)
  expect((await page.locator('ratio-zone .said').textContent())?.replaceAll('\u00a0', ' ')).toMatch(
    /Works from 3\.\d : 1 to \d+(\.\d)? : 1\. Below, /,
  )
  const handle = page.getByRole('slider', { name: 'Ratio looked at' })
  await handle.focus()
  const before = Number(await handle.getAttribute('aria-valuenow'))
  await page.keyboard.press('ArrowRight')
  await expect
    .poll(async () => Number(await handle.getAttribute('aria-valuenow')))
    .toBeCloseTo(before * 1.01, 6)
  await page.keyboard.press('PageUp')
  await expect.poll(async () => Number(await handle.getAttribute('aria-valuenow'))).toBeGreaterThan(9)
  expect(await violations(page)).toEqual([])
  await page.keyboard.press('Enter')
  await settled(page)
  expect(await names(page)).toHaveLength(5)
  await page
    .getByRole('button', { name: /^Use this pair/ })
    .last()
    .click()
  await settled(page)
  expect((await names(page)).at(-1)).toMatch(/^Pulleys .* in$/)
  await page.getByRole('button', { name: 'Show as table: Every ratio' }).click()
  await expect
    .poll(() => page.getByRole('region', { name: 'Which belt ratio, table' }).locator('tbody tr').count())
    .toBeGreaterThan(12)
  silence(watched)
})

it('the pointer reads off any ratio', async () => {
  const { page } = await opened(site)
  await study(page)
  // By the element, not by where it stood: zones above may still be filling.
  const chart = page.locator('ratio-zone .chart')
  const { width } = (await chart.boundingBox())!
  await chart.click({ position: { x: width * 0.6, y: 100 } })
  await page
    .locator('ratio-zone .row')
    .getByRole('button', { name: /^Try ratio/ })
    .waitFor()
  expect(await page.locator('ratio-zone .scrubber').count()).toBe(1)
})

it('a study tells how far it is and is given up when told', async () => {
  const watched = await opened(site)
  const { page } = watched
  await page.locator('#F').scrollIntoViewIfNeeded()
  await page.getByRole('progressbar', { name: 'Ratio study' }).waitFor()
  await page.locator('ratio-zone').getByRole('button', { name: 'Cancel' }).click()
  await page.locator('ratio-zone').getByRole('button', { name: 'Work it out', exact: true }).waitFor()
  expect(await sentence(page)).toMatch(/^No\./)
  silence(watched)
})

/** Draws zone G anew, as news of a study does. */
const drawnAnew = (page: Page) =>
  page.locator('against-zone').evaluate(async (zone) => {
    const element = zone as unknown as { requestUpdate(): void; updateComplete: Promise<boolean> }
    element.requestUpdate()
    await element.updateComplete
    await new Promise((drawn) => requestAnimationFrame(drawn))
  })

it('the old motor, typed in, is compared at the spindle, and a bad entry is told at its field', async () => {
  const watched = await opened(site)
  const { page } = watched
  await page.locator('#G').scrollIntoViewIfNeeded()
  await page.locator('against-zone .point').first().waitFor()
  const said = () =>
    page
      .locator('against-zone .said')
      .first()
      .textContent()
      .then((text) => text?.replaceAll('\u00a0', ' ').replaceAll('\u202f', ''))
  // What is half typed outlives a zone drawn anew.
  const power = page.getByLabel('Power on its plate', { exact: true })
  await power.fill('3/4 hp')
  await drawnAnew(page)
  expect(await power.inputValue()).toBe('3/4 hp')
  await power.press('Enter')
  await enter(page, 'Speed on its plate', 'fast')
  await page.locator('against-zone .wrong').waitFor()
  await enter(page, 'Speed on its plate', '1725')
  await expect.poll(said).toContain('At 1730 rpm the old ¾ hp motor held')
  await enter(page, 'Old motor pulley', '2')
  await enter(page, 'Old machine pulley', '10')
  await expect
    .poll(said)
    .toMatch(
      /At 345 rpm the old ¾ hp motor held \d+(\.\d)? lbf·ft all day\. This one holds \d\.\d with the fan and \d\.\d without\./,
    )
  await page.getByRole('button', { name: 'Add a step', exact: true }).last().click()
  await enter(page, 'Old motor pulley, step 2', '3')
  await enter(page, 'Old machine pulley, step 2', '9')
  await expect
    .poll(() => page.locator('against-zone li').allTextContents())
    .toEqual([expect.stringMatching(/^Step 1, 345/), expect.stringMatching(/^Step 2, 575/)])
  await page.getByRole('button', { name: 'Remove step 2' }).click()
  await page.locator('against-zone li').first().waitFor({ state: 'detached' })
  const cross = page.getByRole('slider', { name: 'Spindle speed looked at' })
  expect(await cross.getAttribute('aria-valuetext')).toMatch(/^350\s*rpm\. all day, .+; old ¾\shp motor: /)
  await cross.press('ArrowRight')
  await expect.poll(() => page.locator('against-zone .read').textContent()).toMatch(/^At 355\s*rpm: all day/)
  await page.locator('against-zone .crossing').first().waitFor()
  await page.getByRole('button', { name: 'Show as table: Torque at the spindle' }).click()
  await page.getByRole('columnheader', { name: /^old ¾ hp motor/ }).waitFor()
  expect(await violations(page)).toEqual([])
  silence(watched)
})

it('in the dark and on a phone axe finds nothing and nothing scrolls sideways', async () => {
  const watched = await opened(site, { width: 390, height: 844, dark: true })
  const { page } = watched
  await study(page)
  await page.locator('#G').scrollIntoViewIfNeeded()
  await page.locator('against-zone .point').first().waitFor()
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0)
  expect(await violations(page)).toEqual([])
  silence(watched)
})
