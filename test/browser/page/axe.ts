// What axe finds on a page, a line each.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { root } from '../../house/tree.ts'

const axeSource = readFileSync(join(root, 'node_modules/axe-core/axe.min.js'), 'utf8')

interface Axe {
  run(): Promise<{ violations: { id: string; nodes: { target: unknown; failureSummary?: string }[] }[] }>
}

/** What axe finds, a line each. */
export async function violations(page: Page): Promise<string[]> {
  await page.evaluate(axeSource)
  return page.evaluate(async () => {
    const { violations: found } = await (window as unknown as { axe: Axe }).axe.run()
    return found.flatMap(({ id, nodes }) =>
      nodes.map((n) => `${id}: ${JSON.stringify(n.target)} ${n.failureSummary}`),
    )
  })
}
