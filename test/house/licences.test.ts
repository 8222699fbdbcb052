// Every package that a build is made of stands in its licences.txt with its whole text: what went in is read from source maps.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeAll, expect, it } from 'vitest'
import { build } from 'vite'
import { root } from './tree.ts'

let text = ''
let ofFaces = ''
/** Names of the packages whose files the build holds. */
let inside: readonly string[] = []
beforeAll(async () => {
  const built = await build({
    configFile: join(root, 'ui/vite.config.ts'),
    logLevel: 'error',
    build: { write: false, sourcemap: true, minify: false },
  })
  if (Array.isArray(built) || !('output' in built)) throw new Error('one build was expected')
  const { output } = built
  const sources = output.flatMap((each) => (each.type === 'chunk' ? (each.map?.sources ?? []) : []))
  inside = [
    ...new Set(
      sources.flatMap((source) => /node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(source ?? '')?.[1] ?? []),
    ),
  ]
  const listed = (file: string) => {
    const list = output.find(({ fileName }) => fileName === file)
    return list?.type === 'asset' ? String(list.source) : ''
  }
  text = listed('licences.txt')
  ofFaces = listed('licences-faces.txt')
}, 120_000)

const licenceOf = (name: string) =>
  ['LICENSE', 'LICENSE.md', 'LICENSE.txt', 'LICENCE']
    .flatMap((file) => {
      try {
        return readFileSync(join(root, 'node_modules', name, file), 'utf8').trim()
      } catch {
        return []
      }
    })
    .at(0)

it('names every package in the build, with the text it came with', () => {
  // Seen from the other side: these are known to be in it.
  for (const name of ['lit-element', 'lit-html', 'comlink', 'odex', 'valibot', 'd3-contour'])
    expect(inside).toContain(name)
  for (const name of inside) {
    expect(text).toMatch(new RegExp(`^${name.replaceAll('/', '\\/')} \\d+\\.\\d+\\.\\d+ \\(`, 'm'))
    expect(text, name).toContain(licenceOf(name))
  }
})

it('holds the texts of both faces and of their signs, beside it, and our own', () => {
  expect(text).toContain('licences-faces.txt')
  for (const name of ['archivo', 'national-park'])
    expect(ofFaces).toContain(licenceOf(`@fontsource-variable/${name}`))
  expect(ofFaces).toContain(readFileSync(join(root, 'ui/fonts/OFL.txt'), 'utf8').trim())
  expect(text).toContain(readFileSync(join(root, 'LICENSE'), 'utf8').trim())
})
