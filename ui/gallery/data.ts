// The gallery's data thawed, and a page's state around it: the pictures are given what the page gives them.
import { read } from '../../sim/read.ts'
import type { Job } from '../../sim/job.ts'
import { canonical } from '../../sim/job.ts'
import type { Units } from '../../sim/say/units.ts'
import { type Scenario, withChange, withVariant } from '../../sim/scenario.ts'
import { takeUp } from '../change/job.ts'
import { AS_FOUND, type Entry, entriesOf, type Result, type State } from '../store.ts'
import burnt from './data/burnt.json?raw'
import deadly from './data/deadly.json?raw'
import mill from './data/mill.json?raw'
import saw from './data/saw.json?raw'
import slipping from './data/slipping.json?raw'
import studied from './data/studies.json?raw'
import well from './data/well.json?raw'
import { thaw } from './frozen.ts'
import type { FrozenJob, FrozenStudies, MadeName } from './made.ts'

const TEXTS: Readonly<Record<MadeName, string>> = { mill, saw, burnt, slipping, deadly, well }

export const studies = thaw(JSON.parse(studied)) as FrozenStudies
const jobs = Object.fromEntries(
  Object.entries(TEXTS).map(([name, text]) => [name, thaw(JSON.parse(text))]),
) as Readonly<Record<MadeName, FrozenJob>>

/** The scenario of one of the jobs, with further changes; null takes an input out. */
export const scenarioOf = (name: MadeName, changes: Readonly<Record<string, string | null>> = {}): Scenario =>
  Object.entries(changes).reduce((so, [path, text]) => withChange(so, path, text), jobs[name].scenario)

/** The job of a scenario; one that does not read is a mistake in the gallery. */
export function jobOf(name: MadeName, changes: Readonly<Record<string, string | null>> = {}): Job {
  const reading = read(scenarioOf(name, changes))
  if (!reading.ok) throw new Error(`${name} does not read: ${JSON.stringify(reading.problems)}`)
  return reading.job
}

const known = new Map<MadeName, State>()

function made(name: MadeName): State {
  const settings = { units: { system: 'us', temperature: '°C' }, theme: 'light', size: 'plain' } as const
  const fresh = takeUp({ settings, made: 0 }, jobs[name].scenario)
  const entries = entriesOf(fresh)
  const reading = (entry: Entry) =>
    entry.id === AS_FOUND ? read(fresh.scenario) : read(fresh.scenario, entry)
  const readings = new Map(entries.map((entry) => [entry.id, reading(entry)]))
  const results = entries.flatMap((entry, index): [string, Result][] => {
    const outcome = jobs[name].outcomes[index]
    const own = readings.get(entry.id)
    if (!outcome || !own?.ok) return []
    const { job } = own
    const text = entry.id === AS_FOUND ? fresh.scenario : withVariant(fresh.scenario, entry)
    return [[entry.id, { text, job, key: canonical(job), reading: own, skipping: null, ...outcome }]]
  })
  const asked = new Map(results.map(([id, { key }]) => [id, key]))
  const { seconds } = results[0]?.[1].job.duty ?? { seconds: 3600 }
  return { ...fresh, readings, asked, results: new Map(results), window: [0, seconds] }
}

/** The page's state with one of the jobs answered; `chosen`: 0 as found, else the variant of that number. */
export function stateOf(name: MadeName, units: Units, chosen = 0): State {
  const state = known.get(name) ?? made(name)
  known.set(name, state)
  return { ...state, settings: { ...state.settings, units }, chosen: entriesOf(state)[chosen].id }
}
