// Seats for a page: module workers of the browser.
import { type Pool, pool } from '../pool.ts'
import { type SeatMaker, seatOn } from './seat.ts'

const browserSeat: SeatMaker = (watcher) => {
  // In one expression: this is how the bundler finds the worker.
  const worker = new Worker(new URL('../worker.ts', import.meta.url), { type: 'module' })
  worker.addEventListener('error', (event) => watcher.lost(event.message || 'the worker did not start'))
  worker.addEventListener('messageerror', () => watcher.lost('a message could not be read'))
  return seatOn(worker, () => worker.terminate(), watcher)
}

/** Workers for a page: two at least, so that a long check never holds up an answer. */
export const createPool = (seats = Math.min(4, Math.max(2, navigator.hardwareConcurrency))): Pool =>
  pool(browserSeat, seats)
