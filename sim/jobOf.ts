// From the inputs as read to the job: the duty's cuts, the step of the pulleys in use, what the belt carries.
import type { Duty, Phase } from './duty.ts'
import type { FilledMotor } from './fill.ts'
import { frozen, type Job } from './job.ts'
import { type Belt, onStep, ratio } from './parts/belt.ts'
import { wired } from './parts/cutoff.ts'
import type { Cut } from './parts/machine.ts'
import type { Plate } from './parts/plate.ts'
import type { PhaseCut } from './phaseCuts.ts'
import type { ReadScenario } from './scenario.ts'

/** Spindle speed under which a constant-power cut asks no more torque, where nothing is asked. rad/s */
const SLOW = 1

function namedCut({ law, torque, power, speed }: PhaseCut): Cut {
  if (law === 'power') return { kind: 'power', power, fullAbove: speed / 4 }
  return law === 'fan' ? { kind: 'fan', coefficient: torque / (speed * speed) } : { kind: 'torque', torque }
}

function cutOf(phase: ReadScenario['duty']['phases'][number]): Cut {
  if (phase.power !== undefined)
    return { kind: 'power', power: phase.power, fullAbove: phase.speed > 0 ? phase.speed / 4 : SLOW }
  if (phase.fanTorque !== undefined && phase.speed > 0)
    return { kind: 'fan', coefficient: phase.fanTorque / (phase.speed * phase.speed) }
  return { kind: 'torque', torque: phase.torque ?? 0 }
}

function dutyOf({ duty, heat }: ReadScenario, cuts: readonly PhaseCut[]): Duty {
  const byPhase = new Map(cuts.map((cut) => [cut.phase, cut]))
  return {
    phases: duty.phases.map((phase, index): Phase => {
      const named = byPhase.get(index)
      return {
        name: phase.name,
        seconds: phase.lasts,
        speed: named ? named.speed : phase.speed,
        cut: named ? namedCut(named) : cutOf(phase),
        surge: phase.surge ?? null,
      }
    }),
    seconds: duty.repeatFor,
    startC: duty.start ?? heat.air,
  }
}

/** A belt nobody has seen slip carries half as much again as the motor's plate torque (PHYSICS.md §4). */
const CARRIES = 1.5

function carrying(belt: Belt, plate: Partial<Plate>): Belt {
  const { power, speed } = plate
  if (belt.carries !== undefined || power === undefined || speed === undefined) return belt
  // Fitted for its work: a fast belt lifts off, and what is left of its pull there has to do.
  return { ...belt, carries: (CARRIES * power * ratio(belt)) / speed, carriesAt: speed }
}

/** The job of the inputs as read, with its motor's numbers and the cuts that steps name. */
export function jobOf(
  read: ReadScenario,
  { winding, rotor, heat }: FilledMotor,
  cuts: readonly PhaseCut[],
): Job {
  const { supply, controller, belt, machine, cutoff, plate } = read
  const lumpy =
    plate.amps !== undefined && plate.speed !== undefined ? { amps: plate.amps, speed: plate.speed } : null
  return frozen({
    parts: {
      supply,
      controller,
      winding,
      rotor,
      belt: carrying(onStep(belt), plate),
      machine,
      heat,
      cutoff: wired(cutoff),
      lumpy,
    },
    plate,
    duty: dutyOf(read, cuts),
    accuracy: 'default',
  })
}
