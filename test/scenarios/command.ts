// A command of the project, run as its users run it: what is on which stream, and the exit code.
import { execFile } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll } from 'vitest'
import { root } from '../house/tree.ts'

export interface Outcome {
  readonly code: number
  readonly out: string
  readonly err: string
}

const launch = (program: string, args: readonly string[]): Promise<Outcome> =>
  new Promise((done) => {
    execFile(program, args, { cwd: root }, (error, out, err) => {
      done({ code: error ? Number(error.code) : 0, out, err })
    })
  })

/** `npm run -s SCRIPT -- …` in the project's folder. */
export const npm = (script: string, ...args: string[]) => launch('npm', ['run', '-s', script, '--', ...args])

/** What npm would start, started without it: half a second less. */
export const direct = (script: string, ...args: string[]) =>
  launch(process.execPath, [join(root, 'node_modules/tsx/dist/cli.mjs'), join(root, script), ...args])

/** A folder for the files of one test file, gone when that is through. */
export function folderForFiles() {
  const folder = mkdtempSync(join(tmpdir(), 'dutywright-'))
  afterAll(() => rmSync(folder, { recursive: true }))
  const file = (name: string, text: string) => {
    const path = join(folder, name)
    writeFileSync(path, text)
    return path
  }
  return { folder, file }
}

/** Runs them before the tests, two at a time (as many as the smallest machine has cores), and gives each one's outcome. */
export function outcomesOf<Name extends string>(asked: Readonly<Record<Name, () => Promise<Outcome>>>) {
  const outcomes: Partial<Record<Name, Outcome>> = {}
  beforeAll(async () => {
    const names = Object.keys(asked) as Name[]
    const work = async () => {
      for (let name = names.shift(); name !== undefined; name = names.shift())
        outcomes[name] = await asked[name]()
    }
    await Promise.all([work(), work()])
  }, 120_000)
  return (name: Name): Outcome => outcomes[name]!
}
