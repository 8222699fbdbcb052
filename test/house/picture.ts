// The house drawn from its import lines: storeys of rooms, each resting on rooms below it. `--write` puts it into DEVELOPERS.md.
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { importsOf, roomOf } from './imports.ts'
import { root, sources } from './tree.ts'

const MARKS = ['<!-- house -->', '<!-- /house -->'] as const
const WIDTH = 100

/** Room of any file of the product: of sim/ its room, else its top folder. */
const placeOf = (path: string): string => roomOf(path) ?? `${path.split('/')[0]}/`

/** Rooms that each room imports, itself left out. */
export function neighbours(files: ReadonlyMap<string, string>): Map<string, Set<string>> {
  const rooms = new Map<string, Set<string>>()
  for (const [path, text] of files) {
    const room = placeOf(path)
    const below = rooms.get(room) ?? new Set()
    rooms.set(room, below)
    for (const to of importsOf(path, text))
      if (/^(sim|workers|ui|scenarios)\/.*\.ts$/.test(to) && placeOf(to) !== room) below.add(placeOf(to))
  }
  return rooms
}

/** Storeys, the ground first: a room stands one above the highest it rests on. Throws where two rest on each other. */
export function storeys(rooms: ReadonlyMap<string, ReadonlySet<string>>): string[][] {
  const heights = new Map<string, number>()
  const heightOf = (room: string, above: readonly string[]): number => {
    if (above.includes(room)) throw new Error(`goes round: ${[...above, room].join(' → ')}`)
    const known = heights.get(room)
    if (known !== undefined) return known
    const height = [...(rooms.get(room) ?? [])].reduce(
      (high, below) => Math.max(high, heightOf(below, [...above, room]) + 1),
      0,
    )
    heights.set(room, height)
    return height
  }
  const floors: string[][] = []
  for (const room of rooms.keys()) {
    const height = heightOf(room, [])
    floors[height] = [...(floors[height] ?? []), room].sort()
  }
  return floors
}

/** The picture, the roof first. */
export function picture(): string {
  const floors = storeys(neighbours(sources('sim', 'workers', 'ui', 'scenarios')))
  const lines = floors.toReversed().map((floor) => {
    const row = floor.join('   ')
    const left = Math.max(0, Math.floor((WIDTH - row.length) / 2))
    return `${' '.repeat(left)}${row}`
  })
  return ['```text', ...lines, '='.repeat(WIDTH), '```'].join('\n')
}

const page = join(root, 'DEVELOPERS.md')

/** DEVELOPERS.md with the picture as it is now. */
export function withPicture(text: string): string {
  const [from, until] = MARKS.map((mark) => text.indexOf(mark))
  if (from < 0 || until < from) throw new Error(`DEVELOPERS.md has no ${MARKS.join(' … ')}`)
  return `${text.slice(0, from + MARKS[0].length)}\n${picture()}\n${text.slice(until)}`
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  if (process.argv.includes('--write')) writeFileSync(page, withPicture(readFileSync(page, 'utf8')))
  else process.stdout.write(`${picture()}\n`)
}
