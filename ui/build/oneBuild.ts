// The page and its workers in one build: what both need is a chunk they share, not a copy each.
import { fileURLToPath } from 'node:url'
import type { Plugin } from 'vite'

const WORKER = fileURLToPath(new URL('../../workers/worker.ts', import.meta.url))
/** Where the worker is started, and the words that do it: see workers/seats/browser.ts. */
const STARTED = /workers\/seats\/browser\.ts$/
const ADDRESS = "new URL('../worker.ts', import.meta.url)"

/** Left alone, the bundler builds the worker apart, with a second copy of nearly everything in sim/. */
export function oneBuild(): Plugin {
  let worker = ''
  return {
    name: 'one-build',
    apply: 'build',
    enforce: 'pre',
    buildStart() {
      worker = this.emitFile({ type: 'chunk', id: WORKER, name: 'worker' })
    },
    transform(code, id) {
      if (!STARTED.test(id)) return undefined
      if (!code.includes(ADDRESS)) this.error(`${id} no longer starts the worker by ${ADDRESS}`)
      return code.replace(ADDRESS, `import.meta.ROLLUP_FILE_URL_${worker}`)
    },
  }
}
