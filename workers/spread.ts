// A study of points spread over the seats of a pool: in stretches, merged in order, the same whatever the seats.
import { canonical } from '../sim/job.ts'
import type { Progress } from '../sim/run.ts'
import { countOf, type PointOf, type PointStudy, type Spec, stretchesOf } from '../sim/studies/points.ts'
import type { Refusal } from './contract.ts'
import { type Kept, kept } from './kept.ts'
import type { Pool } from './pool.ts'

/** Every point in order, or why there are none. */
export type Spread<S extends PointStudy> =
  | { readonly kind: 'points'; readonly points: readonly PointOf<S>[] }
  | Refusal

export interface SpreadAsking<S extends PointStudy> {
  /** Points done, of how many. */
  readonly onProgress?: (progress: Progress) => void
  /** What there is so far, each point at its place: undefined where it is still to come. */
  readonly onPart?: (points: readonly (PointOf<S> | undefined)[]) => void
}

type Asker = Pick<Pool, 'ask'>

/** A stretch whose worker dies is asked again so often: what killed three workers would kill the next. */
export const AGAIN = 2

let batches = 0
const memories = new WeakMap<Asker, Kept>()

function memoryOf(pool: Asker): Kept {
  const memory = memories.get(pool) ?? kept()
  memories.set(pool, memory)
  return memory
}

/**
 * Works a study out over the seats of a pool. Never rejects. An aborted signal is answered 'cancelled', and nothing is
 * told after it. What was done is kept: asked again, a study that was cancelled goes on where it stood.
 */
export async function spread<S extends PointStudy>(
  pool: Asker,
  signal: AbortSignal,
  spec: Spec<S>,
  { onProgress, onPart }: SpreadAsking<S> = {},
): Promise<Spread<S>> {
  if (signal.aborted) return { kind: 'cancelled' }
  const memory = memoryOf(pool)
  const question = canonical(spec)
  const stretches = stretchesOf(spec as Spec)
  const of = countOf<S>(spec)
  const known = memory.get(question) as readonly (readonly PointOf<S>[] | undefined)[] | undefined
  const parts = known ? [...known] : stretches.map((): readonly PointOf<S>[] | undefined => undefined)
  const done = stretches.map(({ from, until }, n) => (parts[n] ? until - from : 0))
  const batch = ++batches
  // One each: a signal that hundreds listen to is taken for a leak.
  const controls = stretches.map(() => new AbortController())
  const stop = () => {
    for (const control of controls) control.abort()
  }
  signal.addEventListener('abort', stop)
  let refusal = null as Refusal | null

  const points = (): readonly (PointOf<S> | undefined)[] =>
    stretches.flatMap<PointOf<S> | undefined>(
      ({ from, until }, n) => parts[n] ?? new Array<undefined>(until - from).fill(undefined),
    )
  const tell = () => onProgress?.({ t: done.reduce((sum, each) => sum + each, 0), of })

  const stretch = async (n: number) => {
    const { from, until } = stretches[n]
    const { signal: own } = controls[n]
    for (let tries = 0; !own.aborted; tries++) {
      const reply = await pool.ask(
        own,
        { kind: 'points', spec: spec as Spec, from, until },
        {
          batch,
          onProgress({ t }) {
            done[n] = t
            tell()
          },
        },
      )
      if (own.aborted) return
      if (reply.kind === 'points') {
        parts[n] = reply.points as readonly PointOf<S>[]
        done[n] = until - from
        tell()
        onPart?.(points())
        return
      }
      done[n] = 0
      if (reply.kind === 'lost' && tries < AGAIN) continue
      refusal = reply
      stop()
    }
  }

  await Promise.all(stretches.flatMap((_, n) => (parts[n] ? [] : [stretch(n)])))
  signal.removeEventListener('abort', stop)
  if (parts.some((part) => part !== undefined)) memory.put(question, parts)
  if (signal.aborted) return { kind: 'cancelled' }
  return refusal ?? { kind: 'points', points: points() as PointOf<S>[] }
}
