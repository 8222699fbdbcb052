// How far the map reaches: speeds up to what the volts give, torques up to what the amps do or the job asks.
import type { Job } from '../../job.ts'
import type { Parts } from '../../plant.ts'
import { allDayTorque } from '../../steady/allDay.ts'
import { cutFrom, heldAt } from '../../steady/most.ts'
import { topSpeed } from '../../steady/operating.ts'
import type { Cooling } from '../map.ts'
import type { MapMark } from './marks.ts'

export interface Reach {
  /** Spindle speeds, rad/s. */
  readonly slowest: number
  readonly fastest: number
  /** Torque of the cut, N·m. */
  readonly top: number
}

/** The slowest as a share of the fastest; and how far over the current limit's torque, marks and all-day torque it goes. */
const SLOWEST = 0.1
const OVER_LIMIT = 1.1
const OVER_MARK = 1.25
const OVER_ALL_DAY = 4

export function reachOf(job: Job, coolings: readonly Cooling[], marks: readonly MapMark[]): Reach {
  const { parts } = job
  const asked = job.duty.phases.map(({ speed }) => speed).filter((speed) => speed > 0)
  const fastest = Math.max(topSpeed(parts), ...asked, 1e-3)
  const slowest = Math.min(SLOWEST * fastest, ...asked.map((speed) => 0.8 * speed))
  const middle = (slowest + fastest) / 2
  const limit = Math.max(0, cutFrom(heldAt(parts, middle), parts.controller.currentLimit, parts.heat.air))
  const allDay = Math.max(...coolings.map((cooling) => allDayAt(parts, middle, cooling)))
  const mark = Math.max(0, ...marks.map(({ high }) => high))
  const wanted = Math.max(OVER_MARK * mark, OVER_ALL_DAY * allDay)
  return { slowest, fastest, top: Math.max(Math.min(OVER_LIMIT * limit, wanted), OVER_MARK * mark, 1e-3) }
}

const allDayAt = (parts: Parts, speed: number, cooling: Cooling): number =>
  allDayTorque(parts, speed, cooling).torque
