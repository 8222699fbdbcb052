// What the torque chart shows, before it is drawn: the points the job asks, its lines, and what is read off at a speed.
import { meanTorque } from '../../sim/duty.ts'
import type { Job } from '../../sim/job.ts'
import { fromUnit, toUnit } from '../../sim/quantity.ts'
import type { AgainstOld } from '../../sim/rival/picture.ts'
import type { Curve } from '../../sim/rival/strength.ts'
import { WITH } from '../../sim/say/compare.ts'
import { platePower, told } from '../../sim/say/number.ts'
import type { Units } from '../../sim/say/units.ts'

/** A point the job asks: a step of it, or its surges. Torque of the cut, N·m; spindle speed, rad/s. */
export interface AskedPoint {
  readonly name: string
  readonly speed: number
  readonly torque: number
}

/** Steps that cut, each with its mean torque; and the highest of its surges, where it has any. */
export const askedPoints = (job: Job): readonly AskedPoint[] =>
  job.duty.phases.flatMap((phase, n) => {
    const torque = meanTorque(phase)
    const name = phase.name.trim() || `step ${n + 1}`
    if (!(phase.speed > 0) || !(torque > 0)) return []
    const { surge, cut, speed } = phase
    const steady = cut.kind === 'torque' ? cut.torque : torque
    return [
      { name: surge ? `${name}, on average` : name, speed, torque },
      ...(surge ? [{ name: 'surge', speed, torque: steady + surge.torque }] : []),
    ]
  })

/** Torque of a curve at a speed, straight between its points; null past its end. */
export function onCurve({ speed, torque }: Curve, at: number): number | null {
  const last = speed.length - 1
  if (at < speed[0] || at > speed[last] * (1 + 1e-9)) return null
  const after = Math.max(
    1,
    speed.findIndex((each) => each >= at),
  )
  const share = (at - speed[after - 1]) / (speed[after] - speed[after - 1])
  return torque[after - 1] + (torque[after] - torque[after - 1]) * Math.min(1, share)
}

/** A curve with the classes of its line and label, and its name. */
export interface TorqueLine {
  readonly curve: Curve
  readonly look: string
  readonly label: string
  readonly name: string
}

export function linesOf(picture: AgainstOld, job: Job, units: Units): readonly TorqueLine[] {
  const { comparison, allDay, seconds, old } = picture
  const now = job.parts.heat.cooling
  const power = comparison ? `old ${platePower(comparison.rival.power, units)} motor` : 'old motor'
  return [
    ...allDay.map(({ cooling, curve }) => ({
      curve,
      look: cooling === now ? 'A heavy' : 'B series',
      label: cooling === now ? 'A strong' : 'B strong',
      name: `all day, ${WITH[cooling] === 'without' ? 'no fan' : WITH[cooling].replace('with the', 'with').replace('with a ', '')}`,
    })),
    { curve: seconds, look: 'seconds', label: 'quiet', name: 'seconds only' },
    ...old.map((curve, n) => ({
      curve,
      look: 'D series',
      label: 'D strong',
      name: old.length > 1 ? `${power}, step ${n + 1}` : power,
    })),
  ]
}

/** Every line at a spindle speed, rad/s, in words. */
export const torqueWords = (lines: readonly TorqueLine[], speed: number, units: Units): string =>
  lines
    .map(({ name, curve }) => {
      const torque = onCurve(curve, speed)
      return `${name}: ${torque === null ? 'out of reach' : told(torque, 'torque', units)}`
    })
    .join('; ')

const STEP_RPM = 5

/** Spindle speed a key moves the cross-hair to, rad/s; undefined: none of its keys. */
export function torqueKey(
  key: string,
  shift: boolean,
  at: number,
  fastest: number,
  asked: readonly number[],
): number | undefined {
  const rpm = toUnit(at, 'rpm')
  const step = shift ? 10 * STEP_RPM : STEP_RPM
  const kept = (to: number) => Math.min(fastest, Math.max(0, fromUnit(to, 'rpm')))
  switch (key) {
    // Steps land on whole multiples, wherever a drag left the cross-hair.
    case 'ArrowRight':
    case 'ArrowUp':
      return kept((Math.floor(rpm / step + 1e-6) + 1) * step)
    case 'ArrowLeft':
    case 'ArrowDown':
      return kept((Math.ceil(rpm / step - 1e-6) - 1) * step)
    case 'PageUp':
      return asked.filter((each) => each > at * (1 + 1e-6)).reduce((a, b) => Math.min(a, b), fastest)
    case 'PageDown':
      return asked.filter((each) => each < at * (1 - 1e-6)).reduce((a, b) => Math.max(a, b), 0)
    case 'Home':
      return 0
    case 'End':
      return fastest
    default:
      return undefined
  }
}
