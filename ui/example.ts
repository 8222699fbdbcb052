// The example, worked out beside the empty sheet: its answer stands there to be read, and opens at once.
import { canonical } from '../sim/job.ts'
import { read } from '../sim/read.ts'
import type { Pool } from '../workers/pool.ts'
import { lacks } from './change/blank.ts'
import { firstDemo } from './firstDemo.ts'
import type { Store } from './store.ts'

/** Works the example out once a sheet is empty, where `free` says that no other is on its way. Returns a look at it. */
export function offerExample(store: Store, pool: Pick<Pool, 'ask'>, free: () => boolean): () => void {
  let asked = false
  const look = () => {
    if (asked || !free() || !lacks(store.state)) return
    asked = true
    void workOut(store, pool)
  }
  store.subscribe(look)
  look()
  return look
}

/** Works the example out. What is lost is asked again when somebody opens it. */
async function workOut(store: Store, pool: Pick<Pool, 'ask'>): Promise<void> {
  const reading = read(firstDemo)
  if (!reading.ok) return
  const { job } = reading
  const reply = await pool.ask(new AbortController().signal, { kind: 'run', job })
  if (reply.kind !== 'done') return
  const { trace, figures, skipping } = reply
  const example = { text: firstDemo, job, key: canonical(job), reading, trace, figures, skipping }
  store.change((state) => ({ ...state, example }))
}
