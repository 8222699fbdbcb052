// What a built site weighs, gzip as a host sends it: what the first answer needs, and all there is.
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'

export interface Weight {
  /** Files the first answer needs, by their path in the site, with their bytes. */
  readonly first: ReadonlyMap<string, number>
  /** Every file but faces and pictures. */
  readonly whole: ReadonlyMap<string, number>
}

/** Faces (with their licence) are a browser's to ask for as it meets their letters; pictures are of the system's making of an icon. */
const APART = /\.(woff2|png|svg|webmanifest)$|^licences-faces\.txt$/
/** `import … from "./x.js"`, `import "./x.js"` and `export … from`, in bundled code; not `import(…)`. */
const IMPORTED = /(?:\bfrom|\bimport)\s*["'`]\.\/([^"'`]+\.js)["'`]/g

const bytesOf = (path: string): number => gzipSync(readFileSync(path)).length
export const sum = (files: ReadonlyMap<string, number>): number =>
  [...files.values()].reduce((all, bytes) => all + bytes, 0)

/** Weighs the site in a folder. What is needed: the page, what it links to, the worker, and what these import at once. */
export function weigh(folder: string): Weight {
  const html = readFileSync(join(folder, 'index.html'), 'utf8')
  const worker = readdirSync(join(folder, 'assets')).find((name) => /^worker-.*\.js$/.test(name))
  if (!worker) throw new Error('the site has no worker')
  const linked = [...html.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.(?:js|css))"/g)].map(([, path]) => path)
  const needed = new Set(['index.html', ...linked, `assets/${worker}`])
  for (const path of needed)
    if (path.endsWith('.js'))
      for (const [, name] of readFileSync(join(folder, path), 'utf8').matchAll(IMPORTED))
        needed.add(`assets/${name}`)
  const all = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !APART.test(entry.name))
    .map(({ parentPath, name }) =>
      join(parentPath, name)
        .slice(folder.length + 1)
        .replaceAll('\\', '/'),
    )
  const weighed = (paths: Iterable<string>) =>
    new Map([...paths].map((path) => [path, bytesOf(join(folder, path))]))
  return { first: weighed(needed), whole: weighed(all) }
}
