// Finds a browser to test in: one named, one installed, or (Linux x64) the one npm brings, unpacked by us.
import { execFile } from 'node:child_process'
import { createReadStream, createWriteStream, existsSync } from 'node:fs'
import { chmod, mkdir, mkdtemp, readFile, rename, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { pipeline } from 'node:stream/promises'
import { promisify } from 'node:util'
import { createBrotliDecompress } from 'node:zlib'
import { chromium } from 'playwright-core'
import { root } from '../house/tree.ts'

/** A browser to launch: program, and the environment it wants on top of ours. */
export interface Found {
  program: string
  env: Record<string, string>
}

const packed = join(root, 'node_modules/@sparticuz/chromium')
const cache = join(root, 'node_modules/.cache')

/** The browser for tests, or a plain sentence that says why there is none. */
export async function findBrowser(): Promise<Found | string> {
  const named = process.env.TEST_BROWSER
  if (named)
    return existsSync(named) ? { program: named, env: {} } : `TEST_BROWSER names ${named}, which is not there`
  const program = installed().find((path) => existsSync(path))
  if (program) return { program, env: {} }
  if (process.platform === 'linux' && process.arch === 'x64' && existsSync(packed))
    return unpacked().catch((error: Error) => `the packed browser does not unpack: ${error.message}`)
  return 'no Chrome, Chromium or Edge found; set TEST_BROWSER to the path of one'
}

/** Launches what findBrowser gave. The caller closes it. */
export function launch({ program, env }: Found) {
  const asRoot = process.platform === 'linux' && process.getuid?.() === 0
  const quiet = ['background-networking', 'component-update', 'sync'].map((what) => `--disable-${what}`)
  return chromium.launch({
    executablePath: program,
    args: [...quiet, '--no-first-run', ...(asRoot ? ['--no-sandbox'] : [])],
    env: { ...process.env, ...env } as Record<string, string>,
  })
}

/** Where browsers are installed by their own installers, on this system. */
function installed(): string[] {
  const { env, platform } = process
  if (platform === 'darwin')
    return ['Google Chrome', 'Chromium', 'Microsoft Edge'].flatMap((name) =>
      ['', env.HOME ?? ''].map((home) => `${home}/Applications/${name}.app/Contents/MacOS/${name}`),
    )
  if (platform === 'win32')
    return ['Google\\Chrome\\Application\\chrome.exe', 'Chromium\\Application\\chrome.exe']
      .concat('Microsoft\\Edge\\Application\\msedge.exe')
      .flatMap((tail) =>
        [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA]
          .filter((base) => base !== undefined)
          .map((base) => `${base}\\${tail}`),
      )
  return ['google-chrome', 'google-chrome-stable', 'chromium', 'chromium-browser', 'microsoft-edge']
    .map((name) => `/usr/bin/${name}`)
    .concat('/opt/google/chrome/chrome', '/snap/bin/chromium')
}

/** The browser npm brought, unpacked once for each version; two at once is fine, the first to finish stays. */
async function unpacked(): Promise<Found> {
  const { version } = JSON.parse(await readFile(join(packed, 'package.json'), 'utf8')) as { version: string }
  const home = join(cache, `chromium-${version}`)
  if (!existsSync(home)) {
    await mkdir(cache, { recursive: true })
    const work = await mkdtemp(`${home}-`)
    await unbrotli('chromium', join(work, 'chromium'))
    await chmod(join(work, 'chromium'), 0o755)
    for (const name of ['al2023.tar', 'fonts.tar']) {
      await unbrotli(name, join(work, name))
      await promisify(execFile)('tar', ['-xf', join(work, name), '-C', work, '--no-same-owner'])
      await rm(join(work, name))
    }
    await writeFile(join(work, 'fonts.conf'), fontsConf(home))
    await rename(work, home).catch(async (error) => {
      await rm(work, { recursive: true })
      if (!existsSync(home)) throw error
    })
  }
  return {
    program: join(home, 'chromium'),
    env: { LD_LIBRARY_PATH: join(home, 'lib'), FONTCONFIG_FILE: join(home, 'fonts.conf') },
  }
}

const unbrotli = (name: string, to: string) =>
  pipeline(
    createReadStream(join(packed, 'bin', `${name}.br`)),
    createBrotliDecompress(),
    createWriteStream(to),
  )

/** The packed font first; those of the system only for signs it lacks. */
const fontsConf = (home: string) => `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>${home}/fonts</dir>
  <dir>/usr/share/fonts</dir>
  <match target="pattern">
    <edit name="family" mode="append" binding="weak"><string>Open Sans</string></edit>
  </match>
  <cachedir>${home}/fontcache</cachedir>
</fontconfig>
`
