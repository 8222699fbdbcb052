// A seat: one worker as the pool sees it, whatever it runs on.
import type { Reply, Report, Task } from '../contract.ts'
import type { Asked, Port, Told } from '../link.ts'

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

/** A seat on the worker at the other end of a wire; `close` ends the worker. */
export function seatOn(port: Port, close: () => void, watcher: Watcher): Seat {
  const waiting = new Map<number, (reply: Reply) => void>()
  const ask = (asked: Asked) => port.send(asked)
  port.receive((message) => {
    const told = message as Told
    if (told.tell === 'ready') watcher.ready()
    else if (told.tell === 'progress') watcher.progress(told.call, told.progress)
    else {
      waiting.get(told.call)?.(told.reply)
      waiting.delete(told.call)
    }
  })
  return {
    work: (call, task) =>
      new Promise((settle) => {
        ask({ ask: 'work', call, task })
        waiting.set(call, settle)
      }),
    cancel: (call) => ask({ ask: 'cancel', call }),
    close,
  }
}
