// Whether a job's own numbers come to a symptom: then it is the load; else something is broken, loose or worn.
import { slipCapacity } from '../../belting/slip.ts'
import { idleTorque } from '../../parts/machine.ts'
import { friction } from '../../parts/rotor.ts'
import { liveVolts } from '../../parts/supply.ts'
import { constantAt, resistanceAt } from '../../parts/winding.ts'
import { assemble } from '../../plant.ts'
import type { Case } from '../case.ts'
import { type Evidence, JOB, LIVE, number, RUN } from '../finding.ts'
import type { Symptom } from './names.ts'

export interface Explained {
  /** Null: the job does not say enough. */
  readonly explained: boolean | null
  readonly evidence: Readonly<Record<string, Evidence>>
}

/** A cutoff that opens later than this many times the time seen is no explanation: heat is rarely known better than to a half or twice. */
const MUCH_LATER = 3
/** A frame that a hand leaves at once, °C (ISO 13732-1, from memory). */
const LET_GO_C = 60
/** A hand's "minute" may be two. */
const MINUTE = 60
/** A fuse holds its printed amps for good. */
const HOLDS = 1
/** Torque this far over what is asked is plenty; and a belt's grip. */
const PLENTY = 1.1

/** Watts that go into heat at the hardest moment: peak amps through a warm winding, brushes and friction. */
function heatAtWorst({ job, now, work, ratio }: Case): number {
  const { winding, rotor } = job.parts
  const w = work.speed * ratio
  const stands = now.stalled !== null
  const amps = stands ? now.peakAmps : now.workAmps
  return (
    resistanceAt(winding, 75) * amps * amps + winding.brushDrop * amps + (stands ? 0 : friction(rotor, w) * w)
  )
}

/** Most torque at the spindle that the current limit allows at a standstill, drag taken off, N·m. */
function mostTorque({ job, ratio }: Case): number {
  const { winding, rotor, belt, controller, machine, supply, heat } = job.parts
  if (supply.kind === 'ac') return 0
  const byVolts = supply.volts / (resistanceAt(winding, heat.air) + supply.resistance)
  const amps = Math.min(controller.currentLimit, byVolts)
  const shaft = constantAt(winding, heat.air) * amps - friction(rotor, 10)
  return Math.max(0, shaft * ratio * belt.efficiency - idleTorque(machine, 1))
}

/** What stops a drive whose cutoff stops nothing: the breaker, or the controller. */
function tripsUnguarded({ job, now }: Case, after: number | null): Explained {
  const { breaker } = job.parts.supply
  return {
    explained: now.outletAmps > HOLDS * breaker,
    evidence: {
      ...(after === null ? {} : { seen: number(after, 'time', 'as told') }),
      outlet: number(now.outletAmps, 'current', RUN),
      breaker: number(breaker, 'current', JOB),
      winding: number(now.hottestWindingC, 'temperature', RUN),
    },
  }
}

/** Whether the numbers of a case come to a symptom seen `after` s. */
export function explained(one: Case, symptom: Symptom, after: number | null): Explained {
  const { job, now, work } = one
  const { supply, belt } = job.parts
  switch (symptom) {
    case 'trips': {
      if (!now.guarded) return tripsUnguarded(one, after)
      const opens = now.firstOpening
      const inTime = opens !== null && (after === null || opens <= MUCH_LATER * after)
      return {
        explained: inTime,
        evidence: {
          ...(after === null ? {} : { seen: number(after, 'time', 'as told') }),
          ...(opens === null ? {} : { opens: number(opens, 'time', RUN) }),
          switch: number(now.hottestSwitchC, 'temperature', RUN),
        },
      }
    }
    case 'burns': {
      const seconds = after ?? MINUTE
      const { heat } = job.parts
      const needed = (heat.frameCapacity * (LET_GO_C - heat.air)) / seconds
      const watts = heatAtWorst(one)
      return {
        explained: watts >= needed || supply.kind === 'ac',
        evidence: {
          needed: number(needed, 'power', 'the frame’s heat capacity, from the air’s temperature to 60 °C'),
          watts: number(watts, 'power', RUN),
          within: number(seconds, 'time', 'as told'),
        },
      }
    }
    case 'fuse':
      return {
        explained:
          supply.kind === 'ac' ||
          now.outletAmps > HOLDS * supply.breaker ||
          one.has('stalls') ||
          (job.plate.amps !== undefined && job.parts.controller.currentLimit > 2.5 * job.plate.amps),
        evidence: {
          outlet: number(now.outletAmps, 'current', RUN),
          breaker: number(supply.breaker, 'current', JOB),
          motor: number(now.workAmps, 'current', RUN),
        },
      }
    case 'squeals': {
      const plant = assemble(job.parts)
      const capacity = plant.slip ? slipCapacity(plant.slip, one.motorSpeed) : null
      return {
        explained: one.has('slips') || (capacity === null ? null : capacity < PLENTY * work.peak),
        evidence: {
          asked: number(work.peak, 'torque', JOB),
          ...(capacity === null || belt.section === 'not said'
            ? {}
            : { carries: number(capacity, 'torque', 'grip of the belt as fitted') }),
        },
      }
    }
    case 'shocks':
      return {
        // A shock is never the load's.
        explained: null,
        evidence: { volts: number(liveVolts(supply), 'voltage', LIVE) },
      }
    case 'hums':
    case 'stalls':
    case 'bogs': {
      const most = mostTorque(one)
      const slow =
        symptom === 'bogs'
          ? one.has('sags', 'limited', 'slips', 'stalls', 'reach')
          : symptom === 'stalls'
            ? one.has('stalls', 'limited', 'sags', 'reach')
            : false
      return {
        explained: slow || most < PLENTY * work.peak,
        evidence: {
          most: number(most, 'torque', 'current limit times motor constant, through the pulleys'),
          asked: number(work.peak, 'torque', JOB),
          ...(now.sag === null ? {} : { sag: number(now.sag, 'share', RUN) }),
        },
      }
    }
  }
}
