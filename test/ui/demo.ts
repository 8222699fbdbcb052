// A page's state for tests: the apple mill taken up, its answers worked out in this process where they are wanted.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { carryOut } from '../../sim/carryOut.ts'
import { canonical } from '../../sim/job.ts'
import { read, readFile } from '../../sim/read.ts'
import { finish } from '../../sim/run.ts'
import { type Scenario, withVariant } from '../../sim/scenario.ts'
import { takeUp } from '../../ui/change/job.ts'
import { entriesOf, type Result, type State } from '../../ui/store.ts'
import { root } from '../house/tree.ts'

/** One of the example jobs, by the name of its file. */
export function example(name: string): Scenario {
  const found = readFile(readFileSync(join(root, 'scenarios', `${name}.json`), 'utf8'))
  if (!found.ok) throw new Error(`${name} is not a job file`)
  return found.scenario
}

/** The page's state with the apple mill, nothing worked out yet. */
export const state = (): State =>
  takeUp(
    { settings: { units: { system: 'us', temperature: '°C' }, theme: 'light', size: 'plain' }, made: 0 },
    example('appleMill'),
  )

/** A result as the runner would keep it. */
export function resultOf(now: State, id: string): Result {
  const entry = entriesOf(now).find((each) => each.id === id)
  if (!entry) throw new Error(`no variant ${id}`)
  const reading = read(now.scenario, entry)
  if (!reading.ok) throw new Error(`${id} does not read`)
  const { job } = reading
  return {
    text: withVariant(now.scenario, entry),
    job,
    reading,
    key: canonical(job),
    ...finish(carryOut(job)),
  }
}
