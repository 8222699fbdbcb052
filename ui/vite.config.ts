// How the site is built and served: from ui/ to dist/, at any address (relative paths), caches out of sight.
import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vite'

const project = fileURLToPath(new URL('..', import.meta.url))

export default defineConfig(({ command, isPreview }) => {
  // Inside a test run NODE_ENV is 'test', and Lit's development bundle would be taken.
  if (command === 'build' && !isPreview) process.env.NODE_ENV = 'production'
  return {
    root: `${project}ui`,
    base: './',
    appType: 'mpa', // a missing file is a 404, as on any static host
    cacheDir: `${project}node_modules/.cache/vite`,
    build: { outDir: `${project}dist`, emptyOutDir: true, target: 'es2023' },
    worker: { format: 'es' },
    server: { fs: { allow: [project] } },
  }
})
