// `npm run shots`: photographs every zone and state of the page into node_modules/.cache/shots, with one sheet of all.
import { mkdir, readFile, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { root } from '../house/tree.ts'
import { openBuilt, type Site, type View } from './page.ts'

const folder = join(root, 'node_modules/.cache/shots')

interface Shot {
  readonly name: string
  readonly view: View
  /** What brings the page into the state; then a part of it, or the whole sheet, is photographed. */
  act?(page: Page): Promise<unknown>
  readonly part?: string
  /** Only what the window shows, from its top. */
  readonly window?: boolean
}

const station = (name: string) => (page: Page) =>
  page.getByRole('button', { name: `Change: ${name}` }).click()

const enter = async (page: Page, label: string, text: string) => {
  const box = page.getByLabel(label, { exact: true })
  await box.fill(text)
  await box.press('Enter')
}

/** A field of zone J or of a panel. */
const fill = async (page: Page, within: string, label: string, text: string) => {
  const box = page.locator(within).getByLabel(label, { exact: true }).first()
  await box.fill(text)
  await box.press('Enter')
}

/** Readings of a motor a little weaker than its plate. */
const measured = async (page: Page) => {
  await fill(page, 'bench-zone', 'Winding ohms', '1.1')
  await fill(page, 'bench-zone', 'Turned at', '1500')
  await fill(page, 'bench-zone', 'Makes', '40')
  await fill(page, 'bench-zone', 'No-load volts', '120')
  await fill(page, 'bench-zone', 'No-load amps', '1.1')
  await page.waitForTimeout(1500)
}

const exampleLog = async (page: Page) => {
  await page.getByRole('button', { name: 'Look at an invented one' }).click()
  await page.locator('warm-up-fit').waitFor()
  await page.waitForTimeout(1000)
}

/** Zone D, with a symptom looked at. */
const advice = async (page: Page) => {
  await page.locator('#D').scrollIntoViewIfNeeded()
  await page.locator('advice-zone .findings').waitFor({ timeout: 120_000 })
  await page.locator('advice-zone select').selectOption('burns')
}

/** The ratio study, worked out. */
const ratio = async (page: Page) => {
  await page.locator('#F').scrollIntoViewIfNeeded()
  await page.locator('ratio-zone .handle').waitFor({ timeout: 120_000 })
}

/** Work and rest, worked out. */
const workAndRest = async (page: Page) => {
  await page.locator('#E').scrollIntoViewIfNeeded()
  await page.locator('limits-card').waitFor({ timeout: 120_000 })
}

/** The map of minutes, worked out. */
const map = async (page: Page) => {
  await page.locator('map-zone').scrollIntoViewIfNeeded()
  await page.locator('map-zone .panels').waitFor({ timeout: 120_000 })
}

/** The plate of a washing-machine's worth of old motor. */
const oldMotor = async (page: Page) => {
  await page.locator('#G').scrollIntoViewIfNeeded()
  await page.locator('against-zone .point').first().waitFor()
  await fill(page, 'against-zone', 'Power on its plate', '3/4 hp')
  await fill(page, 'against-zone', 'Speed on its plate', '1725')
  await fill(page, 'against-zone', 'Old motor pulley', '2 in')
  await fill(page, 'against-zone', 'Old machine pulley', '10 in')
  await page.locator('against-zone .said strong').waitFor()
}

/** The last step turns a rod: its cut worked out from that. */
const cutHelper = async (page: Page) => {
  await station('Machine')(page)
  await page.getByLabel('The work takes', { exact: true }).last().selectOption('cut')
  await page.locator('duty-steps .asks').waitFor()
}

const toTop = (page: Page) => page.evaluate(() => scrollTo(0, 0))

const desktop = { width: 1440, height: 900 }
const tablet = { width: 900, height: 1200 }
const phone = { width: 390, height: 844 }

const shots: readonly Shot[] = [
  { name: '01-desktop-light', view: desktop },
  { name: '02-desktop-dark', view: { ...desktop, dark: true } },
  { name: '03-tablet-light', view: tablet },
  { name: '04-tablet-dark', view: { ...tablet, dark: true } },
  { name: '05-phone-light', view: phone },
  { name: '06-phone-dark', view: { ...phone, dark: true } },
  ...(['Supply and controller', 'Motor', 'Belt', 'Machine'] as const).map(
    (name, index): Shot => ({
      name: `1${index}-panel-${name.split(' ')[0].toLowerCase()}`,
      view: desktop,
      act: station(name),
      part: '#A',
    }),
  ),
  { name: '14-panel-phone', view: phone, act: station('Motor'), part: '#A' },
  {
    name: '15-motor-measured',
    view: desktop,
    part: '#A',
    async act(page) {
      await measured(page)
      await station('Motor')(page)
      for (const lid of ['More from the plate', 'More readings', 'The numbers that follow'])
        await page.getByText(lid, { exact: true }).click()
    },
  },
  {
    name: '16-motor-complains',
    view: { ...desktop, dark: true },
    part: '#A',
    async act(page) {
      await station('Motor')(page)
      await enter(page, 'Plate amps', '30')
      await page.waitForTimeout(1500)
    },
  },
  { name: '17-cut-helper', view: desktop, act: cutHelper, part: '#A' },
  { name: '18-cut-helper-phone', view: { ...phone, dark: true }, act: cutHelper, part: '#A' },
  { name: '40-bench-bare', view: desktop, part: '#J' },
  { name: '41-bench-measured', view: desktop, part: '#J', act: measured },
  {
    name: '42-bench-log',
    view: desktop,
    part: '#J',
    async act(page) {
      await measured(page)
      await exampleLog(page)
    },
  },
  {
    name: '43-bench-log-dark',
    view: { ...desktop, dark: true },
    part: '#J',
    act: exampleLog,
  },
  {
    name: '44-bench-phone',
    view: phone,
    part: '#J',
    async act(page) {
      await measured(page)
      await exampleLog(page)
    },
  },
  { name: '45-bench-tablet', view: tablet, part: '#J', act: exampleLog },
  { name: '46-log-over-time', view: desktop, part: '#B', act: exampleLog },
  {
    name: '47-log-over-time-used',
    view: desktop,
    part: '#B',
    async act(page) {
      await exampleLog(page)
      await page.getByRole('button', { name: 'Use these heat numbers' }).click()
      await page.waitForTimeout(2500)
    },
  },
  {
    name: '48-log-refused',
    view: desktop,
    part: 'warm-up-step',
    act: (page) =>
      page.locator('warm-up-step input[type=file]').setInputFiles({
        name: 'notes.csv',
        mimeType: 'text/csv',
        buffer: Buffer.from('when,what\n1,warm\n2,hot\n'),
      }),
  },
  {
    name: '33-belt-slips',
    view: desktop,
    async act(page) {
      await station('Belt')(page)
      await page.locator('station-panel choice-field select').selectOption('A')
      await enter(page, 'Slips at', '6 lbf ft')
      await page.waitForTimeout(2500)
      await page.getByRole('button', { name: 'Close: Belt' }).click()
    },
    part: '#B',
  },
  {
    name: '34-phone-larger',
    view: phone,
    part: '#C',
    async act(page) {
      await page.getByRole('button', { name: 'Menu' }).click()
      await page.getByRole('button', { name: 'Larger text' }).click()
    },
  },
  {
    name: '35-opened-note',
    view: { width: 1280, height: 800 },
    window: true,
    act: (page) => page.getByLabel('Job on the sheet').selectOption({ index: 1 }),
  },
  {
    name: '36-print',
    view: { width: 1000, height: 1400 },
    act: (page) => page.emulateMedia({ media: 'print' }),
  },
  {
    name: '37-dimension-open',
    view: desktop,
    part: 'answer-zone .top',
    async act(page) {
      await page.getByRole('button', { name: /Machine pulley: 10\sin/ }).click()
      await enter(page, 'Machine pulley', '-3')
    },
  },
  {
    name: '38-two-stages-phone',
    view: phone,
    part: 'drive-line',
    act: (page) => page.getByLabel('Job on the sheet').selectOption({ label: 'Steel-cutting band saw' }),
  },
  {
    name: '50-ratio-bare',
    view: desktop,
    part: '#F',
    act: (page) => page.locator('#F').scrollIntoViewIfNeeded(),
  },
  { name: '45-advice', view: desktop, part: '#D', act: advice },
  { name: '46-advice-dark', view: { ...desktop, dark: true }, part: '#D', act: advice },
  { name: '47-advice-phone', view: phone, part: '#D', act: advice },
  { name: '51-ratio', view: desktop, part: '#F', act: ratio },
  {
    name: '52-ratio-dark-crosshair',
    view: { ...desktop, dark: true },
    part: '#F',
    async act(page) {
      await page.getByRole('button', { name: 'With the shaft fan', exact: true }).first().click()
      await ratio(page)
      await page.locator('ratio-zone .handle').focus()
      await page.keyboard.press('PageUp')
    },
  },
  { name: '53-ratio-phone', view: phone, part: '#F', act: ratio },
  { name: '60-map', view: desktop, part: 'map-zone', act: map },
  {
    name: '61-map-dark-crosshair',
    view: { ...desktop, dark: true },
    part: 'map-zone',
    async act(page) {
      await map(page)
      await page
        .locator('map-zone .chart')
        .first()
        .click({ position: { x: 300, y: 130 } })
    },
  },
  { name: '62-map-phone', view: phone, part: 'map-zone', act: map },
  { name: '58-work-and-rest', view: desktop, part: 'limits-zone', act: workAndRest },
  { name: '59-work-and-rest-phone', view: phone, part: 'limits-zone', act: workAndRest },
  {
    name: '54-against-bare',
    view: desktop,
    part: '#G',
    async act(page) {
      await page.locator('#G').scrollIntoViewIfNeeded()
      await page.locator('against-zone .point').first().waitFor()
    },
  },
  { name: '55-against', view: desktop, part: '#G', act: oldMotor },
  { name: '56-against-dark', view: { ...desktop, dark: true }, part: '#G', act: oldMotor },
  { name: '57-against-phone', view: phone, part: '#G', act: oldMotor },
  {
    name: '20-error',
    view: desktop,
    window: true,
    async act(page) {
      await station('Motor')(page)
      await enter(page, 'Plate speed', '40000')
      await page.getByRole('button', { name: 'Go to the field' }).click()
    },
  },
  {
    name: '21-computing',
    view: desktop,
    window: true,
    async act(page) {
      await station('Machine')(page)
      await enter(page, 'Repeat for', '30 d')
      await page.getByText(/day \d+ of 30/).waitFor()
      await toTop(page)
      await page.waitForTimeout(1500)
    },
  },
  {
    name: '22-cancelled',
    view: { ...desktop, dark: true },
    window: true,
    async act(page) {
      await station('Machine')(page)
      await enter(page, 'Repeat for', '30 d')
      await page.getByRole('button', { name: 'Cancel' }).click()
      await toTop(page)
    },
  },
  {
    name: '23-second-method',
    view: desktop,
    window: true,
    async act(page) {
      await page.getByRole('button', { name: 'Check with a second method' }).click()
      await page.getByText('An unrelated method').waitFor({ timeout: 180_000 })
    },
  },
  {
    name: '24-variant-added',
    view: desktop,
    part: '#C',
    async act(page) {
      await page.getByRole('button', { name: 'With a blower' }).click()
      await page.waitForTimeout(1500)
    },
  },
  {
    name: '25-works',
    view: desktop,
    window: true,
    act: (page) => page.locator('answer-zone button.main').click(),
  },
  {
    name: '26-file-refused',
    view: desktop,
    window: true,
    act: (page) =>
      page.locator('top-bar input[type=file]').setInputFiles({
        name: 'half.json',
        mimeType: 'application/json',
        buffer: Buffer.from('{"format":1,"name":"Half a job","belt":{"motorPulley":"-3 in"}}'),
      }),
  },
  {
    name: '27-metric-fahrenheit',
    view: desktop,
    part: '#A',
    async act(page) {
      await page.getByRole('button', { name: 'kW, mm' }).click()
      await page.getByRole('button', { name: '°F' }).click()
      await station('Belt')(page)
    },
  },
  {
    name: '28-larger-text',
    view: desktop,
    act: (page) => page.getByRole('button', { name: 'Larger text' }).click(),
  },
  {
    name: '29-keyboard-focus',
    view: desktop,
    window: true,
    act: (page) => page.locator('answer-zone button.main').focus(),
  },
  {
    name: '30-menu-phone',
    view: phone,
    window: true,
    act: (page) => page.getByRole('button', { name: 'Menu' }).click(),
  },
  {
    name: '31-bowl-lathe',
    view: desktop,
    act: (page) => page.getByLabel('Job on the sheet').selectOption({ index: 2 }),
  },
  {
    name: '32-band-saw',
    view: desktop,
    act: (page) => page.getByLabel('Job on the sheet').selectOption({ index: 1 }),
  },
]

async function take(site: Site, shot: Shot): Promise<void> {
  const { page, consoleErrors, pageErrors } = await site.newPage(shot.view)
  await page.goto(site.url)
  await page.locator('answer-zone .sentence').waitFor()
  await page.waitForTimeout(1500)
  await shot.act?.(page)
  await page.waitForTimeout(700)
  const path = join(folder, `${shot.name}.png`)
  if (shot.part) await page.locator(shot.part).screenshot({ path })
  else await page.screenshot({ path, fullPage: !shot.window })
  for (const error of [...consoleErrors, ...pageErrors]) console.error(`${shot.name}: ${error}`)
  await page.context().close()
}

/** All photographs, small, on one sheet. */
async function contactSheet(site: Site, taken: readonly Shot[]): Promise<void> {
  const figures = await Promise.all(
    taken.map(async ({ name }) => {
      const data = (await readFile(join(folder, `${name}.png`))).toString('base64')
      return `<figure><img src="data:image/png;base64,${data}"><figcaption>${name}</figcaption></figure>`
    }),
  )
  const { page } = await site.newPage({ width: 2000, height: 1200 })
  await page.setContent(`<style>
    body { margin: 16px; display: grid; grid-template-columns: repeat(7, 1fr); gap: 12px; background: #888; font: 14px sans-serif }
    figure { margin: 0 } img { width: 100%; max-height: 560px; object-fit: cover; object-position: top; display: block }
  </style>${figures.join('')}`)
  await page.screenshot({ path: join(folder, 'all.png'), fullPage: true })
}

// `npm run shots -- phone error`: only those whose names hold one of the words.
const wanted = process.argv.slice(2)
const chosen = shots.filter(({ name }) => wanted.length === 0 || wanted.some((word) => name.includes(word)))
if (wanted.length === 0) await rm(folder, { recursive: true, force: true })
await mkdir(folder, { recursive: true })
const site = await openBuilt()
try {
  for (const shot of chosen) await take(site, shot)
  await contactSheet(site, chosen)
} finally {
  await site.close()
}
await writeFile(join(folder, 'list.txt'), `${chosen.map(({ name }) => name).join('\n')}\n`)
console.log(`${chosen.length} photographs in ${folder}; all.png shows them together.`)
