// How the site is built and served: from ui/ to dist/, at any address (relative paths), caches out of sight.
import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vite'
import { chunks, WORKERS_FILE } from './build/chunks.ts'
import { licences } from './build/licences.ts'
import { offline } from './build/offline.ts'
import { oneBuild } from './build/oneBuild.ts'
import { tight } from './build/tight.ts'

const project = fileURLToPath(new URL('..', import.meta.url))

export default defineConfig(({ command, isPreview }) => {
  // Inside a test run NODE_ENV is 'test', and Lit's development bundle would be taken.
  if (command === 'build' && !isPreview) process.env.NODE_ENV = 'production'
  return {
    root: `${project}ui`,
    base: './',
    appType: 'mpa', // a missing file is a 404, as on any static host
    cacheDir: `${project}node_modules/.cache/vite`,
    plugins: [oneBuild(), tight(), licences(), offline()],
    build: {
      outDir: `${project}dist`,
      emptyOutDir: true,
      target: 'es2023',
      assetsInlineLimit: 0, // faces are files: the page's policy allows no other, and most readers need only some
      rolldownOptions: { output: { codeSplitting: chunks() } },
      modulePreload: {
        polyfill: false, // every browser that reads this has it
        // What the page's modules import is asked for ahead of them. A worker has no document to put that into.
        resolveDependencies: (_file, imports, { hostId }) => (WORKERS_FILE.test(hostId) ? [] : imports),
      },
    },
    worker: { format: 'es' },
    server: { fs: { allow: [project] } },
  }
})
