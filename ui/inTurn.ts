// Turns on the page's one thread: what is drawn anew waits in a line, one piece a task, and the reader is heard in between.
import { LitElement } from 'lit'
import { nextTask } from '../workers/nextTask.ts'

let last: Promise<void> = Promise.resolve()

/** A turn: a task after those of all who asked before. */
export function turn(): Promise<void> {
  last = last.then(nextTask)
  return last
}

/** A part of the page that is drawn at once while it is new, and in its turn ever after. Where a reader types or steps by keys, nothing waits. */
export class InTurn extends LitElement {
  protected override async scheduleUpdate(): Promise<void> {
    if (this.hasUpdated) await turn()
    super.scheduleUpdate()
  }
}
