// A stranger's job, log and link in a real browser: shown as text and never run; and a whole walk asks no other host for anything.
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { deflateRawSync } from 'node:zlib'
import { demo } from '../../jobs.ts'
import { openBuilt, type Site, type Watched } from '../page.ts'
import { opened, sentence, settled, silence } from './sheet.ts'

let site: Site
beforeAll(async () => {
  site = await openBuilt()
})
afterAll(() => site?.close())

/** What would show on the window if any of it ran. */
const IMAGE = '<img src=x onerror="ran=1">'
const SCRIPT = '"><script>ran=1</script>'
const TURNED = '\u202egnp.exe\u0000'
const hostile = {
  ...demo('appleMill'),
  name: `${IMAGE}${TURNED}`,
  about: `${SCRIPT} javascript:ran=1 \${ran=1} {{ran=1}}`,
  variants: [
    { name: SCRIPT, changes: { 'heat.cooling': 'shaft fan' } },
    { name: '__proto__', changes: {} },
    { name: 'constructor', changes: {} },
  ],
}
hostile.duty = {
  ...hostile.duty,
  phases: hostile.duty.phases.map((phase, n) => (n === 0 ? { ...phase, name: IMAGE } : phase)),
}
hostile.supply = {
  ...hostile.supply,
  volts: { value: '120 V', source: `${IMAGE} ${SCRIPT}` },
}

/** Notes every breach of the page's policy, from its first script on. */
const watch = (page: Page) =>
  page.addInitScript(() => {
    const noted: string[] = []
    Object.assign(window, { noted })
    document.addEventListener('securitypolicyviolation', ({ effectiveDirective, blockedURI }) =>
      noted.push(`${effectiveDirective} ${blockedURI}`),
    )
  })
const breaches = (page: Page) => page.evaluate(() => (window as unknown as { noted: string[] }).noted)

/** Whether anything ran, or became an element, in the page or any of its shadow trees. */
const taken = (page: Page) =>
  page.evaluate(() => {
    const all = (root: ParentNode): Element[] =>
      [...root.querySelectorAll('*')].flatMap((each) => [
        each,
        ...(each.shadowRoot ? all(each.shadowRoot) : []),
      ])
    const made = all(document).filter(
      (each) =>
        (each.localName === 'img' && each.getAttribute('src') === 'x') ||
        (each.localName === 'script' && /ran=1/.test(each.textContent ?? '')) ||
        [...each.attributes].some(({ name, value }) => /^on/.test(name) || /^javascript:/.test(value)),
    )
    return { ran: 'ran' in window, made: made.map(({ outerHTML }) => outerHTML.slice(0, 120)) }
  })
const NOTHING = { ran: false, made: [] }

/** Looks at every zone until it has something to show. */
async function walk({ page }: Watched): Promise<void> {
  for (const letter of 'ABCDEFGHJKL') {
    await page.locator(`#${letter}`).scrollIntoViewIfNeeded()
    await page.locator(`#${letter} :is(svg, table, dl, ol, ul, button)`).first().waitFor({ timeout: 60_000 })
  }
  await settled(page)
}

it('a whole walk asks no other host for anything, within a policy that lets no script in but its own', async () => {
  const watched = await site.newPage()
  const { page } = watched
  await watch(page)
  await page.goto(site.demo)
  await expect.poll(() => sentence(page), { timeout: 30_000 }).not.toBe('')
  await walk(watched)
  const licences = await page.evaluate(async () => {
    const link = document.querySelector<HTMLAnchorElement>('footer a')!
    return (await fetch(link.href)).text()
  })
  expect(licences).toMatch(/^lit-html \d/m)
  expect(await breaches(page)).toEqual([])
  silence(watched)

  // The policy is in force, and its breaches are heard.
  const ran = await page.evaluate(async () => {
    const script = document.createElement('script')
    script.textContent = 'window.ran = 1'
    document.body.append(script)
    const button = document.createElement('button')
    button.setAttribute('onclick', 'window.ran = 1')
    button.click()
    const style = document.createElement('style')
    style.textContent = 'body { --ran: 1 }'
    document.body.append(style)
    await fetch('http://127.0.0.1:9/').catch(() => {})
    await new Promise((done) => setTimeout(done))
    return ['ran' in window, getComputedStyle(document.body).getPropertyValue('--ran')]
  })
  expect(ran).toEqual([false, ''])
  expect((await breaches(page)).map((each) => each.split(' ')[0])).toEqual(
    expect.arrayContaining(['script-src-elem', 'script-src-attr', 'style-src-elem', 'connect-src']),
  )
  await page.context().close()
})

it('a stranger’s job is shown as text, wherever it comes from', async () => {
  const watched = await opened(site)
  const { page } = watched
  await watch(page)
  await page.locator('top-bar input[type=file]').setInputFiles({
    name: `${IMAGE}.json`,
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(hostile)),
  })
  await page.locator('variants-zone .pick', { hasText: SCRIPT }).first().waitFor()
  await walk(watched)
  expect(await taken(page)).toEqual(NOTHING)
  expect(await page.title()).toBe(`${IMAGE}□gnp.exe□ – Dutywright`)
  expect((await page.locator('variants-zone .pick').allTextContents()).join()).toContain('__proto__')

  // Its log, and the name of the log's file.
  const log = `time (min),can (°C),amps,${SCRIPT},__proto__,amps ${IMAGE}\n${Array.from({ length: 20 }, (_, n) => `${n},${20 + n},5,=1+1,@x,-1`).join('\n')}`
  await page.locator('warm-up-step input[type=file]').setInputFiles({
    name: `${IMAGE}\u202e.csv`,
    mimeType: 'text/csv',
    buffer: Buffer.from(log),
  })
  await page.locator('bench-zone').getByText(`${IMAGE}□.csv`).first().waitFor()
  expect(await taken(page)).toEqual(NOTHING)

  // Kept in the browser, and opened again.
  await page.getByRole('button', { name: 'Copy as new variant', exact: true }).first().click()
  await expect
    .poll(() =>
      page.evaluate(() => Object.keys(localStorage).some((key) => key.startsWith('dutywright job '))),
    )
    .toBe(true)
  await page.reload()
  await page.locator('variants-zone .pick', { hasText: SCRIPT }).first().waitFor()
  await settled(page)
  expect(await taken(page)).toEqual(NOTHING)
  silence(watched)

  // By a link, in a page of its own.
  const other = await opened(site)
  const packed = deflateRawSync(JSON.stringify(hostile)).toString('base64url')
  await other.page.goto(`${site.url}#job=1${packed}`)
  await other.page.locator('variants-zone .pick', { hasText: SCRIPT }).first().waitFor()
  await settled(other.page)
  expect(await taken(other.page)).toEqual(NOTHING)
  silence(other)

  // An element made of such a name would have been found.
  await other.page.evaluate((name) => document.body.insertAdjacentHTML('beforeend', name), IMAGE)
  expect((await taken(other.page)).made).toHaveLength(1)
})

it('names of a hundred thousand characters and files of many millions are refused with what would do', async () => {
  const watched = await opened(site)
  const { page } = watched
  const before = await page.title()
  const give = (text: string) =>
    page
      .locator('top-bar input[type=file]')
      .setInputFiles({ name: 'a.json', mimeType: 'application/json', buffer: Buffer.from(text) })
  await give(JSON.stringify({ ...hostile, name: 'x'.repeat(100_000) }))
  await page.getByText('Name of the job is 100000 characters long.').first().waitFor()
  await give(' '.repeat(13_000_000))
  await page.getByText('The file holds 4 million characters.').first().waitFor()
  expect(await page.title()).toBe(before)
  silence(watched)
})
