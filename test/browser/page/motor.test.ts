// The motor in a real browser: readings narrow what is known and move the answer, plates complain, a log is fitted and drawn.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { root } from '../../house/tree.ts'
import { openBuilt, type Site } from '../page.ts'
import { violations } from './axe.ts'
import { enter, figures, openStation, opened, settled, silence, takeBack } from './sheet.ts'

let site: Site
beforeAll(async () => {
  site = await openBuilt()
})
afterAll(() => site?.close())

const log = readFileSync(join(root, 'scenarios/appleMillWarmUp.csv'))
const file = (name: string, buffer: Buffer, mimeType = 'text/csv') => ({ name, mimeType, buffer })
const give = (page: Page, what: ReturnType<typeof file>) =>
  page.locator('warm-up-step input[type=file]').setInputFiles(what)

const plain = (text: string | null) => (text ?? '').replaceAll(/\s+/g, ' ').trim()
/** Text of the readings of a kind in the open panel. */
const rows = async (page: Page, kind: string) =>
  plain(await page.locator(`station-panel reading-rows[data-path="${kind}"] .under`).textContent())
/** The band in such a text: "likely 0.84 to 1.8 Ω", low and high. */
const band = (text: string): readonly [number, number] => {
  const [, low, high] = /likely ([\d.]+) to ([\d.]+)/.exec(text) ?? []
  return [Number(low), Number(high)]
}
const wide = ([low, high]: readonly [number, number]) => high - low
const inPanel = (page: Page, label: string) =>
  page.locator('station-panel').getByLabel(label, { exact: true })
const type = async (page: Page, label: string, text: string) => {
  await inPanel(page, label).fill(text)
  await inPanel(page, label).press('Enter')
}

it('ohms typed in narrow what is known, move the answer, and go again with their text', async () => {
  const watched = await opened(site)
  const { page } = watched
  const before = await figures(page)
  await openStation(page, 'Motor')
  const plate = await rows(page, 'bench.ohms')
  expect(plate).toContain('From the plate: 1.25 Ω')
  await type(page, 'Winding ohms', '0.95')
  await expect.poll(() => rows(page, 'bench.ohms')).toContain('Measured: 0.95 Ω')
  expect(wide(band(await rows(page, 'bench.ohms')))).toBeLessThan(0.3 * wide(band(plate)))
  await expect.poll(() => figures(page)).not.toBe(before)
  // The number that follows shows it, and zone J shows what it was worth.
  expect(await inPanel(page, 'Winding resistance, cold').getAttribute('placeholder')).toBe('0.95')
  await page.locator('bench-zone').getByText('without it').first().waitFor()
  await type(page, 'Winding ohms', '')
  await expect.poll(() => rows(page, 'bench.ohms')).toBe(plate)
  await expect.poll(() => figures(page)).toBe(before)
  silence(watched)
})

it('half a reading says so; in zone J and in the panel it is the same', async () => {
  const watched = await opened(site)
  const { page } = watched
  await openStation(page, 'Motor')
  const before = await rows(page, 'bench.spin')
  await page.locator('bench-zone').getByLabel('Turned at', { exact: true }).fill('1500')
  await page.locator('bench-zone').getByLabel('Turned at', { exact: true }).press('Enter')
  await expect.poll(() => rows(page, 'bench.spin')).toContain('Half a reading counts for nothing yet')
  expect(await inPanel(page, 'Turned at').inputValue()).toBe('1500')
  await expect.poll(() => page.locator('page-notes .one').count()).toBe(0)
  await type(page, 'Makes', '40')
  await expect.poll(() => rows(page, 'bench.spin')).toContain('Measured: 26.7 V/krpm')
  expect(wide(band(await rows(page, 'bench.spin')))).toBeLessThan(wide(band(before)))
  await page.locator('station-panel').getByRole('button', { name: 'Add another speed' }).click()
  await type(page, 'Turned at, 2', '3000')
  await type(page, 'Makes, 2', '79')
  await expect.poll(() => rows(page, 'bench.spin')).toContain('Measured: 26.4 V/krpm')
  await page
    .locator('station-panel')
    .getByRole('button', { name: 'Take away volts made by turning, reading 2' })
    .click()
  await expect.poll(() => rows(page, 'bench.spin')).toContain('Measured: 26.7 V/krpm')
  silence(watched)
})

it('a number typed over wins, and emptied is worked out again', async () => {
  const { page } = await opened(site)
  const before = await figures(page)
  await openStation(page, 'Motor')
  await page.getByText('The numbers that follow', { exact: true }).click()
  expect(await inPanel(page, 'Winding resistance, cold').getAttribute('placeholder')).toBe('1.25')
  const under = page.locator('station-panel [data-path="winding.resistance"] #helper')
  const open = plain(await under.textContent())
  expect(open).toContain(
    'From the plate: plate volts less the volts it makes by turning. Likely 0.837 to 1.79 Ω.',
  )
  await type(page, 'Winding resistance, cold', '2.2')
  await expect.poll(() => figures(page)).not.toBe(before)
  expect(plain(await under.textContent())).toContain('Empty it to return')
  await type(page, 'Winding resistance, cold', '')
  await expect.poll(() => figures(page)).toBe(before)
  expect(plain(await under.textContent())).toBe(open)
})

it('an impossible plate is told at its field with both numbers, and the answer stays', async () => {
  const { page } = await opened(site)
  const before = await figures(page)
  await openStation(page, 'Motor')
  await enter(page, 'Plate power', '3.5')
  const told = page.locator('station-panel [data-path="plate.power"] .helper')
  await expect.poll(async () => plain(await told.textContent())).toMatch(/3\.5 hp.*120 V/)
  expect(await inPanel(page, 'Plate power').getAttribute('aria-invalid')).toBe('true')
  expect(await figures(page)).toBe(before)
})

it('a doubtful plate runs, with a calm note at its field, in zone J and beside the answer', async () => {
  const watched = await opened(site)
  const { page } = watched
  await openStation(page, 'Motor')
  await enter(page, 'Plate amps', '30')
  await settled(page)
  const note = page.locator('station-panel [data-path="plate.power"] .worth')
  await expect.poll(async () => plain(await note.textContent())).toMatch(/1\.6 hp.*4\.83 hp/)
  expect(await inPanel(page, 'Plate power').getAttribute('aria-invalid')).toBe('false')
  await expect.poll(() => page.locator('page-notes .one').count()).toBe(0)
  const look = page.locator('bench-zone .worth', { hasText: /1\.6.hp.*4\.83.hp/ })
  await look.getByRole('button', { name: 'Go to the field' }).click()
  await expect.poll(() => inPanel(page, 'Plate power').evaluate((box) => box.matches(':focus'))).toBe(true)
  await page
    .locator('answer-zone')
    .getByText(/Plate and bench raise/)
    .waitFor()
  silence(watched)
})

it('a log is fitted, drawn over its points, used with its source, and undone', async () => {
  const watched = await opened(site)
  const { page } = watched
  const before = await figures(page)
  await give(page, file('run.csv', log))
  const chart = page.locator('warm-up-fit')
  await expect.poll(() => chart.locator('circle').count()).toBeGreaterThan(100)
  expect(await chart.locator('path.line').count()).toBe(2)
  expect(await page.locator('warm-up-step tbody tr').count()).toBeGreaterThan(4)
  // Over the prediction too, until told not to.
  const rings = page.locator('over-time .logged circle')
  await expect.poll(() => rings.count()).toBeGreaterThan(100)
  await page.getByLabel('Log run.csv').uncheck()
  await expect.poll(() => rings.count()).toBe(0)
  await page.getByLabel('Log run.csv').check()
  await expect
    .poll(async () => plain(await page.locator('log-line p').textContent()))
    .toMatch(/the can was logged [\d.]+ K/)
  await page.getByRole('button', { name: 'Fit the heat numbers to it' }).click()
  await expect.poll(() => figures(page)).not.toBe(before)
  await page.getByText('These heat numbers are in use.').waitFor()
  await openStation(page, 'Motor')
  expect(plain(await page.locator('[data-path="heat.frameCapacity"] #helper').textContent())).toMatch(
    /^Measured: fitted to run\.csv\. Likely .* J\/K\.$/,
  )
  await takeBack(page)
  await expect.poll(() => figures(page)).toBe(before)
  silence(watched)
})

it('a log dropped anywhere is taken as one; another variant asks to fit again', async () => {
  const watched = await opened(site)
  const { page } = watched
  await page.evaluate((text) => {
    const data = new DataTransfer()
    data.items.add(new File([text], 'dropped.csv', { type: 'text/csv' }))
    document.body.dispatchEvent(
      new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true }),
    )
  }, log.toString('utf8'))
  await page.locator('warm-up-fit circle').first().waitFor()
  await page.locator('variants-zone').locator('button.pick', { hasText: 'With the shaft fan' }).click()
  await page.getByText('The motor has changed since.').waitFor()
  await page.getByRole('button', { name: 'Fit again' }).click()
  await page.getByText('Taken as a run of “With the shaft fan”: fan on the shaft.').waitFor()
  await page.getByRole('button', { name: 'Take dropped.csv away' }).click()
  expect(await page.locator('warm-up-fit, log-line').count()).toBe(0)
  silence(watched)
})

it.each([
  ['notes.csv', Buffer.from('when,what\n1,warm\n2,hot\n'), /No line of the log names its columns/],
  ['book.xlsx', Buffer.from('PK\u0003\u0004 spreadsheet'), /binary file.*Save the spreadsheet as CSV/],
  [
    'cold.csv',
    Buffer.from(`min,can,amps,rpm\n${Array.from({ length: 20 }, (_, n) => `${n},20,5,1400`).join('\n')}`),
    /warmed by only/,
  ],
])('%s is refused in a sentence, and the page goes on', async (name, content, words) => {
  const watched = await opened(site)
  const { page } = watched
  const before = await figures(page)
  await give(page, file(name, content))
  await expect
    .poll(async () => plain(await page.locator('warm-up-step .refused').textContent()))
    .toMatch(words)
  expect(await page.locator('warm-up-fit').count()).toBe(0)
  expect(await figures(page)).toBe(before)
  silence(watched)
})

it('a file of 50 MB is refused by its size, and is not read', async () => {
  const watched = await opened(site)
  const { page } = watched
  await page.evaluate(() => {
    const data = new DataTransfer()
    data.items.add(new File([new Uint8Array(50_000_000)], 'film.csv'))
    document.body.dispatchEvent(
      new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true }),
    )
  })
  await page.locator('warm-up-step .refused', { hasText: '50 million characters' }).waitFor()
  silence(watched)
})

it.each([
  [1440, false],
  [390, true],
])(
  'axe finds nothing at %i, dark %s, with readings, notes, lids and a log; nothing scrolls sideways',
  async (width, dark) => {
    const watched = await opened(site, { width, height: 900, dark })
    const { page } = watched
    await openStation(page, 'Motor')
    await type(page, 'Winding ohms', '1.1')
    await enter(page, 'Plate amps', '30')
    for (const lid of ['More from the plate', 'More readings', 'The numbers that follow'])
      await page.getByText(lid, { exact: true }).click()
    await give(page, file('run.csv', log))
    await page.locator('warm-up-fit').waitFor()
    await settled(page)
    expect(await violations(page)).toEqual([])
    const sideways = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
    expect(await sideways()).toBeLessThanOrEqual(0)
    await page.evaluate(() => document.documentElement.style.setProperty('--k', '1.25'))
    expect(await sideways(), 'larger text').toBeLessThanOrEqual(0)
    silence(watched)
  },
)

it('a field wears one focus ring', async () => {
  const { page } = await opened(site)
  await openStation(page, 'Motor')
  await inPanel(page, 'Plate volts').focus()
  const rings = await inPanel(page, 'Plate volts').evaluate((box) =>
    [box, box.parentElement as Element].map((each) => getComputedStyle(each).outlineStyle),
  )
  expect(rings).toEqual(['none', 'solid'])
})
