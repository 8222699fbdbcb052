// Which files the code of a site comes in: few, since what is packed together weighs less, parted by when a module is
// first needed and by whether a worker can hold it.
import { fileURLToPath } from 'node:url'
import type { Rolldown } from 'vite'

const project = fileURLToPath(new URL('../..', import.meta.url)).replaceAll('\\', '/')

/** What the first answer needs, page and workers, and what comes after it: all that these need at once, each time. */
const FIRST = ['ui/main.ts', 'workers/worker.ts']
const BELOW = ['ui/below.ts', 'ui/begin.ts', 'ui/demos.ts']

/** A worker has no document: it holds the simulation, what that is built on, and the bundler's own helpers. No words. */
const FOR_WORKERS = /^(\0|sim\/(?!say\/)|workers\/)|node_modules\/(odex|valibot|comlink|d3-dsv)/

/** What does something by being loaded, where it is: these stay files of their own. */
const OWN_FILE = /\/workers\/worker\.ts$|\/ui\/offline\/|\.html$/

type Modules = Pick<Rolldown.ChunkingContext, 'getModuleInfo'>

/** Files that a worker loads too. */
export const WORKERS_FILE = /assets\/(run|studies)-/

/** The modules that some modules need at once, and these. */
function needed(by: readonly string[], modules: Modules): ReadonlySet<string> {
  const all = new Set(by.map((path) => project + path))
  for (const id of all) for (const next of modules.getModuleInfo(id)?.importedIds ?? []) all.add(next)
  return all
}

/** How the bundler is to group modules: `run` and `page` for the first answer, `below` after it, `studies` and `zones` when asked for. */
export function chunks(): Rolldown.CodeSplittingOptions {
  let sets: { first: ReadonlySet<string>; below: ReadonlySet<string> } | null = null
  return {
    includeDependenciesRecursively: false,
    groups: [
      {
        debugName: 'chunks',
        test: (id) => !OWN_FILE.test(id),
        name: (id, modules) => {
          sets ??= { first: needed(FIRST, modules), below: needed(BELOW, modules) }
          const { first, below } = sets
          if (FOR_WORKERS.test(id.replace(project, ''))) return first.has(id) ? 'run' : 'studies'
          return first.has(id) ? 'page' : below.has(id) ? 'below' : 'zones'
        },
      },
    ],
  }
}
