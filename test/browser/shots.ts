// `npm run shots`: photographs every zone and state of the page into node_modules/.cache/shots, with one sheet of all.
import { mkdir, readFile, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { root } from '../house/tree.ts'
import { openBuilt, type Site } from './page.ts'
import { PAGE_SHOTS } from './shots/page.ts'
import type { Shot } from './shots/shot.ts'
import { STUDY_SHOTS } from './shots/studies.ts'

const folder = join(root, 'node_modules/.cache/shots')

async function take(site: Site, shot: Shot): Promise<void> {
  const { page, consoleErrors, pageErrors } = await site.newPage(shot.view)
  await page.goto(shot.empty ? site.url : site.demo)
  await page.locator(shot.empty ? 'answer-zone .said' : 'answer-zone .sentence').waitFor()
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
const chosen = [...PAGE_SHOTS, ...STUDY_SHOTS].filter(
  ({ name }) => wanted.length === 0 || wanted.some((word) => name.includes(word)),
)
if (wanted.length === 0) await rm(folder, { recursive: true, force: true })
await mkdir(folder, { recursive: true })
const site = await openBuilt()
try {
  const taken: Shot[] = []
  for (const shot of chosen)
    await take(site, shot).then(
      () => taken.push(shot),
      (error: Error) => {
        console.error(`${shot.name}: ${error.message}`)
        process.exitCode = 1
      },
    )
  await contactSheet(site, taken)
} finally {
  await site.close()
}
await writeFile(join(folder, 'list.txt'), `${chosen.map(({ name }) => name).join('\n')}\n`)
console.log(`${chosen.length} photographs in ${folder}; all.png shows them together.`)
