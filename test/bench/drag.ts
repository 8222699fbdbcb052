// An input dragged on the built page: the longest task on its main thread, and how soon the answer follows.
import type { Page } from 'playwright-core'
import { openBuilt } from '../browser/page.ts'

export interface Dragged {
  /** Longest task while dragging, ms, of each drag; from the last move to the answer's numbers, ms, where they changed. */
  readonly longest: readonly number[]
  readonly follows: readonly number[]
}

const DRAGS = 5
const MOVES = 30
/** Pixels a move goes. */
const BY = 2

interface TraceEvent {
  readonly name: string
  readonly ph: string
  readonly pid: number
  readonly tid: number
  /** µs */
  readonly dur?: number
  readonly args?: { readonly name?: string }
}

/** Longest task of any renderer's main thread in a trace, ms. */
function longestTask(trace: Buffer): number {
  const { traceEvents } = JSON.parse(trace.toString()) as { readonly traceEvents: readonly TraceEvent[] }
  const main = new Set(
    traceEvents
      .filter(({ name, args }) => name === 'thread_name' && args?.name === 'CrRendererMain')
      .map(({ pid, tid }) => `${pid} ${tid}`),
  )
  const tasks = traceEvents.filter(
    ({ name, ph, pid, tid }) => name.endsWith('RunTask') && ph === 'X' && main.has(`${pid} ${tid}`),
  )
  if (tasks.length === 0) throw new Error('The trace holds no task of the page.')
  return Math.max(...tasks.map(({ dur = 0 }) => dur)) / 1000
}

/** Notes on the page when the pointer last moved, and when the numbers of the answer last changed. */
const watch = (page: Page) =>
  page.evaluate(() => {
    const seen = { moved: 0, told: 0 }
    Object.assign(window, { seen })
    window.addEventListener('pointermove', () => (seen.moved = performance.now()), { capture: true })
    const numbers = document.querySelector('answer-zone')?.shadowRoot
    if (!numbers) throw new Error('The page has no answer.')
    let text = ''
    new MutationObserver(() => {
      const now = numbers.querySelector('dl.numbers')?.textContent ?? ''
      if (now !== text) seen.told = performance.now()
      text = now
    }).observe(numbers, { subtree: true, childList: true, characterData: true })
  })

const seen = (page: Page) =>
  page.evaluate(() => {
    const { moved, told } = (window as unknown as { seen: { moved: number; told: number } }).seen
    return { moved, told }
  })

/** Drags the end of the milling step about, five times; or why that cannot be done here. */
export async function dragged(): Promise<Dragged | string> {
  let site: Awaited<ReturnType<typeof openBuilt>>
  try {
    site = await openBuilt()
  } catch (error) {
    return error instanceof Error ? error.message : 'no browser'
  }
  try {
    const { page } = await site.newPage()
    await page.goto(site.demo)
    await page.locator('answer-zone dl.numbers').waitFor({ timeout: 60_000 })
    const edge = page.getByRole('slider', { name: 'End of milling' })
    await edge.scrollIntoViewIfNeeded()
    await watch(page)
    const [longest, follows]: [number[], number[]] = [[], []]
    for (let drag = 0; drag < DRAGS; drag++) {
      const box = (await edge.boundingBox())!
      const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
      const way = drag % 2 === 0 ? -BY : BY
      await site.browser.startTracing(page, {
        categories: ['toplevel', 'devtools.timeline', 'disabled-by-default-devtools.timeline'],
      })
      await page.mouse.move(x, y)
      await page.mouse.down()
      for (let n = 1; n <= MOVES; n++) {
        await page.mouse.move(x + n * way, y)
        await page.waitForTimeout(16)
      }
      await page.waitForTimeout(400)
      const { moved, told } = await seen(page)
      await page.mouse.up()
      longest.push(longestTask(await site.browser.stopTracing()))
      // A last move of less than a second of work changes no number: there is nothing to follow.
      if (told > moved) follows.push(told - moved)
      await page.waitForTimeout(500)
    }
    return { longest, follows }
  } finally {
    await site.close()
  }
}
