// The tests that mutants are tried on: the quick ones of the Node project, named by the command.
import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: { include: (process.env.QUICK_TESTS ?? '').split(','), testTimeout: 20_000 },
})
