// What axe finds on a page, a line each.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { root } from '../../house/tree.ts'

const axeSource = readFileSync(join(root, 'node_modules/axe-core/axe.min.js'), 'utf8')

interface Axe {
  run(
    options?: object,
  ): Promise<{ violations: { id: string; nodes: { target: unknown; failureSummary?: string }[] }[] }>
}

/** What axe finds on the page by all its rules, or by those named; a line each. */
export async function violations(page: Page, rules?: readonly string[]): Promise<string[]> {
  await page.evaluate(axeSource)
  return page.evaluate(async (named) => {
    const { violations: found } = await (window as unknown as { axe: Axe }).axe.run(
      named ? { runOnly: named } : {},
    )
    return found.flatMap(({ id, nodes }) =>
      nodes.map((n) => `${id}: ${JSON.stringify(n.target)} ${n.failureSummary}`),
    )
  }, rules)
}
