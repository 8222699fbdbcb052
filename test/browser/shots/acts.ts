// What brings the page into the states that are photographed.
import type { Page } from 'playwright-core'

export const station = (name: string) => (page: Page) =>
  page.getByRole('button', { name: `Change: ${name}` }).click()

export const enter = async (page: Page, label: string, text: string) => {
  const box = page.getByLabel(label, { exact: true }).first()
  await box.fill(text)
  await box.press('Enter')
}

/** A field of zone J or of a panel. */
export const fill = async (page: Page, within: string, label: string, text: string) => {
  const box = page.locator(within).getByLabel(label, { exact: true }).first()
  await box.fill(text)
  await box.press('Enter')
}

/** Readings of a motor a little weaker than its plate. */
export const measured = async (page: Page) => {
  await fill(page, 'bench-zone', 'Winding ohms', '1.1')
  await fill(page, 'bench-zone', 'Turned at', '1500')
  await fill(page, 'bench-zone', 'Makes', '40')
  await fill(page, 'bench-zone', 'No-load volts', '120')
  await fill(page, 'bench-zone', 'No-load amps', '1.1')
  await page.waitForTimeout(1500)
}

export const exampleLog = async (page: Page) => {
  await page.getByRole('button', { name: 'Look at an invented one' }).click()
  await page.locator('warm-up-fit').waitFor()
  await page.waitForTimeout(1000)
}

/** Zone D, with a symptom looked at. */
export const advice = async (page: Page) => {
  await page.locator('#D').scrollIntoViewIfNeeded()
  await page.locator('advice-zone .findings').waitFor({ timeout: 120_000 })
  await page.locator('advice-zone select').selectOption('burns')
}

/** The ratio study, worked out. */
export const ratio = async (page: Page) => {
  await page.locator('#F').scrollIntoViewIfNeeded()
  await page.locator('ratio-zone .handle').waitFor({ timeout: 120_000 })
}

/** Work and rest, worked out. */
export const workAndRest = async (page: Page) => {
  await page.locator('#E').scrollIntoViewIfNeeded()
  await page.locator('limits-zone limits-card').waitFor({ timeout: 120_000 })
}

/** The map of minutes, worked out. */
export const map = async (page: Page) => {
  await page.locator('map-zone').scrollIntoViewIfNeeded()
  await page.locator('map-zone .panels').waitFor({ timeout: 120_000 })
}

/** The plate of a washing-machine's worth of old motor. */
export const oldMotor = async (page: Page) => {
  await page.locator('#G').scrollIntoViewIfNeeded()
  await page.locator('against-zone .point').first().waitFor()
  await fill(page, 'against-zone', 'Power on its plate', '3/4 hp')
  await fill(page, 'against-zone', 'Speed on its plate', '1725')
  await fill(page, 'against-zone', 'Old motor pulley', '2 in')
  await fill(page, 'against-zone', 'Old machine pulley', '10 in')
  await page.locator('against-zone .said strong').waitFor()
}

/** The last step turns a rod: its cut worked out from that. */
export const cutHelper = async (page: Page) => {
  await station('Machine')(page)
  await page.getByLabel('The work takes', { exact: true }).last().selectOption('cut')
  await page.locator('duty-steps .asks').waitFor()
}

export const toTop = (page: Page) => page.evaluate(() => scrollTo(0, 0))

/** A grid of two inputs, filled. */
export const grid = async (page: Page) => {
  await page.locator('grid-zone').scrollIntoViewIfNeeded()
  await page.locator('grid-zone').getByRole('button', { name: 'Work it out', exact: true }).click()
  await page.locator('grid-zone td button').first().waitFor({ timeout: 120_000 })
  await page.locator('grid-zone [role="progressbar"]').waitFor({ state: 'detached', timeout: 120_000 })
}

/** How sure, with its samples in. */
export const sure = async (page: Page) => {
  await page.locator('#H').scrollIntoViewIfNeeded()
  await page.locator('sure-zone svg').first().waitFor({ timeout: 120_000 })
}

/** The circuit and the checklist. */
export const wiring = async (page: Page) => {
  await page.locator('#K').scrollIntoViewIfNeeded()
  await page.locator('wiring-zone svg').first().waitFor()
}

/** The belt's panel in metres. */
export const metricBelt = async (page: Page) => {
  await page.getByRole('button', { name: 'kW, mm' }).click()
  await station('Belt')(page)
}

/** The report, with what it rests on, what can be saved and what is kept laid open. */
export const report = async (page: Page) => {
  await page.locator('#L').scrollIntoViewIfNeeded()
  for (const lid of ['Every input', 'Save a picture', 'Jobs kept'])
    await page.locator('report-zone summary', { hasText: lid }).click()
}

/** The report as it is printed, once all that goes into it is there. */
export const printed = async (page: Page) => {
  await page.evaluate(() => {
    window.print = () => document.documentElement.setAttribute('data-printed', '')
  })
  await page.locator('#L').scrollIntoViewIfNeeded()
  await page.getByRole('button', { name: 'Print the report' }).click()
  await page.locator('html[data-printed]').waitFor({ timeout: 120_000 })
  await page.emulateMedia({ media: 'print' })
}
