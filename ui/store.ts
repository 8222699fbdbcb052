// The store: the one object on the page that changes. Its state is replaced whole, never written into.
import type { Skipping } from '../sim/carryOut.ts'
import type { Part } from '../sim/cycles/exact.ts'
import type { CrossCheck } from '../sim/crossCheck.ts'
import type { Job } from '../sim/job.ts'
import type { Figures } from '../sim/judge.ts'
import type { LessonName } from '../sim/lessons.ts'
import type { Problem } from '../sim/problem.ts'
import type { Accepted, Read } from '../sim/read.ts'
import type { Station } from '../sim/say/stations.ts'
import type { Scenario, Variant } from '../sim/scenario.ts'
import type { Trace } from '../sim/trace.ts'
import type { Logged } from './change/warmUp.ts'
import type { Drafts } from './edit/readings.ts'
import type { GridAsked } from './change/gridAsked.ts'
import type { OldMotor } from './change/oldMotor.ts'
import type { History } from './keep/history.ts'
import type { Listed } from './keep/shelf.ts'
import type { Settings } from './settings.ts'
import type { Works } from './study/work.ts'

/** A variant with an id that lasts as long as the page; AS_FOUND is the job itself, without changes. */
export interface Entry extends Variant {
  readonly id: string
}

export const AS_FOUND = 'as found'

/** An answer that is there: the text it was worked out from, and what came out. */
export interface Result {
  readonly text: Scenario
  readonly job: Job
  /** Equal for equal jobs. */
  readonly key: string
  /** What the job was read from; its notes are worked out when somebody asks. */
  readonly reading: Accepted
  readonly trace: Trace
  readonly figures: Figures
  /** Which turns of the duty were run, where not all were; and the part in which all are, since somebody looked closely. */
  readonly skipping: Skipping | null
  readonly close?: Part
}

/** An answer that is being worked out: how far it has got, and of how much (s of the job); ms of the page's clock when asked. */
export interface Working {
  readonly key: string
  readonly t: number
  readonly of: number
  readonly since: number
}

/** Second opinion on one result. */
export type Check =
  | { readonly kind: 'working'; readonly key: string; readonly t: number; readonly of: number }
  | { readonly kind: 'done'; readonly key: string; readonly comparison: CrossCheck }
  | { readonly kind: 'stopped'; readonly key: string; readonly why: string }

/** A message to the reader about the page as a whole. */
export interface Notice {
  readonly words: string
  readonly problems: readonly Problem[]
}

export interface State {
  /** Where the job is kept. */
  readonly slot: string
  /** The job as written, without its variants. */
  readonly scenario: Scenario
  readonly variants: readonly Entry[]
  readonly chosen: string
  /** Bench readings that are not whole yet. */
  readonly drafts: Drafts
  /** The warm-up log on the page. */
  readonly logged: Logged | null
  /** Variants made so far: numbers their ids. */
  readonly made: number
  /** By id: each variant as the reader took it. What is asked. */
  readonly readings: ReadonlyMap<string, Read>
  /** By id: key of the job asked for; none where the reader refused it. */
  readonly asked: ReadonlyMap<string, string>
  /** By id: the newest answer there is. What is shown. */
  readonly results: ReadonlyMap<string, Result>
  readonly working: ReadonlyMap<string, Working>
  /** The example's answer, where it was worked out beside an empty sheet. */
  readonly example: Result | null
  /** Working has gone on long enough to say so. */
  readonly slow: boolean
  /** Why the newest question has no answer, if it was given up. */
  readonly stopped: string | null
  readonly check: Check | null
  /** What is studied on the lower sheet; and the old motor as typed, for one of them. */
  readonly studies: Works
  readonly old: OldMotor
  /** Name of the step whose work and rest is looked at; none: the hardest. */
  readonly limitsCut?: string
  /** The grid of two inputs as asked; null: as the job suggests. */
  readonly grid: GridAsked | null
  readonly history: History
  /** The lesson that goes with the job on the page. */
  readonly lesson: { readonly name: LessonName } | null
  /** Names of the wiring statements that have been seen to. */
  readonly ticked: readonly string[]
  /** Jobs kept in this browser. */
  readonly shelf: readonly Listed[]
  /** What was just done, with the way back offered for a while. */
  readonly undo: string | null
  readonly notice: Notice | null
  readonly station: Station | null
  /** The field to bring into view; the number makes a second wish for the same field a new one. */
  readonly target: { readonly path: string; readonly n: number } | null
  readonly settings: Settings
  /** The moment looked at and the part of the job shown, s. */
  readonly moment: number
  readonly window: readonly [number, number]
}

export interface Store {
  readonly state: State
  /** Replaces the state by what `next` makes of it; tells everyone if it is another. */
  change(next: (state: State) => State): void
  /** Calls `told` after every change, until the returned function is called. */
  subscribe(told: () => void): () => void
}

export function createStore(first: State): Store {
  let state = first
  const listeners = new Set<() => void>()
  return {
    get state() {
      return state
    },
    change(next) {
      const changed = next(state)
      if (changed === state) return
      state = changed
      for (const told of [...listeners]) told()
    },
    subscribe(told) {
      listeners.add(told)
      return () => listeners.delete(told)
    },
  }
}

/** Every variant, the job as found first. */
export const entriesOf = (state: Pick<State, 'variants'>): readonly Entry[] => [
  { id: AS_FOUND, name: 'As found', changes: {} },
  ...state.variants,
]

/** The chosen variant; the job as found where the choice is gone. */
export const chosenOf = (state: Pick<State, 'variants' | 'chosen'>): Entry =>
  entriesOf(state).find((entry) => entry.id === state.chosen) ?? entriesOf(state)[0]

/** Whether the answer on show for a variant answers what is asked now. */
export const isCurrent = ({ results, asked }: State, id: string): boolean =>
  asked.has(id) && results.get(id)?.key === asked.get(id)
