// `npm start`: builds the site and serves it; with `--host` to the local network as well. `npm run gallery`: the gallery.
import { fileURLToPath } from 'node:url'
import { build, preview } from 'vite'

const gallery = process.argv.includes('--gallery')
const configFile = fileURLToPath(new URL(`${gallery ? 'gallery/' : ''}vite.config.ts`, import.meta.url))
const { env, platform } = process
const hasDisplay = platform === 'darwin' || platform === 'win32' || !!(env.DISPLAY || env.WAYLAND_DISPLAY)

await build({ configFile, logLevel: 'warn' })
const server = await preview({
  configFile,
  preview: {
    port: 4173, // busy? the next free one
    host: process.argv.includes('--host'),
    open: hasDisplay && !env.CI && process.stdout.isTTY === true,
  },
})

const { local = [], network = [] } = server.resolvedUrls ?? {}
for (const address of local) console.log(`${gallery ? 'The gallery' : 'Dutywright'} is at ${address}`)
for (const address of network) console.log(`On the local network: ${address}`)
console.log('Stop with Ctrl+C.')
