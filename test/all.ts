// `npm test`: every check in order, each with its name and time; all of them run, and the exit code says.
import { spawn } from 'node:child_process'
import { rmSync } from 'node:fs'
import { join } from 'node:path'
import { findBrowser } from './browser/find.ts'
import { buildSite } from './browser/page.ts'
import { root } from './house/tree.ts'

const failed: string[] = []

/** Runs one step, a Node script under node_modules, and notes whether it failed. `quiet`: its words come when it is done. */
function step(name: string, script: string, args: string[], env: NodeJS.ProcessEnv = {}, quiet = false) {
  if (!quiet) console.log(`\n── ${name}`)
  const start = performance.now()
  const child = spawn(process.execPath, [join(root, 'node_modules', script), ...args], {
    cwd: root,
    stdio: quiet ? ['ignore', 'pipe', 'pipe'] : 'inherit',
    env: { ...process.env, ...env },
  })
  const words: Buffer[] = []
  child.stdout?.on('data', (data: Buffer) => words.push(data))
  child.stderr?.on('data', (data: Buffer) => words.push(data))
  return new Promise<void>((resolve) =>
    child.on('close', (status) => {
      const seconds = ((performance.now() - start) / 1000).toFixed(1)
      if (quiet) console.log(`\n── ${name}\n${Buffer.concat(words).toString()}`)
      console.log(`── ${name}: ${status === 0 ? 'passed' : 'FAILED'} in ${seconds} s`)
      if (status !== 0) failed.push(name)
      resolve()
    }),
  )
}

const vitest = (project: string) => ['run', '--config', 'test/vitest.config.ts', '--project', project]

await step('lint', '@biomejs/biome/bin/biome', ['check', '--error-on-warnings'])
await step('types', 'typescript/bin/tsc', ['-b'])
// The glob stands before --strict: behind it, nothing would be checked.
await step('templates', 'lit-analyzer/cli.js', ['ui/**/*.ts', '--strict'])

const browser = await findBrowser()
if (typeof browser === 'string' && process.env.CI) failed.push('browser tests')
const site =
  typeof browser === 'string'
    ? null
    : await buildSite().catch((error: Error) => {
        console.error(error.message)
        failed.push('build')
        return null
      })
// Side by side: a browser waits for its page most of the time, and the other core would wait with it.
await Promise.all([
  step('node tests', 'vitest/vitest.mjs', vitest('node')),
  ...(site ? [step('browser tests', 'vitest/vitest.mjs', vitest('browser'), { TEST_SITE: site }, true)] : []),
])
if (site) rmSync(site, { recursive: true })

console.log(failed.length ? `\nFailed: ${failed.join(', ')}` : '\nAll passed.')
if (typeof browser === 'string') console.log(`browser tests not run: ${browser}`)
process.exitCode = failed.length ? 1 : 0
