// The studies of the lower sheet: the ratio study asked for by hand, the old motor's picture kept up once it is looked at.
import { latest } from '../workers/latest.ts'
import type { Pool } from '../workers/pool.ts'
import { readOld } from './change/oldMotor.ts'
import { type AgainstWork, chosenOf, type RatioWork, type State, type Store } from './store.ts'

export interface Studies {
  ratio(): void
  cancelRatio(): void
}

/** Equal for pictures that would be equal: the job asked, and the old motor as typed. */
const againstKey = (state: State): string | null => {
  const key = state.asked.get(chosenOf(state).id)
  return key === undefined ? null : `${JSON.stringify(state.against.old)} ${key}`
}

export function startStudies(store: Store, pool: Pick<Pool, 'ask'>): Studies {
  const ratioAsking = latest()
  const againstAsking = latest()
  /** The key being worked out. */
  let pending: string | null = null
  const setRatio = (part: Partial<RatioWork>) =>
    store.change((state) => ({ ...state, ratio: { ...state.ratio, ...part } }))
  const setAgainst = (part: Partial<AgainstWork>) =>
    store.change((state) => ({ ...state, against: { ...state.against, ...part } }))

  const seeAgainst = async (state: State, key: string) => {
    const reading = state.readings.get(chosenOf(state).id)
    const old = readOld(state.against.old)
    // While the old motor does not read, the last picture stays; the first is drawn without it.
    if (!reading?.ok || (old?.ok === false && state.against.picture)) return
    pending = key
    const signal = againstAsking.next()
    const reply = await pool.ask(signal, {
      kind: 'against',
      job: reading.job,
      rival: old?.ok ? old.rival : null,
    })
    if (signal.aborted) return
    pending = null
    if (reply.kind === 'against') setAgainst({ picture: reply.picture, key, why: null })
    else if (reply.kind !== 'cancelled') setAgainst({ key, why: reply.why })
  }

  let scenario = store.state.scenario.name
  store.subscribe(() => {
    const { state } = store
    // Another job on the page: a study of the one before is of no use to anybody.
    if (state.scenario.name !== scenario) {
      scenario = state.scenario.name
      ratioAsking.cancel()
      if (state.ratio.working) return setRatio({ working: null })
    }
    if (!state.against.wanted) return
    const key = againstKey(state)
    if (key === null || key === pending || key === state.against.key) return
    void seeAgainst(state, key)
  })

  return {
    async ratio() {
      const { state } = store
      const chosen = chosenOf(state)
      const key = state.asked.get(chosen.id)
      if (key === undefined) return
      const signal = ratioAsking.next()
      setRatio({ working: { t: 0, of: 1 }, why: null })
      const { name, changes } = chosen
      const reply = await pool.ask(
        signal,
        { kind: 'ratio', scenario: state.scenario, variant: { name, changes } },
        {
          onProgress: (working) => {
            if (!signal.aborted) setRatio({ working })
          },
        },
      )
      if (signal.aborted) return
      if (reply.kind === 'studied' && reply.study.ok) setRatio({ working: null, study: reply.study, key })
      else
        setRatio({
          working: null,
          why:
            reply.kind === 'studied' ? 'a value needs a look' : reply.kind === 'cancelled' ? null : reply.why,
        })
    },
    cancelRatio() {
      ratioAsking.cancel()
      setRatio({ working: null })
    },
  }
}
