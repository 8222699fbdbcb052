// `npm test`: every check in order, each with its name and time; all of them run, and the exit code says.
import { spawnSync } from 'node:child_process'
import { rmSync } from 'node:fs'
import { join } from 'node:path'
import { findBrowser } from './browser/find.ts'
import { buildSite } from './browser/page.ts'
import { root } from './house/tree.ts'

const failed: string[] = []

/** Runs one step, a Node script under node_modules, and notes whether it failed. */
function step(name: string, script: string, args: string[], env: NodeJS.ProcessEnv = {}): void {
  console.log(`\n── ${name}`)
  const start = performance.now()
  const { status } = spawnSync(process.execPath, [join(root, 'node_modules', script), ...args], {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, ...env },
  })
  const seconds = ((performance.now() - start) / 1000).toFixed(1)
  console.log(`── ${name}: ${status === 0 ? 'passed' : 'FAILED'} in ${seconds} s`)
  if (status !== 0) failed.push(name)
}

const vitest = (project: string) => ['run', '--config', 'test/vitest.config.ts', '--project', project]

step('lint', '@biomejs/biome/bin/biome', ['check', '--error-on-warnings'])
step('types', 'typescript/bin/tsc', ['-b'])
// The glob stands before --strict: behind it, nothing would be checked.
step('templates', 'lit-analyzer/cli.js', ['ui/**/*.ts', '--strict'])
step('node tests', 'vitest/vitest.mjs', vitest('node'))

const browser = await findBrowser()
if (typeof browser === 'string') {
  if (process.env.CI) failed.push('browser tests')
} else {
  const site = await buildSite().catch((error: Error) => {
    console.error(error.message)
    failed.push('build')
  })
  if (site) {
    step('browser tests', 'vitest/vitest.mjs', vitest('browser'), { TEST_SITE: site })
    rmSync(site, { recursive: true })
  }
}

console.log(failed.length ? `\nFailed: ${failed.join(', ')}` : '\nAll passed.')
if (typeof browser === 'string') console.log(`browser tests not run: ${browser}`)
process.exitCode = failed.length ? 1 : 0
