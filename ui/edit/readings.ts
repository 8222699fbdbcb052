// Readings made on the bench: of each kind, what one reading consists of, and what is learned from it.
import type { MotorNumber } from '../../sim/identify/motor.ts'

export interface ReadingPart {
  /** Name within a reading; '' where a reading is a single value. */
  readonly key: string
  readonly label: string
  /** A reading without it counts for nothing. */
  readonly needed: boolean
}

export interface ReadingKind {
  /** Within a sentence: "no-load amps". */
  readonly name: string
  readonly parts: readonly ReadingPart[]
  /** Readings it takes to learn anything: so many are shown at first. */
  readonly least: number
  /** The number it tells. */
  readonly tells: MotorNumber
  readonly another: string
}

const part = (key: string, label: string, needed = true): ReadingPart => ({ key, label, needed })

export const READINGS = {
  'bench.ohms': {
    name: 'winding ohms',
    parts: [part('', 'Winding ohms')],
    least: 1,
    tells: 'resistance',
    another: 'Add another position',
  },
  'bench.running': {
    name: 'no-load amps',
    parts: [
      part('volts', 'No-load volts'),
      part('amps', 'No-load amps'),
      part('speed', 'No-load speed', false),
    ],
    least: 1,
    tells: 'dryFriction',
    another: 'Add another voltage',
  },
  'bench.spin': {
    name: 'volts made by turning',
    parts: [part('speed', 'Turned at'), part('volts', 'Makes')],
    least: 1,
    tells: 'constant',
    another: 'Add another speed',
  },
  'bench.locked': {
    name: 'volts with the shaft held',
    parts: [part('volts', 'Volts, shaft held'), part('amps', 'Amps, shaft held')],
    least: 1,
    tells: 'resistance',
    another: 'Add another reading',
  },
  'bench.coast': {
    name: 'coast-down',
    parts: [part('time', 'After'), part('speed', 'Still turns at')],
    least: 2,
    tells: 'inertia',
    another: 'Add another moment',
  },
} as const satisfies Readonly<Record<string, ReadingKind>>

export type ReadingPath = keyof typeof READINGS

/** The kind of reading a path is; null for any other path. */
export const readingKind = (path: string): ReadingKind | null =>
  Object.hasOwn(READINGS, path) ? READINGS[path as ReadingPath] : null

/** One reading as it stands: its texts (or texts with a source) by part. */
export type Row = Readonly<Record<string, unknown>>

/** Readings that are not whole yet, by kind: they stand in their fields, and in no job. */
export type Drafts = Readonly<Partial<Record<ReadingPath, readonly Row[]>>>

/** A path within a reading, taken apart; null for other paths. */
export function readingAt(path: string): { kind: ReadingPath; index: number; key: string } | null {
  const found = /^(bench\.[a-z]+)\.(\d{1,3})(?:\.([a-z]+))?$/.exec(path)
  const kind = found?.[1] ?? ''
  if (!found || !readingKind(kind)) return null
  return { kind: kind as ReadingPath, index: Number(found[2]), key: found[3] ?? '' }
}

/** Path of a part of a reading. */
export const partPath = (kind: string, index: number, key: string): string =>
  key === '' ? `${kind}.${index}` : `${kind}.${index}.${key}`

/** An item of a scenario's list as a row, and back. */
export const rowOf = (kind: ReadingPath, item: unknown): Row => {
  if (READINGS[kind].parts[0].key === '') return { '': item }
  return typeof item === 'object' && item !== null ? { ...item } : {}
}
export const itemOf = (kind: ReadingPath, row: Row): unknown =>
  READINGS[kind].parts[0].key === '' ? (row[''] ?? '') : row

/** True where every part is in without which a reading counts for nothing. */
export const isWhole = (kind: ReadingPath, row: Row): boolean =>
  READINGS[kind].parts.every(({ key, needed }) => !needed || row[key] !== undefined)
