// How the gallery is built and served: as the site is, but apart from it.
import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vite'
import site from '../vite.config.ts'

const project = fileURLToPath(new URL('../..', import.meta.url))

export default defineConfig((env) => {
  const own = site(env)
  return {
    ...own,
    plugins: [],
    root: `${project}ui/gallery`,
    // Its data lie in one script: nobody waits for it over a wire.
    build: {
      ...own.build,
      outDir: `${project}node_modules/.cache/gallery`,
      chunkSizeWarningLimit: 8000,
      rolldownOptions: {},
    },
  }
})
