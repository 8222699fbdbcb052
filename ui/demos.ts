// The other example jobs and a log to try, as the text of their files: they come after the first answer.
import appleMillWarmUp from '../scenarios/appleMillWarmUp.csv?raw'
import { readFile } from '../sim/read.ts'
import type { Scenario } from '../sim/scenario.ts'
import { FIRST, firstDemo } from './firstDemo.ts'

const others = import.meta.glob<string>(
  ['../scenarios/*.json', '!../scenarios/{appleMill,schema,tsconfig}.json'],
  { query: '?raw', import: 'default', eager: true },
)

/** A log to look at for those who have none yet: of the apple mill's motor. */
export const exampleLog = { file: 'appleMillWarmUp.csv', text: appleMillWarmUp } as const

/** The example of a name; null: there is none. */
export function demoNamed(name: string): Scenario | null {
  if (name === FIRST) return firstDemo
  const path = `../scenarios/${name}.json`
  const found = Object.hasOwn(others, path) ? readFile(others[path]) : null
  return found?.ok ? found.scenario : null
}

/** The examples, the apple mill first. */
export const demos: readonly Scenario[] = [
  firstDemo,
  ...Object.values(others).flatMap((text) => {
    const found = readFile(text)
    return found.ok ? [found.scenario] : []
  }),
]
