// The job on the page is kept in the browser as it is changed, with its steps of undo; nothing needs to be saved by hand.
import type { Scenario } from '../../sim/scenario.ts'
import { takeUp, toSave } from '../change/job.ts'
import { AS_FOUND, type State, type Store } from '../store.ts'
import type { History, Moment } from './history.ts'
import {
  freshSlot,
  type Kept,
  lastSlot,
  listed,
  putUp,
  type Shelved,
  setLast,
  takeDown,
  throwAway,
  versionAt,
} from './shelf.ts'

/** Rest after a change before it is kept, ms. */
export const REST = 400
/** Steps of undo that are kept with a job. */
const STEPS = 20

export const FULL: State['notice'] = {
  words:
    'This browser has no room left: the job is not being kept. Save it as a file, or remove kept jobs in L.',
  problems: [],
}
export const APART: State['notice'] = {
  words: 'Another tab has changed this job too. What stands here is kept as a job of its own beside it.',
  problems: [],
}
export const DAMAGED: State['notice'] = {
  words: 'The job kept in this browser was damaged. It is set aside; this is the last good copy.',
  problems: [],
}
export const LOST: State['notice'] = {
  words:
    'The job kept in this browser was damaged and could not be read. It is set aside; this sheet is empty.',
  problems: [],
}

export const NEWER: State['notice'] = {
  words:
    'The job kept in this browser is from a newer version of this page. It stays there untouched: reload to get that version. What stands here is kept beside it.',
  problems: [],
}
const NOTICES = {
  damaged: { found: DAMAGED, lost: LOST },
  newer: { found: NEWER, lost: NEWER },
} as const

const keptOf = (moment: Moment): Kept => ({
  job: toSave(moment),
  chosen: moment.chosen === AS_FOUND ? 0 : moment.variants.findIndex(({ id }) => id === moment.chosen) + 1,
})

const momentOf = (state: Pick<State, 'settings'>, slot: string, { job, chosen }: Kept): Moment => {
  const { scenario, variants, drafts } = takeUp({ ...state, made: 0 }, job)
  return { slot, scenario, variants, drafts, chosen: variants[chosen - 1]?.id ?? AS_FOUND }
}

/** The page's state with a kept job taken up, its undo with it. */
function resumed(state: Pick<State, 'settings'>, slot: string, record: Shelved): State {
  const moment = (kept: Kept) => momentOf(state, slot, kept)
  const history: History = {
    past: record.past.map(moment),
    future: record.future.map(moment),
    during: null,
  }
  const most = [record.now, ...record.past, ...record.future].map(({ job }) => job.variants?.length ?? 0)
  return {
    ...takeUp({ ...state, made: 0 }, record.now.job),
    ...moment(record.now),
    made: Math.max(...most),
    ticked: record.ticked,
    history,
  }
}

/** The state the page begins with: the job last worked on, or else a fresh one. */
export function opening(storage: () => Storage, state: Pick<State, 'settings'>, first: Scenario): State {
  const fresh = takeUp({ ...state, made: 0 }, first)
  try {
    const shelf = storage()
    const slot = lastSlot(shelf)
    if (slot === null) return fresh
    const { found, wrong } = takeDown(shelf, slot)
    const place = wrong === 'newer' ? freshSlot() : slot
    if (found) return { ...resumed(state, place, found), notice: wrong && NOTICES[wrong].found }
    return { ...fresh, notice: wrong && NOTICES[wrong].lost }
  } catch {
    // Storage is shut: nothing is kept, and everything else works.
    return fresh
  }
}

export interface Autosave {
  /** Opens a kept job in place of the one on the page. */
  open(slot: string): void
  throwAway(slot: string): void
}

/** Keeps the job of a store from now on. Without storage, everything works but nothing is kept. */
export function startAutosave(store: Store, storage: () => Storage): Autosave {
  const versions = new Map<string, number>()
  let timer: ReturnType<typeof setTimeout> | undefined
  /** The state last looked at. */
  let seen = store.state

  const attempt = <T>(work: (shelf: Storage) => T): T | null => {
    try {
      return work(storage())
    } catch {
      return null
    }
  }
  const list = () => {
    const shelf = attempt(listed)
    if (shelf) store.change((state) => ({ ...state, shelf }))
  }
  /** Another tab has it: from here on, what is on this page has a place of its own. */
  const apart = (from: string) => {
    const slot = freshSlot()
    const moved = (moment: Moment): Moment => (moment.slot === from ? { ...moment, slot } : moment)
    store.change((state) => ({
      ...state,
      slot,
      notice: APART,
      history: {
        ...state.history,
        past: state.history.past.map(moved),
        future: state.history.future.map(moved),
      },
    }))
  }

  const save = () => {
    clearTimeout(timer)
    timer = undefined
    attempt((shelf) => {
      const known = versions.get(store.state.slot)
      const there = versionAt(shelf, store.state.slot)
      if (there !== null && there !== known) apart(store.state.slot)
      const { state } = store
      const { slot } = state
      const own = ({ slot: other }: Moment) => other === slot
      const version = (versions.get(slot) ?? 0) + 1
      const kept = putUp(shelf, slot, {
        version,
        saved: Date.now(),
        now: keptOf(state),
        ticked: state.ticked,
        past: state.history.past.filter(own).slice(-STEPS).map(keptOf),
        future: state.history.future.filter(own).slice(-STEPS).map(keptOf),
      })
      if (kept) versions.set(slot, version)
      else store.change((now) => ({ ...now, notice: FULL }))
      setLast(shelf, slot)
    })
    list()
  }

  const follow = () => {
    const { state } = store
    const same =
      seen.slot === state.slot &&
      seen.scenario === state.scenario &&
      seen.variants === state.variants &&
      seen.chosen === state.chosen &&
      seen.ticked === state.ticked
    if (same) return
    const { slot } = state
    seen = state
    // An example nobody has changed needs no keeping.
    const touched = [...state.history.past, ...state.history.future].some((each) => each.slot === slot)
    if (!touched && !versions.has(slot) && state.ticked.length === 0) return
    clearTimeout(timer)
    timer = setTimeout(save, REST)
  }

  const { slot } = store.state
  const first = attempt((shelf) => versionAt(shelf, slot))
  if (first !== null) versions.set(slot, first)
  store.subscribe(follow)
  list()
  if (typeof addEventListener === 'function') {
    addEventListener('pagehide', () => {
      if (timer !== undefined) save()
    })
    addEventListener('storage', list)
  }

  return {
    open(wanted) {
      if (timer !== undefined) save()
      const record = attempt((shelf) => {
        const { found } = takeDown(shelf, wanted)
        const version = versionAt(shelf, wanted)
        if (version !== null) versions.set(wanted, version)
        setLast(shelf, wanted)
        return found
      })
      if (record)
        store.change((state) => ({
          ...resumed(state, wanted, record),
          studies: state.studies,
          old: state.old,
          shelf: state.shelf,
          example: state.example,
        }))
      list()
    },
    throwAway(wanted) {
      attempt((shelf) => throwAway(shelf, wanted))
      versions.delete(wanted)
      list()
    },
  }
}
