// What crosses between a page and a worker: tasks out, replies and progress back, all of it plain data.
import type { CrossCheck } from '../sim/crossCheck.ts'
import type { Job } from '../sim/job.ts'
import type { Figures } from '../sim/judge.ts'
import type { Refused } from '../sim/read.ts'
import type { AgainstOld } from '../sim/rival/picture.ts'
import type { Rival } from '../sim/rival/rival.ts'
import type { Progress } from '../sim/run.ts'
import type { Scenario, Variant } from '../sim/scenario.ts'
import type { RatioStudy } from '../sim/studies/ratio.ts'
import type { Trace } from '../sim/trace.ts'

export type Task =
  | { readonly kind: 'run'; readonly job: Job }
  /** Both methods, up to the first opening, the job's end or `until` (s). */
  | { readonly kind: 'check'; readonly job: Job; readonly until?: number }
  /** Which reductions do the job, as it is with a variant. */
  | { readonly kind: 'ratio'; readonly scenario: Scenario; readonly variant: Variant }
  /** The drive against the old motor, or alone. */
  | { readonly kind: 'against'; readonly job: Job; readonly rival: Rival | null }
export type Kind = Task['kind']

/** What a task of each kind comes to. */
export interface Answers {
  run: { readonly kind: 'done'; readonly trace: Trace; readonly figures: Figures }
  check: { readonly kind: 'checked'; readonly comparison: CrossCheck }
  ratio: { readonly kind: 'studied'; readonly study: RatioStudy | Refused }
  against: { readonly kind: 'against'; readonly picture: AgainstOld }
}
export type Answer = Answers[Kind]

/** Why a task came to nothing: its asker took it back, it met a bug, or its worker died. */
export type Refusal =
  | { readonly kind: 'cancelled' }
  | { readonly kind: 'failed'; readonly why: string }
  | { readonly kind: 'lost'; readonly why: string }

export type Reply<K extends Kind = Kind> = Answers[K] | Refusal

/** Takes the progress of the call with this number. */
export type Report = (call: number, progress: Progress) => void

/** What a worker offers. Calls are numbered by the asker, so that a cancel finds its own. */
export interface Service {
  /** Says, once, where progress goes. */
  listen(report: Report): void
  work(call: number, task: Task): Promise<Reply>
  cancel(call: number): void
}
