// The job that stands on the page at first: it comes with the page.
import appleMill from '../scenarios/appleMill.json?raw'
import { readFile } from '../sim/read.ts'
import type { Scenario } from '../sim/scenario.ts'

function read(): Scenario {
  const found = readFile(appleMill)
  if (!found.ok) throw new Error('the first example is no job')
  return found.scenario
}

export const firstDemo = read()
