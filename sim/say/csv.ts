// A trace as a table for a spreadsheet: one row a moment, units in the header.
import type { Job } from '../job.ts'
import { assemble } from '../plant.ts'
import { toUnit } from '../quantity.ts'
import type { Channel, Sum, Trace } from '../trace.ts'

interface Column {
  readonly header: string
  readonly channel: Channel | Sum
  /** From SI in the trace to what the header says. */
  readonly convert: (value: number) => number
}

const same = (value: number): number => value
const rpm = (value: number): number => toUnit(value, 'rpm')

function columnsOf(job: Job): readonly Column[] {
  const { ratio } = assemble(job.parts)
  return [
    { header: 'asked spindle speed (rpm)', channel: 'asked', convert: (w) => rpm(w / ratio) },
    { header: 'spindle speed (rpm)', channel: 'spindle', convert: rpm },
    { header: 'motor speed (rpm)', channel: 'speed', convert: rpm },
    { header: 'motor current (A)', channel: 'current', convert: same },
    { header: 'motor voltage (V)', channel: 'volts', convert: same },
    { header: 'cut torque at the spindle (N·m)', channel: 'load', convert: same },
    { header: 'winding (°C)', channel: 'windingC', convert: same },
    { header: 'frame (°C)', channel: 'frameC', convert: same },
    { header: 'cutoff switch (°C)', channel: 'switchC', convert: same },
    { header: 'energy taken by the motor so far (J)', channel: 'taken', convert: same },
    { header: 'copper heat so far (J)', channel: 'copper', convert: same },
    { header: 'work of the cut so far (J)', channel: 'work', convert: same },
  ]
}

/** Six significant digits: more than any reading, short enough to read. */
const cell = (value: number): string => String(Number(value.toPrecision(6)))

/** The table, a chunk of lines at a time, so that a long one need not be held twice. */
export function* csvLines(job: Job, trace: Trace): Generator<string> {
  const columns = columnsOf(job)
  yield `${['time (s)', ...columns.map(({ header }) => header)].join(',')}\n`
  for (let row = 0; row < trace.time.length; row++) {
    const cells = columns.map(({ channel, convert }) => cell(convert(trace.columns[channel][row])))
    // Times keep milliseconds however long the job, or rows would fall together.
    yield `${[String(Number(trace.time[row].toFixed(4))), ...cells].join(',')}\n`
  }
}
