// Photographs of the page itself: answer, panels, bench, over time, variants, and what it says when something is amiss.
import { cutHelper, enter, exampleLog, measured, metricBelt, station, toTop } from './acts.ts'
import { type Shot, desktop, phone, tablet } from './shot.ts'

export const PAGE_SHOTS: readonly Shot[] = [
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
    async act(page) {
      await page.getByRole('button', { name: 'Menu' }).click()
      await page.getByLabel('Job on the sheet').selectOption({ label: 'Steel-cutting band saw' })
    },
  },
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
  { name: '07-first-run', view: desktop, empty: true },
  { name: '08-first-run-dark', view: { ...desktop, dark: true }, empty: true },
  { name: '09-first-run-phone', view: phone, empty: true },
  { name: '75-belt-panel-metric', view: desktop, part: '#A', act: metricBelt },
]
