// The files a build comes in: what a worker may be handed holds no page, none waits for one that waits for it, and zones stay out of the first.
import { join } from 'node:path'
import { beforeAll, expect, it } from 'vitest'
import { build, type Rolldown } from 'vite'
import { root } from '../../house/tree.ts'

let files: ReadonlyMap<string, Rolldown.OutputChunk>
beforeAll(async () => {
  const built = await build({
    configFile: join(root, 'ui/vite.config.ts'),
    logLevel: 'error',
    build: { write: false, minify: false },
  })
  if (Array.isArray(built) || !('output' in built)) throw new Error('one build was expected')
  files = new Map(built.output.flatMap((each) => (each.type === 'chunk' ? [[each.fileName, each]] : [])))
}, 120_000)

/** A file, and all that come with it. */
function reach(from: string, next: (file: Rolldown.OutputChunk) => readonly string[]): ReadonlySet<string> {
  const all = new Set([from])
  for (const name of all) {
    const file = files.get(name)
    if (file) for (const each of next(file)) all.add(each)
  }
  return all
}
const named = (start: string): string =>
  [...files.keys()].find((name) => name.startsWith(`assets/${start}-`)) ?? ''
const modulesOf = (names: ReadonlySet<string>): readonly string[] =>
  [...names].flatMap((name) => files.get(name)?.moduleIds ?? [])

it('hands a worker nothing of the page, whatever it is asked', () => {
  const held = modulesOf(reach(named('worker'), (file) => [...file.imports, ...file.dynamicImports]))
  expect(held).toContain(join(root, 'sim/run.ts'))
  expect(held).toContain(join(root, 'sim/advise.ts'))
  const page = [
    join(root, 'ui/'),
    join(root, 'sim/say/'),
    join(root, 'node_modules/lit'),
    join(root, 'node_modules/@lit'),
  ]
  expect(held.filter((id) => page.some((start) => id.startsWith(start)))).toEqual([])
})

it('starts the service in a worker’s file alone', () => {
  const [file] = [...files.values()].filter(({ moduleIds }) =>
    moduleIds.includes(join(root, 'workers/worker.ts')),
  )
  expect(file.fileName).toBe(named('worker'))
  expect([...files.values()].filter(({ imports }) => imports.includes(file.fileName))).toEqual([])
})

it('has no file that waits for one that waits for it', () => {
  for (const [name, { imports }] of files)
    for (const each of imports)
      expect(
        reach(each, (file) => file.imports),
        `${name} and ${each}`,
      ).not.toContain(name)
})

it('is few files, and the first of them bring no zone below the answer', () => {
  expect(files.size).toBeGreaterThanOrEqual(5)
  expect(files.size).toBeLessThanOrEqual(15)
  const first = modulesOf(reach(named('page'), (file) => file.imports))
  expect(first).toContain(join(root, 'ui/main.ts'))
  for (const zone of ['overTime', 'advice', 'map', 'ratio', 'report', 'wiring'])
    expect(first).not.toContain(join(root, `ui/zone/${zone}.ts`))
})
