// A keeper: when a study is another one, and how it is asked for; and what keepers share.
import type { Progress } from '../../sim/run.ts'
import type { Pool } from '../../workers/pool.ts'
import type { Refusal } from '../../workers/contract.ts'
import { chosenOf, type State } from '../store.ts'
import type { Kept, StudyName } from './work.ts'

export interface Asking<T> {
  readonly signal: AbortSignal
  readonly pool: Pick<Pool, 'ask'>
  onProgress(progress: Progress): void
  /** Shows what there is so far. */
  onPart(part: T): void
}

/** What came of it: the study, or why none; null: taken back, or nothing new to show. */
export type Outcome<T> = { readonly result: T } | { readonly why: string } | null

export interface Keeper<T> {
  /** Equal for studies that would be equal; null while there is nothing to study. */
  key(state: State): string | null
  /** Rest of the inputs before it begins, ms, where it is to be another. */
  readonly pause?: number
  work(state: State, asking: Asking<T>): Promise<Outcome<T>>
}

/** Whether a study on show is of other inputs than those asked now. */
export function isStaleBy<N extends StudyName>(keeper: Keeper<Kept[N]>, state: State, name: N): boolean {
  const key = keeper.key(state)
  return key !== null && key !== state.studies[name].key
}

/** Equal for equal jobs: the chosen variant as it is asked; null while it does not read. */
export const askedKey = (state: State): string | null => state.asked.get(chosenOf(state).id) ?? null

/** What comes of a question that was not answered. */
export const unanswered = (reply: Refusal): { readonly why: string } | null =>
  reply.kind === 'cancelled' ? null : { why: reply.why }
