// The service worker of a build: bundled by itself, and told every file of the site with its hash.
import { createHash } from 'node:crypto'
import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Plugin } from 'vite'

const SOURCE = fileURLToPath(new URL('../offline/serviceWorker.ts', import.meta.url))
const NAME = 'serviceWorker.js'

/** The first 72 bits of SHA-256, in base64: twelve characters. */
const hashOf = (bytes: Buffer | string): string =>
  createHash('sha256').update(bytes).digest().subarray(0, 9).toString('base64')

/** Every file of a folder and below, by its path from there with `/`. */
const filesIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) =>
      join(parentPath, name)
        .slice(folder.length + 1)
        .replaceAll('\\', '/'),
    )
    .sort()

/** Adds `serviceWorker.js` to the site: see ui/offline/serviceWorker.ts for what it does with the list. */
export function offline(): Plugin {
  return {
    name: 'offline',
    apply: 'build',
    buildStart() {
      this.emitFile({ type: 'chunk', id: SOURCE, fileName: NAME })
    },
    // When everything is written: what is hashed is what is served.
    writeBundle({ dir }) {
      if (!dir) return this.error('the site needs a folder')
      const files = Object.fromEntries(
        filesIn(dir)
          .filter((file) => file !== NAME)
          .map((file) => [file === 'index.html' ? '' : file, hashOf(readFileSync(join(dir, file)))]),
      )
      const site = { version: hashOf(JSON.stringify(files)), files }
      const worker = join(dir, NAME)
      writeFileSync(worker, `const SITE=${JSON.stringify(site)};${readFileSync(worker, 'utf8')}`)
    },
  }
}
