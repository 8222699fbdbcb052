// Which rows of a log can be used; what is left out or taken for granted is told.

/** Columns of one length, NaN where a cell is empty: s, °C, Ω, A, rad/s, V. */
export type Columns = Readonly<
  Record<'time' | 'frameC' | 'windingC' | 'ohms' | 'airC' | 'amps' | 'speed' | 'volts', Float64Array>
>

/** "1 row", "3 rows". */
export const count = (n: number, one: string): string => `${n} ${one}${n === 1 ? '' : 's'}`

/** More of the rows than this going back in time is no slip. Share */
const MUDDLED = 0.2

/** The columns with amps set to 0 where they are blank before the first reading of them, after the last, and at rest. */
export function blanksAsOff(columns: Columns): { columns: Columns; notes: string[] } {
  const { amps, speed } = columns
  const known = [...amps.keys()].filter((at) => !Number.isNaN(amps[at]))
  if (known.length === 0) return { columns, notes: [] }
  const [start, end] = [known[0], known[known.length - 1] + 1]
  const off = (at: number) => at < start || at >= end || speed[at] === 0
  const notes = [
    start > 0 ? `Amps are blank in the first ${count(start, 'row')}: taken as not yet running.` : '',
    end < amps.length
      ? `Amps are blank in the last ${count(amps.length - end, 'row')}: taken as switched off.`
      : '',
  ].filter((note) => note !== '')
  const blank = (at: number) => Number.isNaN(amps[at]) && off(at)
  return {
    notes,
    columns: {
      ...columns,
      amps: amps.map((value, at) => (blank(at) ? 0 : value)),
      speed: speed.map((value, at) => (blank(at) && Number.isNaN(value) ? 0 : value)),
    },
  }
}

/**
 * Places of the rows with a time, amps (where any are logged) and some temperature, times running forward; what was
 * left out is in the notes. Null where the times run back and forth.
 */
export function usableRows({ time, frameC, windingC, ohms, amps }: Columns): {
  rows: number[] | null
  notes: string[]
} {
  const ampsLogged = !amps.every(Number.isNaN)
  const rows: number[] = []
  const back: number[] = []
  let gaps = 0
  for (const at of time.keys()) {
    const blind = [frameC[at], windingC[at], ohms[at]].every(Number.isNaN)
    if (Number.isNaN(time[at]) || blind || (ampsLogged && Number.isNaN(amps[at]))) gaps++
    else if (rows.length > 0 && time[at] < time[rows[rows.length - 1]]) back.push(at)
    else rows.push(at)
  }
  const are = (n: number) => (n === 1 ? 'is' : 'are')
  const notes: string[] = []
  if (gaps > 0) notes.push(`${count(gaps, 'row')} with gaps ${are(gaps)} left out.`)
  if (back.length > 0)
    notes.push(
      `The time goes back at reading ${back[0] + 1}: ${count(back.length, 'row')} out of order ${are(back.length)} left out.`,
    )
  return { rows: back.length > MUDDLED * (rows.length + back.length) ? null : rows, notes }
}
