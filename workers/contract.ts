// What crosses between a page and a worker: tasks out, replies and progress back, all of it plain data.
import type { Advice } from '../sim/advise.ts'
import type { Outcome } from '../sim/carryOut.ts'
import type { CrossCheck } from '../sim/crossCheck.ts'
import type { Part } from '../sim/cycles/exact.ts'
import type { Job } from '../sim/job.ts'
import type { Facts, LessonName } from '../sim/lessons.ts'
import type { Refused } from '../sim/read.ts'
import type { AgainstOld } from '../sim/rival/picture.ts'
import type { Rival } from '../sim/rival/rival.ts'
import type { Progress } from '../sim/run.ts'
import type { Scenario, Variant } from '../sim/scenario.ts'
import type { LimitsStudy } from '../sim/studies/limits.ts'
import type { PointOf, PointStudy, Spec } from '../sim/studies/points.ts'
import type { RatioStudy } from '../sim/studies/ratio.ts'
import type { Sure, SurePoint, SureSpec } from '../sim/studies/sure.ts'

export type Task =
  /** `close`: the part of the job looked at closely, whose rows are to be exact. */
  | { readonly kind: 'run'; readonly job: Job; readonly close?: Part }
  /** Both methods, up to the first opening, the job's end or `until` (s). */
  | { readonly kind: 'check'; readonly job: Job; readonly until?: number }
  /** Which reductions do the job, as it is with a variant. */
  | { readonly kind: 'ratio'; readonly scenario: Scenario; readonly variant: Variant }
  /** Work and rest of one step (the hardest unless named), as it is with a variant. */
  | {
      readonly kind: 'limits'
      readonly scenario: Scenario
      readonly variant: Variant
      readonly phase?: string
    }
  /** The drive against the old motor, or alone. */
  | { readonly kind: 'against'; readonly job: Job; readonly rival: Rival | null }
  /** What is wrong and what cures it, as it is with a variant. */
  | { readonly kind: 'advise'; readonly scenario: Scenario; readonly variant: Variant }
  /** What a lesson computes, of each of its jobs. */
  | { readonly kind: 'lesson'; readonly name: LessonName; readonly jobs: readonly Job[] }
  /** What the samples of “how sure” come to. */
  | { readonly kind: 'sure'; readonly spec: SureSpec; readonly points: readonly SurePoint[] }
  /** A stretch of a study of points, `from` ≤ n < `until`: asked through `spread`. */
  | { readonly kind: 'points'; readonly spec: Spec; readonly from: number; readonly until: number }
export type Kind = Task['kind']

/** What a task of each kind comes to. */
export interface Answers {
  run: Outcome & { readonly kind: 'done' }
  check: { readonly kind: 'checked'; readonly comparison: CrossCheck }
  ratio: { readonly kind: 'studied'; readonly study: RatioStudy | Refused }
  limits: { readonly kind: 'limits'; readonly study: LimitsStudy | Refused }
  against: { readonly kind: 'against'; readonly picture: AgainstOld }
  advise: { readonly kind: 'advised'; readonly advice: Advice | Refused }
  lesson: { readonly kind: 'lesson'; readonly columns: readonly Facts[] }
  sure: { readonly kind: 'sure'; readonly sure: Sure | null }
  points: { readonly kind: 'points'; readonly points: readonly PointOf<PointStudy>[] }
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
