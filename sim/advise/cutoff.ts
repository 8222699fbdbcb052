// Findings about the cutoff: none, not wired, wired where it should not be, restarting the machine, or acting too late.
import { classLimitC } from '../handbook/insulation.ts'
import { liveVolts } from '../parts/supply.ts'
import { givenAt } from '../scenario.ts'
import type { Case } from './case.ts'
import { type Draft, draft, JOB, LIVE, number, RUN } from './finding.ts'
import type { Outcome } from './outcome.ts'
import { heatSeverity } from './trouble.ts'

/** A cutoff that is there is no cure of a job that fails all the same. */
const heals = ({ guarded, faults }: Outcome): boolean => guarded && faults.length === 0

function missing(one: Case): Draft[] {
  const { job, now } = one
  const { cutoff, winding } = job.parts
  if (cutoff.fitted !== 'none') return []
  const evidence = {
    winding: number(now.hottestWindingC, 'temperature', RUN),
    limit: number(classLimitC(winding.insulation), 'temperature', 'its insulation class'),
    ...(job.plate.amps === undefined
      ? {}
      : {
          heat: number(
            (job.parts.controller.currentLimit / job.plate.amps) ** 2,
            'number',
            'current limit over plate amps, squared',
          ),
          amps: number(job.parts.controller.currentLimit, 'current', JOB),
        }),
  }
  if (cutoff.leads === 'not connected')
    return [
      draft('notConnected', 'Safety', 'danger', evidence, ['wired'], { defect: true, wanted: true, heals }),
    ]
  return [
    draft('noCutoff', 'Safety', heatSeverity(one) ? 'danger' : 'short', evidence, ['fit a cutoff'], {
      defect: true,
      wanted: true,
      heals,
    }),
  ]
}

function inMotorLead({ job, now }: Case): Draft[] {
  const { cutoff, supply } = job.parts
  if (cutoff.leads !== 'motor lead' || cutoff.fitted === 'none') return []
  const evidence = {
    amps: number(now.peakAmps, 'current', RUN),
    volts: number(liveVolts(supply), 'voltage', LIVE),
  }
  return [draft('motorLead', 'Safety', 'danger', evidence, ['release'], { defect: true, heals: () => true })]
}

/** An enable input is no protection; only where the file says so: leads nobody mentioned are a thing to look at. */
function enableOnly({ job, scenario, now }: Case): Draft[] {
  const { cutoff, controller } = job.parts
  const isSaid = givenAt(scenario, 'cutoff.leads') !== undefined
  if (cutoff.fitted === 'none' || cutoff.leads !== 'control circuit' || !isSaid) return []
  const evidence = {
    switch: number(now.hottestSwitchC, 'temperature', RUN),
    opensAt: number(cutoff.opensAt, 'temperature', JOB),
    limit: number(controller.currentLimit, 'current', JOB),
  }
  return [draft('enableOnly', 'Safety', 'short', evidence, ['release'], { defect: true, heals: () => true })]
}

function restarts({ now }: Case): Draft[] {
  const { firstOpening, openFor, timesOpen } = now
  if (firstOpening === null || openFor === null) return []
  const evidence = {
    opens: number(firstOpening, 'time', RUN),
    recloses: number(firstOpening + openFor, 'time', RUN),
    times: number(timesOpen, 'number', RUN),
  }
  return [
    draft('restarts', 'Safety', 'danger', evidence, ['release'], {
      heals: (outcome) => outcome.openFor === null,
      consequence: true,
    }),
  ]
}

function late(one: Case): Draft[] {
  const { job, now } = one
  const { cutoff, winding } = job.parts
  const { classPassed, firstOpening } = now
  if (cutoff.fitted === 'none' || classPassed === null) return []
  if (firstOpening !== null && firstOpening <= classPassed) return []
  const evidence = {
    passed: number(classPassed, 'time', RUN),
    winding: number(now.hottestWindingC, 'temperature', RUN),
    limit: number(classLimitC(winding.insulation), 'temperature', 'its insulation class'),
    opensAt: number(cutoff.opensAt, 'temperature', JOB),
    ...(firstOpening === null ? {} : { opens: number(firstOpening, 'time', RUN) }),
  }
  return [draft('lateCutoff', 'Avoid', 'damage', evidence, [], { faults: ['hot'], consequence: true })]
}

export const cutoffFindings = (one: Case): Draft[] => [
  ...missing(one),
  ...inMotorLead(one),
  ...enableOnly(one),
  ...restarts(one),
  ...late(one),
]
