// The apple mill's three hours, run once, and what tests of a run look at.
import { CHANNELS, SUMS, type Trace } from '../../sim/trace.ts'
import { type Changes, job, traceOf } from '../jobs.ts'

export const NAMES = [...CHANNELS, ...SUMS]
/** The apple mill's three hours: four openings, in both working steps. */
export const mill = job()
export const milled = traceOf(mill)

/** The mill at one step only. */
export const steady = (step: Changes, changes: Changes = {}) =>
  job({ 'duty.phases': [{ name: 'work', lasts: '1 min', ...step }], 'duty.repeatFor': '1 min', ...changes })
/** True where two columns are the same to the last bit. */
export const same = (a: Float64Array, b: Float64Array) =>
  Buffer.from(a.buffer, a.byteOffset, a.byteLength).equals(Buffer.from(b.buffer, b.byteOffset, b.byteLength))
export const end = ({ time }: Trace) => time[time.length - 1]
export const last = (trace: Trace, name: (typeof NAMES)[number]) => trace.columns[name][trace.time.length - 1]
