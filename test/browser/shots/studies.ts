// Photographs of the zones that study the job: advice, map, work and rest, ratio, old motor, grids, how sure, wiring, report.
import { advice, grid, map, oldMotor, printed, ratio, report, sure, wiring, workAndRest } from './acts.ts'
import { type Shot, desktop, phone } from './shot.ts'

export const STUDY_SHOTS: readonly Shot[] = [
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
  { name: '63-grid', view: desktop, part: 'grid-zone', act: grid },
  { name: '64-grid-phone', view: { ...phone, dark: true }, part: 'grid-zone', act: grid },
  { name: '70-sure', view: desktop, part: '#H', act: sure },
  { name: '71-sure-phone', view: { ...phone, dark: true }, part: '#H', act: sure },
  { name: '72-wiring', view: desktop, part: '#K', act: wiring },
  { name: '73-wiring-dark', view: { ...desktop, dark: true }, part: '#K', act: wiring },
  { name: '74-wiring-phone', view: phone, part: '#K', act: wiring },
  { name: '80-report', view: desktop, part: '#L', act: report },
  { name: '81-report-dark', view: { ...desktop, dark: true }, part: '#L', act: report },
  { name: '82-report-phone', view: phone, part: '#L', act: report },
  { name: '83-report-printed', view: { width: 718, height: 1000, dark: true }, act: printed },
]
