// The example jobs, brought in with the page, as the text of their files.
import { readFile } from '../sim/read.ts'
import appleMillWarmUp from '../scenarios/appleMillWarmUp.csv?raw'
import type { Scenario } from '../sim/scenario.ts'

const files = import.meta.glob<string>(['../scenarios/*.json', '!../scenarios/schema.json'], {
  query: '?raw',
  import: 'default',
  eager: true,
})

/** A log to look at for those who have none yet: of the apple mill's motor. */
export const exampleLog = { file: 'appleMillWarmUp.csv', text: appleMillWarmUp } as const

/** The job that stands on the page at first. */
const FIRST = 'appleMill'

const jobs = Object.entries(files)
  .map(([path, text]) => ({ first: path.includes(FIRST), found: readFile(text) }))
  .sort((a, b) => Number(b.first) - Number(a.first))

/** The examples, the apple mill first. Empty only if the build lost them. */
export const demos: readonly Scenario[] = jobs.flatMap(({ found }) => (found.ok ? [found.scenario] : []))
