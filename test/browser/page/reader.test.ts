// The page and its reader: units, theme, text size, keyboard, files; nothing typed is ever rewritten unasked.
import { afterAll, beforeAll, expect, it } from 'vitest'
import { openBuilt, type Site } from '../page.ts'
import { enter, figures, openStation, opened, sentence, settled, silence, takeBack } from './sheet.ts'

let site: Site
beforeAll(async () => {
  site = await openBuilt()
})
afterAll(() => site?.close())

it('units switch at any time and back again, without rewriting what was typed', async () => {
  const watched = await opened(site)
  const { page } = watched
  await openStation(page, 'Belt')
  await enter(page, 'Motor pulley', '2 1/2')
  await page.getByRole('button', { name: 'kW, mm' }).click()
  expect(await page.getByLabel('Motor pulley', { exact: true }).inputValue()).toBe('63.5')
  await page.getByRole('button', { name: '°F' }).click()
  expect(await page.locator('answer-zone dl.numbers').textContent()).toContain('°F')
  await page.getByRole('button', { name: 'hp, in' }).click()
  expect(await page.getByLabel('Motor pulley', { exact: true }).inputValue()).toBe('2 1/2')
  expect(await page.locator('page-notes .one').count()).toBe(0)
  silence(watched)
})

it('remembers units, theme and text size on the next visit', async () => {
  const { page } = await opened(site)
  await page.getByRole('button', { name: 'kW, mm' }).click()
  await page.getByRole('button', { name: 'Dark' }).click()
  await page.getByRole('button', { name: 'Larger text' }).click()
  await page.reload()
  await expect.poll(() => sentence(page), { timeout: 30_000 }).not.toBe('')
  const found = await page.evaluate(() => [
    document.documentElement.dataset.theme,
    getComputedStyle(document.documentElement).getPropertyValue('--k'),
  ])
  expect(found).toEqual(['dark', '1.25'])
  expect(await page.getByRole('button', { name: 'kW, mm' }).getAttribute('aria-pressed')).toBe('true')
})

it('one panel at a time; Escape restores a field, then closes the panel and returns to its button', async () => {
  const { page } = await opened(site)
  await openStation(page, 'Belt')
  await openStation(page, 'Supply and controller')
  expect(await page.locator('station-panel').count()).toBe(1)
  const box = page.getByLabel('Current limit', { exact: true })
  await box.fill('99')
  await box.press('Escape')
  expect(await box.inputValue()).toBe('18')
  await box.press('Escape')
  expect(await page.locator('station-panel').count()).toBe(0)
  expect(
    await page
      .getByRole('button', { name: 'Change: Supply and controller' })
      .evaluate((b) => b.matches(':focus')),
  ).toBe(true)
})

it('the scrubber moves by keys, and the drive line follows', async () => {
  const watched = await opened(site)
  const { page } = watched
  const head = () => page.locator('drive-line .head').textContent()
  const scrubber = page.getByRole('slider', { name: 'Moment of the job' })
  await scrubber.focus()
  await page.keyboard.press('Home')
  await expect.poll(head).toContain('0:00')
  for (const [key, time] of [
    ['ArrowRight', '0:05'],
    ['Shift+ArrowRight', '1:05'],
    ['PageUp', '9:05'],
    ['ArrowLeft', '9:00'],
  ] as const) {
    await page.keyboard.press(key)
    await expect.poll(head).toContain(time)
  }
  await page.keyboard.press(']')
  await expect.poll(head).toMatch(/5\d:\d\d/)
  await page.keyboard.press('End')
  await expect.poll(head).toContain('3:00:00')
  expect(await scrubber.getAttribute('aria-valuetext')).toBeTruthy()
  silence(watched)
})

it('another example is chosen, and a wrong file is told apart without losing the job', async () => {
  const { page } = await opened(site)
  await page.getByLabel('Job on the sheet').selectOption({ index: 2 })
  await settled(page)
  const title = await page.title()
  expect(title).not.toContain('apple mill')
  await takeBack(page)
  await expect.poll(() => page.title()).toContain('apple mill')
  await page.getByLabel('Job on the sheet').selectOption({ index: 2 })
  await settled(page)
  const file = (name: string, text: string) => ({
    name,
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  })
  const chooser = page.locator('top-bar input[type=file]')
  await chooser.setInputFiles(file('a.json', 'not a job'))
  await page.getByText('That file was not opened.').waitFor()
  await chooser.setInputFiles(
    file('b.json', '{"format":1,"name":"Half a job","belt":{"motorPulley":"-3 in"}}'),
  )
  await page.getByText('belt.motorPulley').waitFor()
  expect(await page.title()).toBe(title)
  await page.getByRole('button', { name: 'Close', exact: true }).click()
  expect(await page.getByText('That file was not opened.').count()).toBe(0)
})

it('a saved job opens again as it was', async () => {
  const watched = await opened(site)
  const { page } = watched
  const found = await figures(page)
  await openStation(page, 'Belt')
  await enter(page, 'Machine pulley', '13 in')
  await expect.poll(() => figures(page)).not.toBe(found)
  await settled(page)
  const before = await figures(page)
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save job' }).click(),
  ])
  expect(download.suggestedFilename()).toBe('Orchard-workshop-apple-mill.json')
  await page.getByLabel('Job on the sheet').selectOption({ index: 2 })
  await settled(page)
  await page.locator('top-bar input[type=file]').setInputFiles(await download.path())
  await expect.poll(() => figures(page)).toBe(before)
  silence(watched)
})

it('after a bad entry a bare number is meant in the unit the field had', async () => {
  const { page } = await opened(site)
  await openStation(page, 'Belt')
  await enter(page, 'Motor pulley', '2.5 kg')
  await page.getByText('One value needs a look: motor pulley.').waitFor()
  await enter(page, 'Motor pulley', '3')
  await page.getByText('One value needs a look').waitFor({ state: 'detached' })
  expect(await page.locator('station-strip').getByText('3 in', { exact: true }).count()).toBe(1)
  // In the unit it was written in, where that belongs to neither system.
  await openStation(page, 'Machine')
  await enter(page, 'Repeat for', '3 kg')
  await page.getByText('One value needs a look: repeat for.').waitFor()
  await enter(page, 'Repeat for', '2')
  await expect.poll(() => page.locator('answer-zone .support').textContent()).toContain('Over 2\u00a0h')
})

it('an empty plate speed says what is taken', async () => {
  const { page } = await opened(site)
  await openStation(page, 'Motor')
  await enter(page, 'Plate speed', '')
  await page.getByText('Left open: 5\u202f000\u00a0rpm is taken.').waitFor()
})

it.each([1280, 1440])(
  'at %i px what was opened is told beside the letters, over nothing, and not over a refusal',
  async (width) => {
    const { page } = await opened(site, { width, height: 900 })
    await page.getByLabel('Job on the sheet').selectOption({ index: 2 })
    await settled(page)
    const note = (await page.locator('undo-note div').boundingBox())!
    const sheet = (await page.locator('main').boundingBox())!
    expect(note.y + note.height).toBeLessThanOrEqual(sheet.y + 1)
    const bar = (await page.locator('top-bar .bar').boundingBox())!
    expect(note.y).toBeGreaterThanOrEqual(bar.y + bar.height - 1)
    const letters = await page.locator('zone-letters li').last().boundingBox()
    expect(letters!.x + letters!.width).toBeLessThan(note.x)
    await page
      .locator('top-bar input[type=file]')
      .setInputFiles({ name: 'a.json', mimeType: 'application/json', buffer: Buffer.from('not a job') })
    await page.getByText('That file was not opened.').waitFor()
    expect(await page.locator('undo-note div').count()).toBe(0)
  },
)

it('on paper before the report is there: job and variant in a line, whole tables, no bar and no buttons', async () => {
  const { page } = await opened(site)
  // Near L the report comes, and is what prints from then on.
  await page.locator('#L').evaluate((zone) => zone.querySelector('report-zone')?.remove())
  await page.getByRole('button', { name: 'With the shaft fan', exact: true }).first().click()
  await page.getByRole('button', { name: 'Show as table: Temperature' }).click()
  await page.locator('over-time .table').waitFor()
  expect(await page.locator('.on-paper').isVisible()).toBe(false)
  await page.emulateMedia({ media: 'print' })
  expect(await page.locator('.on-paper').textContent()).toBe(
    'Dutywright: Orchard workshop apple mill, variant “With the shaft fan”',
  )
  expect(await page.locator('.on-paper').isVisible()).toBe(true)
  expect(await page.locator('top-bar').isVisible()).toBe(false)
  const table = page.locator('over-time .table')
  const [seen, whole] = await table.evaluate((each) => [each.clientHeight, each.scrollHeight])
  expect(seen).toBeGreaterThan(600)
  expect(whole).toBe(seen)
  expect(await page.locator('safety-strip').isVisible()).toBe(true)
  expect(await page.getByRole('button').filter({ visible: true }).allTextContents()).toEqual(
    await page.locator('variants-zone .pick').allTextContents(),
  )
})
