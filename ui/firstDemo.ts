// The example that comes with the page; and links that open an example.
import appleMill from '../scenarios/appleMill.json?raw'
import { readFile } from '../sim/read.ts'
import type { Scenario } from '../sim/scenario.ts'

function read(): Scenario {
  const found = readFile(appleMill)
  if (!found.ok) throw new Error('the first example is no job')
  return found.scenario
}

export const firstDemo = read()

const MARK = '#demo='
/** Its name in a link, and the link. */
export const FIRST = 'appleMill'
export const FIRST_LINK = `${MARK}${FIRST}`

/** The example an address asks for, by the name of its file; null: none. */
export const demoIn = (hash: string): string | null =>
  hash.startsWith(MARK) ? hash.slice(MARK.length) : null
