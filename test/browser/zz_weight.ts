import { openBuilt } from './page.ts'
const [, , out, ...widths] = process.argv
const site = await openBuilt()
for (const width of widths.map(Number)) {
  const { page, consoleErrors, pageErrors } = await site.newPage({ width })
  page.on('console', (m) => console.log('console', m.text()))
  await page.goto(site.demo)
  await page.waitForFunction(
    () => document.querySelector('answer-zone')?.shadowRoot?.querySelector('.sentence')?.textContent,
  )
  for (const id of 'CDEFGHJKL') {
    await page.locator('#' + id).scrollIntoViewIfNeeded()
    await page.waitForTimeout(1200)
  }
  await page.locator('ratio-zone svg').first().waitFor({ timeout: 40000 })
  await page.locator('map-zone svg').first().waitFor({ timeout: 40000 })
  await page.locator('sure-zone svg').first().waitFor({ timeout: 40000 })
  await page.waitForTimeout(4000)
  const text = (await page.evaluate(
    "(()=>{const walk=(n)=>n.nodeType===3?n.data:n.nodeName==='STYLE'||n.nodeName==='SCRIPT'||n.nodeType===8?'':(n.shadowRoot?walk(n.shadowRoot):'')+[...n.childNodes].map(walk).join('');return walk(document.body).replace(/\\s+/g,' ')})()",
  )) as string
  const { writeFileSync } = await import('node:fs')
  writeFileSync(`${out}-${width}.txt`, text.replace(/([.!?]) /g, '$1\n'))
  await page.evaluate(() => scrollTo(0, 0))
  await page.screenshot({ path: `${out}-${width}.png`, fullPage: true })
  console.log(width, text.length, consoleErrors, pageErrors)
}
await site.close()
