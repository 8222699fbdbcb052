// The report in a real browser: prints on two sheets and a checklist, A4 and Letter; files come out whole; jobs are kept.
import { readFile } from 'node:fs/promises'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { demo } from '../../jobs.ts'
import { openBuilt, type Site } from '../page.ts'
import { violations } from './axe.ts'
import { pagesOf } from './pdf.ts'
import { opened, settled, silence } from './sheet.ts'

let site: Site
beforeAll(async () => {
  site = await openBuilt()
})
afterAll(() => site?.close())

const button = (page: Page, name: string) =>
  page.locator('report-zone').getByRole('button', { name, exact: true })

/** What the browser would print is let through to `page.pdf`. */
const watchPrint = (page: Page): Promise<void> =>
  page.evaluate(() => {
    window.print = () => {
      document.documentElement.dataset.printed = 'yes'
    }
  })

async function print(page: Page): Promise<void> {
  await watchPrint(page)
  await button(page, 'Print the report').click()
  await page.locator('html[data-printed]').waitFor({ timeout: 120_000 })
}

/** Height of each sheet as it is laid out for paper 190 mm wide, and its words. */
const sheets = (page: Page): Promise<{ words: string; visible: boolean }[]> =>
  page.locator('report-zone .sheet').evaluateAll((all) =>
    all.map((sheet) => ({
      words: (sheet.textContent ?? '').replace(/\s+/g, ' '),
      visible: sheet.checkVisibility(),
    })),
  )

const saved = async (page: Page, name: string): Promise<{ file: string; bytes: Buffer }> => {
  const [download] = await Promise.all([page.waitForEvent('download'), button(page, name).click()])
  return { file: download.suggestedFilename(), bytes: await readFile(await download.path()) }
}

it('prints two sheets and a checklist on A4 and on Letter, light, with the right words on each', async () => {
  const watched = await opened(site, { dark: true })
  const { page } = watched
  await page.locator('#K').scrollIntoViewIfNeeded()
  await page.getByRole('checkbox', { name: /^Earth the motor frame/ }).check()
  await page.locator('#L').scrollIntoViewIfNeeded()
  await button(page, 'Print the report').waitFor()
  expect(await violations(page)).toEqual([])
  await print(page)
  for (const format of ['A4', 'Letter'])
    expect([format, pagesOf(await page.pdf({ format }))]).toEqual([format, 3])
  await page.emulateMedia({ media: 'print' })
  const [answer, traces, list] = await sheets(page)
  expect([answer, traces, list].map(({ visible }) => visible)).toEqual([true, true, true])
  expect(answer.words).toMatch(/Orchard workshop apple mill.*As found: no fan.*Sheet ?1 of 2/)
  expect(answer.words).toMatch(/The cutoff opens .*Cutoff opens at.*What to do about it.*Put air/)
  expect(answer.words).toMatch(/DC made from the mains kills.*This is an estimate, not a rating/)
  expect(await page.locator('report-zone limits-card figure').textContent()).toMatch(/This cut, from cold/)
  expect(answer.words).not.toContain('Not worked out')
  expect(traces.words).toMatch(
    /Sheet 2 of 2.*Speed at the spindle.*Temperature.*With the shaft fan.*What it rests on/,
  )
  expect(traces.words).toMatch(/Rotor inertia: .*\(.* to .*\).*Estimated: its mass\./)
  expect(list.words).toMatch(/Safety checklist.*1 of \d+ seen to.*Earth the motor frame/)
  for (const other of ['#A', '#B', '#K', 'top-bar', 'answer-strip', 'report-zone .screen'])
    expect([other, await page.locator(other).isVisible()]).toEqual([other, false])
  expect(await page.locator('body').evaluate((body) => getComputedStyle(body).color)).toBe('rgb(34, 31, 26)')
  silence(watched)
})

it('prints the largest jobs on as many pages, told in part; by Ctrl+P too, wherever the page stands', async () => {
  const watched = await opened(site)
  const { page } = watched
  const source = `measured with care, ${'again and again, '.repeat(17)}`.slice(0, 290)
  const given = demo('appleMill')
  const step = (n: number) => ({
    name: `a step by the name of ${n}`,
    lasts: '20 s',
    speed: '300 rpm',
    torque: { value: '3 lbf ft', source: `${n}: ${source}`, low: '2 lbf ft', high: '4 lbf ft' },
  })
  const large = {
    ...given,
    duty: { phases: Array.from({ length: 60 }, (_, n) => step(n)), repeatFor: '10 min' },
    variants: Array.from({ length: 24 }, (_, n) => ({
      name: `Another machine pulley, of ${n + 7} inches`,
      changes: { 'belt.machinePulley': `${n + 7} in` },
    })),
  }
  await page.locator('top-bar input[type=file]').setInputFiles({
    name: 'large.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(large)),
  })
  await page.locator('variants-zone').getByText('of 30 inches').first().waitFor()
  await settled(page)
  expect(await page.locator('report-zone[ready]').count()).toBe(0)
  await watchPrint(page)
  await page.keyboard.press('Control+p')
  await button(page, 'Print without').click()
  await page.locator('html[data-printed]').waitFor()
  for (const format of ['A4', 'Letter'])
    expect([format, pagesOf(await page.pdf({ format }))]).toEqual([format, 3])
  const [, traces] = await sheets(page)
  expect(traces.words).toMatch(
    /And 19 more in the file\. .*a step by the name of 9.*And 51 more in the file\./,
  )
  silence(watched)
})

it('saves pictures, table and job; lists the jobs kept, and removes one after asking', async () => {
  const watched = await opened(site, { dark: true })
  const { page } = watched
  await page.locator('#L').scrollIntoViewIfNeeded()
  await page.locator('report-zone summary', { hasText: 'Save a picture' }).click()
  const svg = await saved(page, 'Temperature as SVG')
  expect(svg.file).toBe('Orchard-workshop-apple-mill-As-found-Temperature.svg')
  const text = svg.bytes.toString()
  expect(text).toMatch(/^<svg [^>]*xmlns="http:\/\/www\.w3\.org\/2000\/svg"/)
  expect(text).toContain('cutoff opens')
  expect(text).not.toMatch(/var\(|class=|<!--|<style/)
  // Light ink, though the page is dark.
  expect(text).toContain('rgb(34, 31, 26)')
  const png = await saved(page, 'Drive line as PNG')
  expect(png.bytes.subarray(1, 4).toString()).toBe('PNG')
  expect(png.bytes.readUInt32BE(16)).toBe(2 * (600 + 32))
  expect(png.bytes.length).toBeGreaterThan(20_000)
  const csv = await saved(page, 'Save table (CSV)')
  expect(csv.file).toMatch(/over-time\.csv$/)
  const lines = csv.bytes.toString().trim().split('\n')
  expect(lines[0]).toMatch(/^time \(s\),/)
  expect(lines.length).toBeGreaterThan(100)
  expect(Number(lines.at(-1)?.split(',')[0])).toBeCloseTo(3 * 3600, 0)
  const job = await saved(page, 'Save job file')
  expect(JSON.parse(job.bytes.toString())).toMatchObject({ format: 1, name: 'Orchard workshop apple mill' })

  const jobs = page.locator('report-zone summary', { hasText: 'Jobs kept' })
  await page.getByRole('button', { name: 'Copy as new variant' }).click()
  await expect.poll(() => jobs.textContent()).toBe('Jobs kept in this browser: 1')
  await page.getByLabel('Job on the sheet; choose another').selectOption({ label: 'Steel-cutting band saw' })
  await settled(page)
  await jobs.click()
  await button(page, 'Remove Orchard workshop apple mill').click()
  await page.getByText('Remove it for good?').waitFor()
  expect(await violations(page)).toEqual([])
  await button(page, 'Keep').click()
  await button(page, 'Open Orchard workshop apple mill').click()
  await settled(page)
  await expect.poll(() => page.locator('variants-zone .pick').count()).toBe(5)
  await page.getByLabel('Job on the sheet; choose another').selectOption({ label: 'Steel-cutting band saw' })
  await settled(page)
  await button(page, 'Remove Orchard workshop apple mill').click()
  await button(page, 'Remove Orchard workshop apple mill for good').click()
  await expect.poll(() => jobs.textContent()).toBe('Jobs kept in this browser: 0')
  silence(watched)
})
