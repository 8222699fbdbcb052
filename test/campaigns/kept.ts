// What campaigns have come to so far, a file each in .campaign/: trials by seed, so that a run can be taken up again.
import { createHash } from 'node:crypto'
import { mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { root, sources } from '../house/tree.ts'
import type { Trial } from './campaign.ts'

export interface Kept {
  readonly trials: Map<number, Trial>
  /** Time spent on all of them, ms. */
  ms: number
  /** States of the code they were made by. */
  readonly codes: Set<string>
}

const FOLDER = `${root}/.campaign`
const fileOf = (name: string) => `${FOLDER}/${name}.json`

/** The state of sim/: another one may come to other numbers. A campaign that was itself changed is run anew by hand. */
export function codeNow(): string {
  const hash = createHash('sha256')
  for (const [path, text] of sources('sim')) hash.update(`${path}\n${text}\n`)
  return hash.digest('hex').slice(0, 12)
}

/** What is kept of a campaign; nothing where there is no file, or none that can be read. */
export function load(name: string): Kept {
  try {
    const { trials, ms, codes } = JSON.parse(readFileSync(fileOf(name), 'utf8'))
    return {
      trials: new Map(Object.entries(trials).map(([seed, trial]) => [Number(seed), trial as Trial])),
      ms,
      codes: new Set(codes),
    }
  } catch {
    return { trials: new Map(), ms: 0, codes: new Set() }
  }
}

/** Writes it, whole or not at all. */
export function save(name: string, { trials, ms, codes }: Kept): void {
  mkdirSync(FOLDER, { recursive: true })
  const text = JSON.stringify({ ms, codes: [...codes], trials: Object.fromEntries(trials) })
  writeFileSync(`${fileOf(name)}.new`, text)
  renameSync(`${fileOf(name)}.new`, fileOf(name))
}

export const forget = (name: string): void => rmSync(fileOf(name), { force: true })
