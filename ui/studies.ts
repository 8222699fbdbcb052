// Studies kept up: each is worked out once its zone has been looked at, and again whenever it would be another one.
import { latest } from '../workers/latest.ts'
import type { Pool } from '../workers/pool.ts'
import type { State, Store } from './store.ts'
import { adviceKeeper } from './study/advice.ts'
import { againstKeeper } from './study/against.ts'
import { gridKeeper } from './study/grid.ts'
import { isStaleBy, type Keeper, type Outcome } from './study/keeper.ts'
import { lessonKeeper } from './study/lesson.ts'
import { limitsKeeper } from './study/limits.ts'
import { mapKeeper } from './study/map.ts'
import { ratioKeeper } from './study/ratio.ts'
import { sureKeeper } from './study/sure.ts'
import type { Kept, StudyName, Work } from './study/work.ts'

const KEEPERS: { readonly [N in StudyName]: Keeper<Kept[N]> } = {
  ratio: ratioKeeper,
  map: mapKeeper,
  against: againstKeeper,
  limits: limitsKeeper,
  advice: adviceKeeper,
  grid: gridKeeper,
  lesson: lessonKeeper,
  sure: sureKeeper,
}
const NAMES = Object.keys(KEEPERS) as StudyName[]

/** Nothing new is studied until the inputs have rested so long, ms: who drags a slider waits for the answer alone. */
export const PAUSE = 250

/** Whether a study on show is of other inputs than those asked now. */
export const isStale = (state: State, name: StudyName): boolean => isStaleBy(KEEPERS[name], state, name)

/** The state with a study told to stop; it is taken up again when asked, or when its inputs are others. */
export const stopStudy = (state: State, name: StudyName): State =>
  withWork(state, name, { halted: KEEPERS[name].key(state) })

/** The state with a study asked for. */
export const wantStudy = (state: State, name: StudyName): State =>
  withWork(state, name, { wanted: true, halted: null, ...(state.studies[name].why ? { key: '' } : {}) })

function withWork<N extends StudyName>(state: State, name: N, part: Partial<Work<Kept[N]>>): State {
  return { ...state, studies: { ...state.studies, [name]: { ...state.studies[name], ...part } } }
}

/** Keeps the studies of a store up, from now on. */
export function startStudies(store: Store, pool: Pick<Pool, 'ask'>): void {
  for (const name of NAMES) keepUp(store, pool, name)
}

function keepUp<N extends StudyName>(store: Store, pool: Pick<Pool, 'ask'>, name: N): void {
  const keeper: Keeper<Kept[N]> = KEEPERS[name]
  const channel = latest()
  const set = (part: Partial<Work<Kept[N]>>) => store.change((state) => withWork(state, name, part))
  /** The key under way, or about to be. */
  let pending: string | null = null
  let timer: ReturnType<typeof setTimeout> | undefined

  const drop = () => {
    clearTimeout(timer)
    pending = null
    channel.cancel()
    if (store.state.studies[name].working) set({ working: null })
  }

  const start = async (key: string) => {
    const signal = channel.next()
    const heard = <A extends readonly unknown[]>(then: (...told: A) => void) => {
      return (...told: A) => {
        if (!signal.aborted) then(...told)
      }
    }
    set({ working: { t: 0, of: 1 }, why: null })
    const outcome: Outcome<Kept[N]> = await keeper
      .work(store.state, {
        pool,
        signal,
        onProgress: heard((working) => set({ working })),
        onPart: heard((result) => set({ result, key })),
      })
      .catch((error: Error) => ({ why: error.message }))
    if (signal.aborted) return
    pending = null
    // What was found for other inputs is not shown as the answer to these.
    const result = outcome && 'result' in outcome ? outcome.result : null
    const why = outcome && 'why' in outcome ? outcome.why : null
    set({ working: null, key, result, why })
  }

  store.subscribe(() => {
    const { state } = store
    const work = state.studies[name]
    if (!work.wanted) return
    const key = keeper.key(state)
    const due = key !== null && key !== work.halted && (key !== work.key || key === pending)
    if (pending !== null && (!due || key !== pending)) drop()
    // The answer itself goes before any study of it.
    if (!due || pending !== null || state.working.size > 0) return
    pending = key
    timer = setTimeout(() => void start(key), keeper.pause ?? PAUSE)
  })
}
