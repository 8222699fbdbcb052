// Surges bunched: fewer and longer ones that add the same, so that hundreds of runs need not follow each of them.
import type { Phase, Surge } from '../../duty.ts'
import type { Job } from '../../job.ts'
import { cutTorque, idleTorque } from '../../parts/machine.ts'
import { friction } from '../../parts/rotor.ts'
import { ceiling } from '../../parts/supply.ts'
import { constantAt, resistanceAt } from '../../parts/winding.ts'
import { assemble } from '../../plant.ts'

/** A bunch is short beside what warms up, and so is the time from one to the next: shares of the winding's time constant. */
const BUNCH = 1 / 50
const PERIOD = 1 / 12
/** And beside the switch's lag. */
const OF_LAG = 1 / 4
const USUAL_LAG = 45

/** A surge in bunches that fill a step (s) as often as they must; its seconds over the step stay the same. */
function inBunches({ torque, every, lasts }: Surge, seconds: number, longest: number, period: number): Surge {
  const count = seconds / every
  const bunches = Math.ceil(Math.max((count * lasts) / longest, seconds / period, 1))
  if (lasts >= every || bunches >= count) return { torque, every, lasts }
  const whole = Math.floor(count)
  const inSurge = whole * lasts + Math.min(lasts, seconds - whole * every)
  return { torque, every: seconds / bunches, lasts: inSurge / bunches }
}

/** What is asked for must be held with so much to spare, motor hot, or a longer surge would stall what a short one does not. */
const TO_SPARE = 0.9
const HOT = { windingC: 150, frameC: 100 }

/** True where the drive holds a step's cut, and its surge for as long as it likes. */
export function holds({ parts }: Job, { speed, cut, surge }: Phase): boolean {
  const { ratio } = assemble(parts)
  const { controller, supply, winding, rotor, belt, machine } = parts
  const spindle = cutTorque(cut, surge?.torque ?? 0, speed) + idleTorque(machine, speed)
  const torque = spindle / (ratio * belt.efficiency) + friction(rotor, speed * ratio)
  const constant = constantAt(winding, HOT.frameC)
  const amps = torque / constant
  const volts = constant * speed * ratio + resistanceAt(winding, HOT.windingC) * amps + winding.brushDrop
  return amps < TO_SPARE * controller.currentLimit && volts < TO_SPARE * ceiling(supply, amps)
}

/** The job with its surges bunched: the same mean torque and heat, a ripple of the winding that is a kelvin or two more. */
export function bunched(job: Job): Job {
  const { heat, cutoff } = job.parts
  const slow = heat.windingCapacity / heat.windingToFrame
  const longest = Math.min(BUNCH * slow, OF_LAG * (cutoff.lag ?? USUAL_LAG))
  const phases = job.duty.phases.map((phase) =>
    phase.surge && holds(job, phase)
      ? { ...phase, surge: inBunches(phase.surge, phase.seconds, longest, PERIOD * slow) }
      : phase,
  )
  return { ...job, duty: { ...job.duty, phases } }
}
