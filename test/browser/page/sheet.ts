// The page as tests meet it: opened, answered, with the handful of things they look at.
import { expect } from 'vitest'
import type { Page } from 'playwright-core'
import type { Site, View, Watched } from '../page.ts'

/** Text of the sentence on the page; '' before there is one. */
export const sentence = (page: Page): Promise<string> =>
  page
    .locator('answer-zone .sentence')
    .textContent({ timeout: 500 })
    .then(
      (text) => (text ?? '').replaceAll('\u00a0', ' '),
      () => '',
    )

/** The five numbers of the answer, as text: exact, where the sentence is rounded once it is known how sure they are. */
export const figures = async (page: Page): Promise<string> =>
  (await page.locator('answer-zone dl.numbers').textContent()) ?? ''

/** Opens the example and waits for its first answer, and for the charts. */
export async function opened(site: Site, view?: View): Promise<Watched> {
  const watched = await site.newPage(view)
  const { page } = watched
  await page.goto(site.demo)
  await expect.poll(() => sentence(page), { timeout: 30_000 }).not.toBe('')
  await page.locator('variants-zone td').first().waitFor({ timeout: 30_000 })
  await settled(page)
  return watched
}

/** Elements that wait for their turn to be drawn. */
const undrawn = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const waiting = (node: ParentNode): number =>
      [...node.querySelectorAll('*')].reduce(
        (sum, el) =>
          sum +
          Number((el as { isUpdatePending?: boolean }).isUpdatePending === true) +
          (el.shadowRoot ? waiting(el.shadowRoot) : 0),
        0,
      )
    return waiting(document)
  })

/** Waits until nothing is being worked out: every row has its numbers, no note of progress stands, and all is drawn. */
export async function settled(page: Page): Promise<void> {
  await expect
    .poll(() => page.locator('variants-zone td', { hasText: '…' }).count(), { timeout: 30_000 })
    .toBe(0)
  await expect.poll(() => page.locator('working-note .one').count(), { timeout: 60_000 }).toBe(0)
  await expect
    .poll(() => page.locator('variants-zone .pending:not(:has(.bad))').count(), { timeout: 60_000 })
    .toBe(0)
  await expect.poll(() => undrawn(page), { timeout: 60_000 }).toBe(0)
}

/** Opens the panel of a station. */
export const openStation = (page: Page, name: string) =>
  page.getByRole('button', { name: `Change: ${name}` }).click()

/** Takes the last change back, by the note that offers it. */
export const takeBack = (page: Page) =>
  page.locator('undo-note').getByRole('button', { name: 'Undo' }).click()

/** Types into a field and commits. */
export async function enter(page: Page, label: string, text: string): Promise<void> {
  // The panel of a station comes before whatever else on the sheet has the same name.
  const box = page.getByLabel(label, { exact: true }).first()
  await box.fill(text)
  await box.press('Enter')
}

/** What a watched page must not have done. */
export const silence = ({ consoleErrors, pageErrors, foreign }: Watched) =>
  expect({ consoleErrors, pageErrors, foreign }).toEqual({ consoleErrors: [], pageErrors: [], foreign: [] })
