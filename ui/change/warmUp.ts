// A warm-up log on the page: read, fitted to the chosen motor, and its heat numbers put into the job.
import { heatDoubtOf } from '../../sim/heatDoubt.ts'
import { type Fit, fitWarmUp } from '../../sim/identify/fit.ts'
import type { Refusal } from '../../sim/identify/fitAdvice.ts'
import { type Log, readLog } from '../../sim/identify/log.ts'
import { parseQuantity } from '../../sim/quantity.ts'
import { type Accepted, read } from '../../sim/read.ts'
import { heatInputs } from '../../sim/say/fit.ts'
import { inputAt, inputsOf, type Scenario, withChange } from '../../sim/scenario.ts'
import { AS_FOUND, chosenOf, type State } from '../store.ts'

/** A log that was read, with its fit once there is one. */
export interface ReadLogged {
  readonly kind: 'read'
  readonly file: string
  readonly log: Log
  readonly notes: readonly string[]
  /** Motor speed it was held at, as typed: for a log with neither rpm nor volts. */
  readonly held: string
  /** Null while it is worked out. */
  readonly fit: Fit | Refusal | null
  /** Equal for equal motors: what the fit was made with. */
  readonly motor: string
  /** Drawn over the prediction. */
  readonly shown: boolean
}

/** A log on the page, or why it is not. */
export type Logged = ReadLogged | ({ readonly kind: 'refused'; readonly file: string } & Omit<Refusal, 'ok'>)

/** A log from a file's text: its fit is not made yet. */
export function takeLog(file: string, text: string): Logged {
  const found = readLog(text)
  if (!found.ok) return { kind: 'refused', file, wrong: found.wrong, wouldDo: found.wouldDo }
  const { log, notes } = found
  return { kind: 'read', file, log, notes, held: '', fit: null, motor: '', shown: true }
}

/** Heat numbers that came from a log say so in their source. */
const FITTED = /fitted to /
const fittedPaths = (scenario: Scenario): string[] =>
  inputsOf(scenario, 'heat')
    .filter(({ source }) => FITTED.test(source ?? ''))
    .map(({ path }) => path)

/** The chosen motor as it is without any fit: what a log is fitted to. Null where the job does not read. */
function motorOf(state: State): { scenario: Scenario; reading: Accepted } | null {
  const scenario = fittedPaths(state.scenario).reduce(
    (all, path) => withChange(all, path, null),
    state.scenario,
  )
  const chosen = chosenOf(state)
  const reading = chosen.id === AS_FOUND ? read(scenario) : read(scenario, chosen)
  return reading.ok ? { scenario, reading } : null
}

/** Equal for motors that are fitted alike; '' where the job does not read. */
export function motorKey(state: State): string {
  const found = motorOf(state)
  if (!found) return ''
  const { winding, rotor, heat, supply, lumpy } = found.reading.job.parts
  return JSON.stringify([winding, rotor, heat, supply, lumpy])
}

/** The state with its log fitted to the chosen motor. */
export function fitted(state: State): State {
  const { logged } = state
  if (logged?.kind !== 'read') return state
  return { ...state, logged: { ...logged, fit: fitOf(state, logged), motor: motorKey(state) } }
}

function fitOf(state: State, { log, held }: ReadLogged): Fit | Refusal {
  const found = motorOf(state)
  if (!found)
    return {
      ok: false,
      wrong: 'The job has a value that needs a look, and no motor until then.',
      wouldDo: 'Mend it first; then fit again.',
    }
  const { parts } = found.reading.job
  const speed = held.trim() === '' ? null : parseQuantity(held, 'angular speed', 'rpm')
  if (speed && !speed.ok) return { ok: false, wrong: speed.wrong, wouldDo: speed.wouldDo }
  const doubt = heatDoubtOf(found.scenario, found.reading.motor, parts.supply)
  return fitWarmUp(log, parts, doubt, speed?.value)
}

/** The job with the heat numbers of the log, every variant's, and a way back. */
export function useHeat(state: State): State {
  const { logged } = state
  if (logged?.kind !== 'read' || !logged.fit?.ok) return state
  const inputs = Object.entries(heatInputs(logged.fit, logged.file))
  const bare = fittedPaths(state.scenario).reduce((all, path) => withChange(all, path, null), state.scenario)
  return {
    ...state,
    undo: `Heat numbers of ${logged.file} are in use.`,
    scenario: inputs.reduce((all, [name, input]) => withChange(all, `heat.${name}`, input), bare),
  }
}

/** True where the job has the heat numbers of this very fit. */
export function heatInUse(scenario: Scenario, logged: Logged | null): boolean {
  if (logged?.kind !== 'read' || !logged.fit?.ok) return false
  return Object.entries(heatInputs(logged.fit, logged.file)).every(([name, { value, source }]) => {
    const input = inputAt(scenario, `heat.${name}`)
    return input?.text === value && input.source === source
  })
}
