// Seats for a page: module workers of the browser.
import { type Pool, pool, seatsFor } from '../pool.ts'
import { type SeatMaker, seatOn } from './seat.ts'

const browserSeat: SeatMaker = (watcher) => {
  // In one expression: this is how the bundler finds the worker.
  const worker = new Worker(new URL('../worker.ts', import.meta.url), { type: 'module' })
  worker.addEventListener('error', (event) => watcher.lost(event.message || 'the worker did not start'))
  worker.addEventListener('messageerror', () => watcher.lost('a message could not be read'))
  return seatOn(worker, () => worker.terminate(), watcher)
}

/** Workers for a page. */
export const createPool = (seats = seatsFor(navigator.hardwareConcurrency)): Pool => pool(browserSeat, seats)
