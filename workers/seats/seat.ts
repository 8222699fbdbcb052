// A seat: one worker as the pool sees it, whatever it runs on.
import { type Endpoint, proxy, wrap } from 'comlink'
import type { Reply, Report, Service, Task } from '../contract.ts'

export interface Seat {
  /** May stay unanswered for ever once the worker is gone: `lost` tells. */
  work(call: number, task: Task): Promise<Reply>
  cancel(call: number): void
  close(): void
}

/** What a seat tells its pool. */
export interface Watcher {
  /** The worker has started. */
  ready(): void
  progress: Report
  /** The worker is gone. */
  lost(why: string): void
}

export type SeatMaker = (watcher: Watcher) => Seat

/** A seat on a worker reached through comlink; `close` ends the worker. */
export function seatOn(endpoint: Endpoint, close: () => void, watcher: Watcher): Seat {
  const remote = wrap<Service>(endpoint)
  const lost = (error: Error) => watcher.lost(error.message)
  // Out of comlink's hands: an error in a listener is the page's own, and must not end up in the worker.
  const report: Report = (call, progress) => queueMicrotask(() => watcher.progress(call, progress))
  remote.listen(proxy(report)).then(() => watcher.ready(), lost)
  return {
    work: (call, task) => remote.work(call, task),
    cancel: (call) => void remote.cancel(call).catch(lost),
    close,
  }
}
