// Seats for the command line and the tests: worker threads.
import { Worker } from 'node:worker_threads'
import nodeEndpoint from 'comlink/dist/umd/node-adapter.js'
import { type Pool, pool } from '../pool.ts'
import { type SeatMaker, seatOn } from './seat.ts'

export const nodeSeat: SeatMaker = (watcher) => {
  // Without the flags of this process: under the test runner they would not do for a plain worker.
  const worker = new Worker(new URL('../nodeWorker.mjs', import.meta.url), { execArgv: [] })
  worker.on('error', (error) => watcher.lost(error.message))
  worker.on('exit', () => watcher.lost('the worker ended'))
  return seatOn(nodeEndpoint(worker), () => void worker.terminate(), watcher)
}

/** Worker threads; the process lives on until the pool is closed. */
export const createPool = (seats: number): Pool => pool(nodeSeat, seats)
