// Which room may import which: the downhill order as one table, and a reader of import lines that checks it.
import { posix } from 'node:path'

const ground = ['problem', 'quantity', 'field', 'handbook', 'belting']
const plant = [...ground, 'parts', 'duty', 'trace', 'plant', 'job']
const run = [...plant, 'solve', 'run', 'steady']
const judge = [...run, 'cycles', 'judge']
const studies = [...judge, 'scenario', 'read', 'studies']

/** Room of sim/ → rooms of sim/ it may import besides itself. Files of sim/ not named here are leaves: see below. */
export const mayImport: Record<string, string[]> = {
  problem: [],
  quantity: ['problem'],
  field: ['quantity', 'problem'],
  handbook: ['quantity', 'problem'],
  parts: ground,
  duty: [...ground, 'parts', 'cuts'],
  trace: [...ground, 'parts', 'duty'],
  plant: [...ground, 'trace', 'parts', 'duty'],
  job: [...ground, 'trace', 'parts', 'duty', 'plant'],
  solve: [],
  belting: ['quantity', 'problem', 'handbook', 'solve'],
  steady: [...plant, 'solve'],
  run: [...plant, 'solve'],
  identify: [...plant, 'solve', 'steady'],
  cuts: ground,
  scenario: [...plant, 'solve', 'steady', 'identify', 'cuts'],
  read: [...plant, 'solve', 'steady', 'identify', 'cuts', 'scenario'],
  cycles: run,
  judge: [...run, 'cycles'],
  studies: [...judge, 'scenario', 'read', 'identify', 'cuts'],
  advise: [...studies, 'identify'],
  lessons: [...judge],
  wiring: [...studies, 'identify', 'advise'],
  say: [...studies, 'wiring', 'lessons', 'advise', 'identify', 'cuts', 'steady'],
}

/** Package → rooms of sim/ that may import it. Every other package is closed to sim/. */
const packages: Record<string, string[]> = {
  valibot: ['field', 'parts', 'duty', 'job', 'handbook', 'scenario', 'read', 'identify', 'cuts'],
  odex: ['solve'],
  d3: ['identify'],
}

/** Top folder → top folders it may import. test/ may import all. */
const folders: Record<string, string[]> = {
  sim: ['sim'],
  workers: ['workers', 'sim'],
  ui: ['ui', 'workers', 'sim'],
  scenarios: ['scenarios', 'workers', 'sim'],
}

/** The charts and the editors know no store: properties in, typed event out. */
const noStore = /^ui\/(plot|edit|drawing)\//
const store = /^ui\/(store|runner|app|main|zone)\b/

/** Path of a file → what it imports, relative paths resolved against the project's top. */
export function importsOf(path: string, text: string): string[] {
  const code = withoutComments(text)
  const lines = code.matchAll(/(?:\bfrom\s*|\bimport\s*\(?\s*|\bnew URL\(\s*)'([^'\s,]+)'/g)
  return [...lines].map(([, to]) => (to!.startsWith('.') ? posix.join(posix.dirname(path), to!) : to!))
}

/** The text with its block and line comments taken out (a `//` inside a string goes too: no import has one). */
export function withoutComments(text: string): string {
  return text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/(^|\s)\/\/.*$/gm, '$1')
}

/** Room of a file in sim/: its folder, or its own name; undefined outside sim/. */
export const roomOf = (path: string) => /^sim\/([^/.]+)/.exec(path)?.[1]

const isFile = (to: string) => /^(sim|workers|ui|scenarios|test)\//.test(to)

/**
 * Every import that runs uphill, one line each: `path imports target: why`. Empty when the house is in order.
 * Leaves (files of sim/ in no named room) are looked through: what they import counts as imported by their user.
 */
export function uphill(files: Map<string, string>): string[] {
  const direct = new Map([...files].map(([path, text]) => [path, importsOf(path, text)]))

  const reach = (path: string, through: (to: string) => boolean, seen = new Set<string>()): Set<string> => {
    for (const to of direct.get(path) ?? []) {
      if (seen.has(to)) continue
      seen.add(to)
      if (through(to)) reach(to, through, seen)
    }
    return seen
  }
  const isLeaf = (to: string) => to.startsWith('sim/') && !(roomOf(to)! in mayImport)

  const offence = (path: string, to: string): string | undefined => {
    const folder = path.split('/')[0]!
    // Data is read by whoever needs it; only code has a direction.
    if (/\.(json|csv)(\?raw)?$/.test(to)) return undefined
    if (isFile(to) && !folders[folder]!.includes(to.split('/')[0]!))
      return `${folder}/ may not import ${to.split('/')[0]}/`
    const room = roomOf(path)
    if (room === undefined || !(room in mayImport)) return undefined
    if (!isFile(to)) return packages[to]?.includes(room) ? undefined : `${room} may not use ${to}`
    const other = roomOf(to)!
    if (other === 'parts' && room === 'parts') return 'parts never import parts'
    if (other === room || isLeaf(to) || mayImport[room]!.includes(other)) return undefined
    return `${room} may not import ${other}`
  }

  const found: string[] = []
  for (const path of direct.keys()) {
    if (!(path.split('/')[0]! in folders)) continue
    for (const to of reach(path, isLeaf)) {
      const why = offence(path, to)
      if (why) found.push(`${path} imports ${to}: ${why}`)
    }
    if (noStore.test(path))
      for (const to of reach(path, (next) => next.startsWith('ui/')))
        if (store.test(to)) found.push(`${path} imports ${to}: charts and editors know no store`)
  }
  return found
}
