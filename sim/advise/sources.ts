// Who says that a finding of safety is one: a standard, or that nobody wrote it down.
import { SAFETY } from '../handbook/safety.ts'
import type { Finding, FindingName } from './finding.ts'

const SOURCES: Partial<Record<FindingName, string>> = {
  noEarth: SAFETY.bonding,
  earthUnknown: `${SAFETY.bonding}; the ohm: ${SAFETY.practice}`,
  bareBridge: `closed form of a bridge at light load; ${SAFETY.practice}`,
  overVolts: `volts over the motor constant; ${SAFETY.castRim}`,
  bigBreaker: SAFETY.sockets,
  notConnected: SAFETY.overtemperature,
  noCutoff: SAFETY.overtemperature,
  motorLead: SAFETY.practice,
  enableOnly: SAFETY.practice,
  restarts: SAFETY.restart,
  touch: SAFETY.burns,
  overspeeds: SAFETY.practice,
  flywheelRim: SAFETY.castRim,
  wheelUnknown: SAFETY.wheel,
  wheelSpeed: SAFETY.wheel,
}

/** The source of a finding of safety; null: it is about the work. Of a belt's limits only the rim's can hurt. */
export const sourceOf = ({ name, quotes }: Pick<Finding, 'name' | 'quotes'>): string | null =>
  name === 'beltLimit' && quotes[0] === 'rim' ? SAFETY.castRim : (SOURCES[name] ?? null)
