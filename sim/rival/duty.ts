// The largest cut a motor stands through a whole duty: its working steps with one torque, the rest as they are.
import type { Duty, Phase } from '../duty.ts'
import { phaseSeconds } from '../duty.ts'
import { classLimitC } from '../handbook/insulation.ts'
import { senseRate } from '../parts/cutoff.ts'
import type { Parts } from '../plant.ts'
import { advance, type Crossing } from '../solve/advance.ts'
import { root } from '../solve/root.ts'
import { rosenbrock } from '../solve/rosenbrock.ts'
import { leftOver } from '../steady/balance.ts'
import { ampsFor, cutFrom, excess, type HeldAt, heldAt, worst } from '../steady/most.ts'
import { lumpiness } from '../steady/operating.ts'

const TOLERANCE = { relative: 1e-6, absolute: Float64Array.of(1e-3, 1e-3, 1e-3) }
const TYPICAL = Float64Array.of(50, 50, 50)
/** A cycle that ends as it began, to this many K, is the last that need be looked at. */
const CLOSE = 0.01
/** Found to this share of the most that amps allow. */
const PRECISION = 1e-4
const FIRST_STEP = 1

/** A step of work: it cuts. */
export const cuts = ({ cut, surge, speed }: Phase): boolean =>
  speed > 0 &&
  (surge !== null ||
    (cut.kind === 'torque' ? cut.torque > 0 : cut.kind === 'power' ? cut.power > 0 : cut.coefficient > 0))

interface Span {
  readonly held: HeldAt
  readonly torque: number
  readonly seconds: number
}

/** Warms a motor through spans of a held torque; false as soon as a limit is passed. y: winding, frame, switch, °C. */
function warmer(parts: Parts, watch: readonly Crossing[]) {
  const { winding, rotor, cutoff, heat } = parts
  let span: Span
  const stepper = rosenbrock(
    {
      size: 3,
      typical: TYPICAL,
      autonomous: true,
      rates: (_, y, out) => {
        const { held, torque } = span
        const { motor, air, plant } = held
        const amps = ampsFor(held, torque, y[1])
        const running = { speed: motor, amps, formFactorSquared: lumpiness(plant, amps, motor) }
        const [w, f] = leftOver(winding, rotor, heat, air, heat.air, running, y[0], y[1])
        out[0] = w / heat.windingCapacity
        out[1] = f / heat.frameCapacity
        out[2] = senseRate(cutoff, y[0], y[1], y[2])
      },
    },
    TOLERANCE,
  )
  return (y: Float64Array, next: Span): boolean => {
    span = next
    stepper.start(0, y, Math.min(FIRST_STEP, next.seconds))
    for (;;) {
      const { kind } = advance(stepper, next.seconds, watch)
      if (kind === 'crossing' || kind === 'failed') return false
      if (kind === 'edge') break
    }
    y.set(stepper.y)
    const [windingC, frameC, switchC] = y
    const amps = ampsFor(next.held, next.torque, frameC)
    return worst(excess(next.held, next.torque, { amps, windingC, frameC, switchC }))[1] <= 0
  }
}

/**
 * Largest torque of the cut, N·m at the spindle, in every working step at spindle speed `speed` (rad/s), with which
 * the whole job passes no limit: winding, cutoff, amps, volts, belt; from the job's own start. Idling and resting
 * steps are as asked. Null where nothing is cut. Run-up and surges are left out. Source: PHYSICS.md §6.
 */
export function dutyTorque(parts: Parts, duty: Duty, speed: number): number | null {
  const phases = duty.phases.filter((phase) => phaseSeconds(phase) > 0)
  if (!phases.some(cuts)) return null
  const working = heldAt(parts, speed)
  const limitC = classLimitC(parts.winding.insulation)
  const { fitted, opensAt } = parts.cutoff
  // The switch lags and may pass in the rest; a winding that passes needs no look at what comes after.
  const watch: Crossing[] = [{ state: 0, level: limitC, direction: 1 }]
  if (fitted !== 'none') watch.push({ state: 2, level: opensAt, direction: 1 })
  const warm = warmer(parts, watch)
  const spans = phases.map((phase) => ({
    held: cuts(phase) ? working : heldAt(parts, phase.speed),
    works: cuts(phase),
    seconds: phaseSeconds(phase),
  }))

  const lasts = (torque: number): boolean => {
    const y = new Float64Array(3).fill(duty.startC)
    for (let t = 0; t < duty.seconds; ) {
      const before = y.slice()
      for (const { held, works, seconds } of spans) {
        if (t >= duty.seconds) return true
        const span = { held, torque: works ? torque : 0, seconds: Math.min(seconds, duty.seconds - t) }
        if (!warm(y, span)) return false
        t += seconds
      }
      if (y.every((value, n) => Math.abs(value - before[n]) < CLOSE)) return true
    }
    return true
  }
  const high = cutFrom(working, parts.controller.currentLimit, Math.min(duty.startC, parts.heat.air))
  if (!(high > 0) || !lasts(0)) return 0
  if (lasts(high)) return high
  return root((torque) => (lasts(torque) ? -1 : 1), 0, high, -1, 1, PRECISION * high)
}
