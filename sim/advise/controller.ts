// Findings about the controller: compensation that hunts, a current limit too high, or one that the cut runs into.
import { resistanceAt } from '../parts/winding.ts'
import type { Case } from './case.ts'
import { type Draft, draft, JOB, number, PLATE, RUN } from './finding.ts'

/** Sag compensation over this share of the coldest winding's resistance is unstable (PHYSICS.md §2). */
const STEADY = 0.9
/** Times plate amps over which brushes and ferrite magnets are at risk (common practice, no source). */
const MOST_AMPS = 2.5

function hunts({ job: { parts, duty } }: Case): Draft[] {
  const { controller, winding, heat } = parts
  const coldest = resistanceAt(winding, Math.min(heat.air, duty.startC))
  const share = (controller.compensation * winding.resistance) / coldest
  if (controller.holds !== 'sag compensation' || share <= STEADY) return []
  return [
    draft('hunts', 'Fix', 'fails', { share: number(share, 'share', JOB) }, ['compensation'], {
      defect: true,
      heals: () => true,
    }),
  ]
}

function limitHigh({ job: { parts, plate } }: Case): Draft[] {
  const { currentLimit } = parts.controller
  if (plate.amps === undefined || currentLimit <= MOST_AMPS * plate.amps) return []
  const limit = number(currentLimit, 'current', JOB)
  return [
    draft(
      'limitHigh',
      'Fix',
      'short',
      { limit, plate: number(plate.amps, 'current', PLATE) },
      ['lower limit'],
      {
        defect: true,
      },
    ),
  ]
}

function limited(one: Case): Draft[] {
  const { job, now } = one
  if (!one.has('limited') || one.has('stalls')) return []
  const limit = number(job.parts.controller.currentLimit, 'current', JOB)
  const seconds = number(now.limitedInCut, 'time', RUN)
  return [
    draft('limited', 'Fix', 'fails', { limit, seconds }, ['more reduction', 'most reduction'], {
      faults: ['limited'],
      consequence: true,
    }),
  ]
}

export const controllerFindings = (one: Case): Draft[] => [...hunts(one), ...limitHigh(one), ...limited(one)]
