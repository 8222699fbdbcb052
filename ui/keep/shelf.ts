// The shelf: jobs kept in this browser, one record each, with their steps of undo. Anything may have happened to them.
import { readFile } from '../../sim/read.ts'
import { FORMAT, type Scenario } from '../../sim/scenario.ts'

/** A job with its variants, and the number of the chosen one (0: as found). */
export interface Kept {
  readonly job: Scenario
  readonly chosen: number
}

export interface Shelved {
  /** Counts what has been written: another number than one's own tells of another tab. */
  readonly version: number
  /** When, ms since 1970. */
  readonly saved: number
  readonly now: Kept
  /** What has been seen to of the wiring. */
  readonly ticked: readonly string[]
  readonly past: readonly Kept[]
  readonly future: readonly Kept[]
}

/** What a place of the shelf holds: a record; nothing; something no longer readable, or not yet. */
export type Found = Shelved | 'nothing' | 'damaged' | 'newer'

export interface Listed {
  readonly slot: string
  readonly name: string
  readonly saved: number
}

const JOB = 'dutywright job '
const GOOD = 'dutywright good '
const DAMAGED = 'dutywright damaged '
const LAST = 'dutywright last'

/** A name for a place no job has yet. */
export const freshSlot = (): string => crypto.randomUUID()

type Shelf = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>

const whole = (value: unknown): value is number => Number.isSafeInteger(value) && (value as number) >= 0

function keptIn(value: unknown): Kept | null {
  if (typeof value !== 'object' || value === null || !('job' in value)) return null
  const found = readFile(JSON.stringify(value.job))
  if (!found.ok) return null
  return { job: found.scenario, chosen: 'chosen' in value && whole(value.chosen) ? value.chosen : 0 }
}

function recordIn(text: string | null): Found {
  if (text === null) return 'nothing'
  try {
    const value = JSON.parse(text) as Partial<Shelved>
    const now = keptIn(value.now)
    const format: unknown = value.now?.job?.format
    if (typeof format === 'number' && format > FORMAT) return 'newer'
    if (!now || !whole(value.version)) return 'damaged'
    const steps = (list: unknown) =>
      Array.isArray(list) ? list.map(keptIn).filter((each) => each !== null) : []
    return {
      version: value.version,
      saved: whole(value.saved) ? value.saved : 0,
      now,
      ticked: Array.isArray(value.ticked)
        ? value.ticked.filter((name) => typeof name === 'string').slice(0, 100)
        : [],
      past: steps(value.past),
      future: steps(value.future),
    }
  } catch {
    return 'damaged'
  }
}

/** The version of what is kept at a place, without reading all of it; null where nothing is. */
export function versionAt(shelf: Shelf, slot: string): number | null {
  const found = /^\{"version":(\d+)/.exec(shelf.getItem(JOB + slot) ?? '')
  return found ? Number(found[1]) : null
}

/** What is kept at a place. */
const recordAt = (shelf: Shelf, slot: string): Found => recordIn(shelf.getItem(JOB + slot))

/** A job taken off the shelf, and what was wrong with the record itself, where it is the copy that is given. */
export interface Taken {
  readonly found: Shelved | null
  readonly wrong: 'damaged' | 'newer' | null
}

/**
 * Takes a job off the shelf to be worked on. Where it cannot be read the copy that was last taken down whole is given
 * instead, if there is one: a damaged one is set aside, one of a newer version of the page stays for that.
 */
export function takeDown(shelf: Shelf, slot: string): Taken {
  const text = shelf.getItem(JOB + slot)
  const found = recordIn(text)
  if (typeof found !== 'string') {
    write(shelf, GOOD + slot, text!)
    return { found, wrong: null }
  }
  if (found === 'nothing') return { found: null, wrong: null }
  if (found === 'damaged' && write(shelf, DAMAGED + slot, text!)) shelf.removeItem(JOB + slot)
  const good = recordIn(shelf.getItem(GOOD + slot))
  return { found: typeof good === 'string' ? null : good, wrong: found }
}

function write(shelf: Shelf, key: string, text: string): boolean {
  try {
    shelf.setItem(key, text)
    return true
  } catch {
    return false
  }
}

/** Puts a record on the shelf; where there is no room, without its steps, then without spare copies. False: no room at all. */
export function putUp(shelf: Shelf, slot: string, record: Shelved): boolean {
  const key = JOB + slot
  if (write(shelf, key, JSON.stringify(record))) return true
  const bare = JSON.stringify({ ...record, past: [], future: [] })
  if (write(shelf, key, bare)) return true
  for (const each of keysOf(shelf)) if (each.startsWith(GOOD)) shelf.removeItem(each)
  return write(shelf, key, bare)
}

const keysOf = (shelf: Shelf): string[] =>
  Array.from({ length: shelf.length }, (_, n) => shelf.key(n)).filter((key) => key !== null)

/** Every job on the shelf that can be read, the newest first. */
export function listed(shelf: Shelf): Listed[] {
  return keysOf(shelf)
    .filter((key) => key.startsWith(JOB))
    .flatMap((key) => {
      const slot = key.slice(JOB.length)
      const found = recordAt(shelf, slot)
      return typeof found === 'string'
        ? []
        : [{ slot, name: String(found.now.job.name).slice(0, 80), saved: found.saved }]
    })
    .sort((a, b) => b.saved - a.saved)
}

/** Throws a job away. */
export function throwAway(shelf: Shelf, slot: string): void {
  for (const key of [JOB, GOOD]) shelf.removeItem(key + slot)
}

/** The job last worked on, to be opened next time. */
export const lastSlot = (shelf: Shelf): string | null => shelf.getItem(LAST)
export const setLast = (shelf: Shelf, slot: string): void => void write(shelf, LAST, slot)
