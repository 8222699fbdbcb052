// The empty sheet in a real browser: what a stranger meets, filled in by keyboard to an answer; and who never meets it.
import { afterAll, beforeAll, expect, it } from 'vitest'
import type { Page } from 'playwright-core'
import { openBuilt, type Site } from '../page.ts'
import { violations } from './axe.ts'
import { enter, opened, sentence, silence } from './sheet.ts'

let site: Site
beforeAll(async () => {
  site = await openBuilt()
})
afterAll(() => site?.close())

const question = (page: Page) => page.getByRole('heading', { name: 'Will this motor do the job?', level: 2 })
/** The field the keyboard is in, by its label. */
const focused = (page: Page) =>
  page.evaluate(() => {
    let at = document.activeElement
    while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement
    return (at?.getRootNode() as ShadowRoot | undefined)?.querySelector('label')?.textContent ?? ''
  })

it('asks for four things, shows the example’s answer without a click, and is filled in by keyboard', async () => {
  const watched = await site.newPage()
  const { page } = watched
  await page.goto(site.url)
  await question(page).waitFor()
  await page
    .locator('answer-zone')
    .getByText(/Its answer: “No\. The cutoff opens/)
    .waitFor()
  expect(await sentence(page)).toBe('')
  // Nothing is amiss with what nobody has written yet, and there is no sheet below.
  expect(await page.locator('page-notes .one').count()).toBe(0)
  expect(await page.locator('main > section').count()).toBe(1)
  expect(await page.locator('drive-line').getByRole('button', { name: /\?/ }).count()).toBeGreaterThan(2)
  expect(await violations(page)).toEqual([])

  await page.getByRole('button', { name: 'Start with the motor plate' }).press('Enter')
  await expect.poll(() => focused(page)).toBe('Plate volts')
  for (const text of ['120', '13', '1.6', '4000']) {
    await page.keyboard.type(text)
    await page.keyboard.press('Tab')
  }
  const given = page.locator('answer-zone .things .sign')
  await expect.poll(() => given.count()).toBe(1)
  await page.getByRole('button', { name: 'Go on with the supply' }).press('Enter')
  await expect.poll(() => focused(page)).toBe('Most volts to the motor')
  await enter(page, 'Most volts to the motor', '120')
  await enter(page, 'Current limit', '-3')
  // What is wrong is told, as ever; what is open is not.
  await page.locator('page-notes').getByText('One value needs a look: current limit.').waitFor()
  await enter(page, 'Current limit', '18')
  await page.getByRole('button', { name: 'Go on with the pulleys' }).press('Enter')
  await expect.poll(() => focused(page)).toBe('Motor pulley')
  await enter(page, 'Motor pulley', '2.5')
  await enter(page, 'Machine pulley', '10')
  await page.getByRole('button', { name: 'Go on with the work' }).press('Enter')
  await expect.poll(() => focused(page)).toBe('Lasts')
  await enter(page, 'Lasts', '5 min')
  await enter(page, 'Speed asked at the spindle', '350')
  await enter(page, 'Torque of the cut', '4')
  await page.getByLabel('Lasts', { exact: true }).nth(1).fill('2 min')
  await enter(page, 'Repeat for', '1 h')
  await expect.poll(() => sentence(page), { timeout: 30_000 }).toMatch(/^(Yes|No|Barely)\./)
  expect(await question(page).count()).toBe(0)
  await page.locator('variants-zone td').first().waitFor()
  expect(await page.locator('main > section').count()).toBeGreaterThan(8)
  // What was filled in is kept: the next visit goes straight to it.
  await page.waitForFunction(() => Object.keys(localStorage).some((key) => key.startsWith('dutywright job')))
  await page.reload()
  await expect.poll(() => sentence(page), { timeout: 30_000 }).toMatch(/^(Yes|No|Barely)\./)
  silence(watched)
})

it('the example opens at a key, comes back after a reload, and leaves the address once it is changed', async () => {
  const { page } = await site.newPage({ width: 390, height: 844 })
  await page.goto(site.url)
  await page
    .locator('answer-zone')
    .getByText(/Its answer:/)
    .waitFor()
  await page.getByRole('link', { name: 'Open the apple mill example' }).press('Enter')
  await expect.poll(() => sentence(page)).toMatch(/^No\. The cutoff opens/)
  expect(new URL(page.url()).hash).toBe('#demo=appleMill')
  await page.reload()
  await expect.poll(() => sentence(page)).toMatch(/^No\. The cutoff opens/)
  await page.getByRole('button', { name: /Machine pulley: 10\sin/ }).click()
  await enter(page, 'Machine pulley', '11')
  await expect.poll(() => new URL(page.url()).hash).toBe('')
  await page.getByRole('button', { name: /Machine pulley: 11\sin/ }).waitFor()
  await page.waitForFunction(() => Object.keys(localStorage).some((key) => key.startsWith('dutywright job')))
  await page.reload()
  await page.getByRole('button', { name: /Machine pulley: 11\sin/ }).waitFor()
  // An empty sheet can be had again, and the job before it by undo.
  await page.getByRole('button', { name: 'Menu' }).click()
  await page.getByLabel('Job on the sheet').selectOption('new')
  await question(page).waitFor()
  await page
    .locator('answer-zone')
    .getByText(/Its answer:/)
    .waitFor()
  await page.locator('undo-note').getByRole('button', { name: 'Undo' }).click()
  await expect.poll(() => sentence(page)).not.toBe('')
})

it('whoever comes by a link meets its job, and no question before', async () => {
  for (const hash of ['#lesson=gearing', '#demo=bandSaw']) {
    const { page } = await site.newPage()
    await page.addInitScript(() => {
      const look = () => {
        if (document.querySelector('answer-zone')?.shadowRoot?.querySelector('.question'))
          document.documentElement.dataset.asked = ''
        requestAnimationFrame(look)
      }
      look()
    })
    await page.goto(site.url + hash)
    await expect.poll(() => sentence(page), { timeout: 30_000 }).not.toBe('')
    expect(await page.locator('html[data-asked]').count(), hash).toBe(0)
  }
  // One that opens nothing leaves the empty sheet, with a word about it.
  const { page } = await site.newPage()
  await page.goto(`${site.url}#job=1damaged`)
  await page.getByText('That link was not opened.').first().waitFor()
  await question(page).waitFor()
  await page
    .locator('answer-zone')
    .getByText(/Its answer:/)
    .waitFor()
})

it('a job that was answered and is emptied says what is amiss, and keeps its sheet', async () => {
  const { page } = await opened(site)
  await page.getByRole('button', { name: /Machine pulley: 10\sin/ }).click()
  await enter(page, 'Machine pulley', '')
  await page.locator('page-notes').getByText('One value needs a look: machine pulley.').waitFor()
  expect(await question(page).count()).toBe(0)
  expect(await page.locator('#L').count()).toBe(1)
})
