// Two projects: node (everything but test/browser) and browser (Node tests that drive a real browser).
import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

const root = fileURLToPath(new URL('..', import.meta.url))

export default defineConfig({
  root,
  cacheDir: `${root}node_modules/.cache/vitest`,
  test: {
    coverage: {
      include: ['sim/**/*.ts', 'workers/**/*.ts', 'ui/**/*.ts'],
      // test/sim would match too.
      exclude: ['test/**'],
      reportsDirectory: 'node_modules/.cache/coverage',
    },
    projects: [
      {
        extends: true,
        test: {
          name: 'node',
          include: ['test/**/*.test.ts'],
          exclude: ['test/browser/**'],
          testTimeout: 60_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          // A real browser on a busy machine: what it will show may take a while.
          expect: { poll: { timeout: 30_000 } },
          include: ['test/browser/**/*.test.ts'],
          testTimeout: 180_000,
          hookTimeout: 180_000,
          maxWorkers: 1,
          fileParallelism: false,
        },
      },
    ],
  },
})
