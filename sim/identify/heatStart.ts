// How a log starts: a motor as cold as its air, or still warm; and the air where nobody read it.
import type { Log } from './log.ts'

/** Start and air of a log: °C; `warm` where the motor had not cooled down before. */
export interface Start {
  readonly airC: Float64Array
  readonly airGive: number
  readonly frameC: number
  readonly warm: boolean
}

/** Further above the air than this, the log starts warm: air logged, and taken from the job. K */
const WARM = { logged: 4, job: 10 }

/** How the log starts; air that is not logged is the first reading of a cold motor, else the job's (°C). */
export function startOf(log: Log, jobAirC: number): Start {
  const first =
    [log.frameC, log.windingC]
      .map((column) => column.find((value) => !Number.isNaN(value)))
      .find((value) => value !== undefined) ?? jobAirC
  const logged = log.airC.find((value) => !Number.isNaN(value))
  const warm = first > (logged ?? jobAirC) + (logged === undefined ? WARM.job : WARM.logged)
  let air = logged ?? (warm ? jobAirC : first)
  const airC = log.airC.map((value) => {
    if (!Number.isNaN(value)) air = value
    return air
  })
  return { airC, airGive: logged !== undefined ? 0.5 : warm ? 3 : 1, frameC: first, warm }
}
