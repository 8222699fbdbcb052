// Findings about the belt: it slips, or it is asked for what belts and pulleys do not stand.
import { builtStages, beltFaults } from '../drive/limits.ts'
import type { Case } from './case.ts'
import { tension } from './tension.ts'
import { type Draft, draft, number, RUN, type Severity } from './finding.ts'
import type { BeltFault, BeltLimit } from '../drive/limits.ts'

const SEVERITY: Readonly<Record<BeltLimit, Severity>> = {
  rim: 'danger',
  touch: 'fails',
  wrap: 'short',
  'small driving': 'short',
  'small driven': 'short',
  load: 'short',
  balance: 'short',
  steep: 'note',
}
const UNITS = {
  rim: 'speed',
  balance: 'speed',
  touch: 'length',
  'small driving': 'length',
  'small driven': 'length',
  load: 'force',
  wrap: 'number',
  steep: 'number',
} as const

function slips(one: Case): Draft[] {
  const { job, now, motorSpeed, work } = one
  if (!one.has('slips')) return []
  const stages = builtStages(job.parts.belt, motorSpeed)
  const wanted = tension(one)
  const tightest = stages.reduce((a, b) => (b.wrap < a.wrap ? b : a))
  return [
    draft(
      'slips',
      'Fix',
      'fails',
      {
        seconds: number(now.slipSeconds, 'time', RUN),
        asked: number(work.peak, 'torque', 'the cut with surge and drag'),
        wrap: number((tightest.wrap * 180) / Math.PI, 'number', 'pulleys and centres'),
        ...(tightest.pull === null
          ? {}
          : { pull: number(tightest.pull, 'force', 'grip of the belt as fitted') }),
        ...(wanted === null
          ? {}
          : {
              strand: number(wanted.strand, 'force', 'grip with half in hand, PHYSICS.md §4'),
              shafts: number(wanted.shafts, 'force', 'both strands at that'),
            }),
      },
      ['tighter belt', 'wider pulleys'],
      { faults: ['slips'] },
    ),
  ]
}

const limitOf = ({ kind, stage, value, limit }: BeltFault, stages: number): Draft =>
  draft(
    'beltLimit',
    SEVERITY[kind] === 'danger' ? 'Safety' : 'Fix',
    SEVERITY[kind],
    {
      value: number(value, UNITS[kind], 'pulleys, centres and speed'),
      limit: number(limit, UNITS[kind], 'belt makers’ tables and common practice'),
      stage: number(stage, 'number', 'from the motor, 0 the first'),
      stages: number(stages, 'number', 'of the drive'),
    },
    [],
    { quotes: [kind] },
  )

export function beltFindings(one: Case): Draft[] {
  const { belt } = one.job.parts
  const faults = beltFaults(belt, one.motorSpeed, one.work.mean)
  const stages = builtStages(belt, one.motorSpeed).length
  return [...slips(one), ...faults.map((fault) => limitOf(fault, stages))]
}
