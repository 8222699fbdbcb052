// Which Node tests are quick: measured once by running them all, then kept.
import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, readFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import { root, sources } from '../house/tree.ts'

/** Longest a test file may take to have mutants tried on it, ms. */
const LONGEST = 1000

interface Report {
  readonly testResults: readonly {
    readonly name: string
    readonly startTime: number
    readonly endTime: number
  }[]
}

/** Test files of the Node project that take under a second each. Of sim alone: they start no process and wait for no clock. */
export function quickTests(anew: boolean): string[] {
  const folder = join(root, 'node_modules/.cache/mutate')
  const kept = join(folder, 'times.json')
  mkdirSync(folder, { recursive: true })
  if (anew || !existsSync(kept))
    spawnSync(
      process.execPath,
      [
        join(root, 'node_modules/vitest/vitest.mjs'),
        ...['run', '--config', 'test/vitest.config.ts', '--project', 'node'],
        ...['--reporter=json', `--outputFile=${kept}`],
      ],
      { cwd: root, stdio: 'inherit' },
    )
  const { testResults } = JSON.parse(readFileSync(kept, 'utf8')) as Report
  const slow = new Set(
    testResults
      .filter(({ startTime, endTime }) => endTime - startTime >= LONGEST)
      .map(({ name }) => relative(root, name).replaceAll('\\', '/')),
  )
  // One that was written since is tried.
  return [...sources('test/sim').keys()].filter((name) => name.endsWith('.test.ts') && !slow.has(name)).sort()
}
