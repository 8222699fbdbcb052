// README and DEVELOPERS hold what they say: their commands run, their links lead somewhere.
import { spawn, spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { commandsOf } from './commands.ts'
import { root } from './tree.ts'

const pages = ['README.md', 'DEVELOPERS.md'].map((name) => ({
  name,
  text: readFileSync(join(root, name), 'utf8'),
}))
const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
  readonly scripts: Readonly<Record<string, string>>
}

/** Commands that something else runs, since they take long or write into the tree; and what does. */
const ELSEWHERE: Readonly<Record<string, string>> = {
  test: '.ci/run',
  schema: 'test/scenarios/schema.test.ts',
  campaign: 'test/campaigns',
  shots: 'test/browser/shots.test.ts',
  gallery: 'test/browser/gallery.test.ts',
}
/** Commands that only somebody's patience runs: they measure, and nothing depends on what they say. */
const BY_HAND = ['bench', 'mutate']

const commands = pages.flatMap(({ text }) => commandsOf(text))
const here = commands.filter(
  ({ script }) => scripts[script]?.startsWith('tsx scenarios/') && !(script in ELSEWHERE),
)

let folder = ''
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'readme-'))
})
afterAll(() => rmSync(folder, { recursive: true }))

const tsx = (script: string, args: readonly string[]) =>
  [process.execPath, ['--import', 'tsx', script.replace(/^.*tsx /, ''), ...args], { cwd: root }] as const

describe('commands', () => {
  it('each names a script there is, and each script is run by something', () => {
    expect(here.length).toBeGreaterThan(15)
    for (const { line, script } of commands) {
      expect(Object.keys(scripts), line).toContain(script)
      const elsewhere = ELSEWHERE[script]
      if (elsewhere) expect(existsSync(join(root, elsewhere)), line).toBe(true)
      else expect([...here.map((each) => each.script), ...BY_HAND, 'start'], line).toContain(script)
    }
  })

  it.each(here.map(({ line, script, args }) => ({ line: line.replace(/\s+#.*/, ''), script, args })))(
    '$line',
    ({ script, args }) => {
      const given = args.map((arg) => (arg === 'trace.csv' ? join(folder, arg) : arg))
      const { status, stdout, stderr } = spawnSync(...tsx(scripts[script], given))
      expect(status, String(stderr)).toBe(0)
      expect(String(stdout).length).toBeGreaterThan(20)
    },
  )

  it('npm start serves the page', async () => {
    const server = spawn(...tsx(scripts.start, []))
    try {
      let said = ''
      const address = await new Promise<string>((found, failed) => {
        server.stdout.on('data', (text) => {
          said += text
          const match = /http:\/\/\S+/.exec(said)
          if (match) found(match[0])
        })
        server.on('exit', () => failed(new Error(said)))
      })
      const page = await fetch(address)
      expect(await page.text()).toContain('<title>Dutywright')
    } finally {
      server.kill()
    }
  })
})

it('links of the pages lead to files there are', () => {
  const links = pages.flatMap(({ name, text }) =>
    [...text.matchAll(/\]\((?!https?:)([^)#]+)(?:#[^)]*)?\)/g)].map(([, to]) => ({ name, to })),
  )
  expect(links.length).toBeGreaterThan(2)
  for (const { name, to } of links) expect(existsSync(join(root, to)), `${name}: ${to}`).toBe(true)
})
