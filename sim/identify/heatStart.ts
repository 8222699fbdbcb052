// How a log starts: a motor as cold as its air, or still warm; and the air where nobody read it.
import type { Log } from './log.ts'

/** Start and air of a log, °C. */
export interface Start {
  /** Air, one value a reading; where it was read, and how well it is known so: standard deviation, K. */
  readonly airC: Float64Array
  readonly airFrom: 'log' | 'cold motor' | 'job'
  readonly airGive: number
  readonly frameC: number
  /** True where the motor had not cooled down before. */
  readonly warm: boolean
}

/** Further above the air than this, the log starts warm: air logged, and taken from the job. K */
const WARM = { log: 4, job: 10 }
const GIVE = { log: 0.5, 'cold motor': 1, job: 3 } as const

const firstOf = (column: Float64Array): number | undefined => column.find((value) => !Number.isNaN(value))

/** How the log starts; air that is not logged is the first reading of a cold motor, else the job's (°C). */
export function startOf(log: Log, jobAirC: number): Start {
  const logged = firstOf(log.airC)
  const read = firstOf(log.frameC) ?? firstOf(log.windingC)
  const frameC = read ?? logged ?? jobAirC
  const warm = frameC > (logged === undefined ? jobAirC + WARM.job : logged + WARM.log)
  const airFrom = logged !== undefined ? 'log' : warm || read === undefined ? 'job' : 'cold motor'
  let air = logged ?? (airFrom === 'job' ? jobAirC : frameC)
  const airC = log.airC.map((value) => {
    if (!Number.isNaN(value)) air = value
    return air
  })
  return { airC, airFrom, airGive: GIVE[airFrom], frameC, warm }
}
