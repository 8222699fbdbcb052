// Imports run downhill: the tree is read, and made-up offenders show that the reading would notice.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { mayImport, uphill } from './imports.ts'
import { storeys, withPicture } from './picture.ts'
import { root, sources } from './tree.ts'

const check = (files: Record<string, string>) => uphill(new Map(Object.entries(files)))

it('no file of the project imports uphill', () => {
  const files = sources('sim', 'workers', 'ui', 'scenarios')
  expect(files.size).toBeGreaterThan(0)
  expect(uphill(files)).toEqual([])
})

it('the table has no way round: no room reaches itself', () => {
  const below = (room: string, seen: string[] = []): string[] =>
    mayImport[room]!.flatMap((next) => {
      if (seen.includes(next)) throw new Error(`${[...seen, next].join(' → ')} runs in a circle`)
      return [next, ...below(next, [...seen, next])]
    })
  for (const room of Object.keys(mayImport)) expect(below(room, [room])).not.toContain(room)
})

it.each([
  ['sim/quantity.ts', "import { a } from './plant.ts'"],
  ['sim/parts/belt.ts', "import { a } from './heat.ts'"],
  ['sim/parts/belt.ts', "import type { A } from '../plant.ts'"],
  ['sim/plant.ts', "import { a } from './steady.ts'"],
  ['sim/plant.ts', "import {\n  a,\n  b,\n} from './run.ts'"],
  ['sim/run.ts', "import { a } from './judge.ts'"],
  ['sim/run.ts', "export { a } from './scenario.ts'"],
  ['sim/judge.ts', "import { a } from './advise.ts'"],
  ['sim/judge.ts', "import { a } from './say/answer.ts'"],
  ['sim/studies/map.ts', "const a = await import('../advise.ts')"],
  ['sim/solve/lu.ts', "import { a } from '../plant.ts'"],
  ['sim/solve/lu.ts', "import { a } from '../quantity.ts'"],
  ['sim/scenario.ts', "import { a } from './run.ts'"],
  ['sim/identify/plate.ts', "import { a } from '../scenario.ts'"],
  ['sim/plant.ts', "import { a } from '../ui/store.ts'"],
  ['sim/plant.ts', "import { a } from '../workers/pool.ts'"],
  ['sim/plant.ts', "import { readFileSync } from 'node:fs'"],
  ['sim/judge.ts', "import { a } from 'd3'"],
  ['sim/problem.ts', "import { a } from './quantity.ts'"],
  ['workers/pool.ts', "import { a } from '../ui/store.ts'"],
  ['workers/pool.ts', "new Worker(new URL('../ui/worker.ts', import.meta.url))"],
  ['scenarios/run.ts', "import { a } from '../ui/store.ts'"],
  ['ui/app.ts', "import { a } from '../scenarios/run.ts'"],
  ['ui/app.ts', "import { a } from '../test/onePagePlant.ts'"],
  ['ui/plot/axis.ts', "import { a } from '../store.ts'"],
  ['ui/edit/field.ts', "import { a } from '../zone/drive.ts'"],
])('flags %s with %s', (path, text) => {
  expect(check({ [path]: text })).toHaveLength(1)
})

it('looks through a leaf', () => {
  const files = { 'sim/parts/heat.ts': "import '../small.ts'", 'sim/small.ts': "import './judge.ts'" }
  expect(check(files)).toEqual(['sim/parts/heat.ts imports sim/judge.ts: parts may not import judge'])
  const charts = { 'ui/plot/axis.ts': "import '../words.ts'", 'ui/words.ts': "import './store.ts'" }
  expect(check(charts)).toHaveLength(1)
})

it.each([
  ['sim/parts/belt.ts', "import * as v from 'valibot'\nimport { quantity } from '../field.ts'"],
  ['sim/plant.ts', "import { belt } from './parts/belt.ts'\n// import { a } from './judge.ts'"],
  ['sim/advise.ts', "import { a } from './scenario.ts'\nimport { b } from './studies/map.ts'"],
  ['sim/solve/odex.ts', "import odex from 'odex'"],
  ['workers/worker.ts', "import { run } from '../sim/run.ts'"],
  ['ui/zone/drive.ts', "import { store } from '../store.ts'"],
  ['test/sim/plant.test.ts', "import { a } from '../../ui/store.ts'"],
])('lets %s pass with %s', (path, text) => {
  expect(check({ [path]: text })).toEqual([])
})

it('DEVELOPERS.md shows the house as it stands', () => {
  const page = readFileSync(join(root, 'DEVELOPERS.md'), 'utf8')
  expect(page).toBe(withPicture(page))
})

it('storeys: each room above all it rests on; rooms that rest on each other are told', () => {
  const rooms = new Map([
    ['roof', new Set(['wall', 'ground'])],
    ['wall', new Set(['ground'])],
    ['ground', new Set<string>()],
  ])
  expect(storeys(rooms)).toEqual([['ground'], ['wall'], ['roof']])
  rooms.set('ground', new Set(['roof']))
  expect(() => storeys(rooms)).toThrow('goes round: roof → wall → ground → roof')
})
