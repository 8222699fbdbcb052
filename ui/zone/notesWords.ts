// Words of the notes over the sheet: which values need a look, how far the work has got.
import type { Problem } from '../../sim/problem.ts'
import { inputAt, type Scenario } from '../../sim/scenario.ts'
import { NBSP } from '../../sim/say/number.ts'
import type { Units } from '../../sim/say/units.ts'
import { readingKind } from '../edit/readings.ts'
import { fieldText } from '../edit/shownText.ts'
import { chosenOf, type Result, type State, type Working } from '../store.ts'

/** Label of the input at a path, to stand within a sentence. */
function labelAt(scenario: Scenario, path: string): string {
  const label =
    inputAt(scenario, path)?.field.label ??
    readingKind(path)?.name ??
    (path.startsWith('duty') ? 'Duty' : path || 'The job')
  return label.charAt(0).toLowerCase() + label.slice(1)
}

/** Most inputs named in one sentence. */
const MOST_NAMED = 3

/** "One value needs a look: plate speed." */
export function looks(scenario: Scenario, problems: readonly Problem[]): string {
  const labels = [...new Set(problems.map(({ path }) => labelAt(scenario, path)))]
  const named = labels.slice(0, MOST_NAMED).join(', ') + (labels.length > MOST_NAMED ? ', …' : '')
  return problems.length === 1
    ? `One value needs a look: ${named}.`
    : `${problems.length} values need a look: ${named}.`
}

/** "The result below still uses 4000 rpm." */
export function stillUses(result: Result | undefined, problems: readonly Problem[], units: Units): string {
  if (!result) return 'There is no result until then.'
  const input = problems.length === 1 ? inputAt(result.text, problems[0].path) : null
  if (input?.field.kind !== 'quantity' || input.text === '')
    return problems.length === 1
      ? 'The result below still uses the value before.'
      : 'The result below still uses the values before.'
  const { text, unit } = fieldText(input.field, input.text, units)
  return `The result below still uses ${text}${unit ? NBSP + unit : ''}.`
}

const STEPS = [
  [172800, 86400, 'day'],
  [3600, 3600, 'hour'],
  [60, 60, 'minute'],
  [0, 1, 'second'],
] as const

/** "hour 2 of 3": the one it is in. */
export function reachedWords(t: number, of: number): string {
  const [, size, name] = STEPS.find(([from]) => of > from) ?? STEPS[3]
  const all = Math.max(1, Math.ceil(of / size - 1e-9))
  return `${name} ${Math.min(all, Math.floor(t / size) + 1)} of ${all}`
}

/** "about 2 s left"; '' while nothing can be said yet. */
export function leftWords(share: number, elapsed: number): string {
  if (share < 0.02 || elapsed < 300) return ''
  const seconds = Math.max(1, Math.round((elapsed / 1000) * (1 / share - 1)))
  return seconds < 100 ? `about ${seconds}${NBSP}s left` : `about ${Math.round(seconds / 60)}${NBSP}min left`
}

export interface Under {
  readonly words: string
  readonly one: Working
  /** Share of all that is under way. */
  readonly share: number
  readonly since: number
}

/** What is being worked out: the chosen variant first; null where nothing is. */
export function underWay(state: State): Under | null {
  const all = [...state.working.values()]
  if (all.length === 0) return null
  const chosen = chosenOf(state)
  const mine = state.working.get(chosen.id)
  const share = all.reduce((sum, { t, of }) => sum + (of > 0 ? t / of : 1), 0) / all.length
  const words = !state.results.has(chosen.id)
    ? 'Working out the answer'
    : mine
      ? 'Working out the new answer'
      : all.length === 1
        ? 'Working out the other variant'
        : `Working out ${all.length} other variants`
  return { words, one: mine ?? all[0], share, since: Math.min(...all.map(({ since }) => since)) }
}
