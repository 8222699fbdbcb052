// Findings about heat: air that is missing, useless or dirty; a rating that is a peak; a frame that burns.
import { resistanceAt } from '../parts/winding.ts'
import { constantAt } from '../parts/winding.ts'
import type { Case } from './case.ts'
import { type Draft, draft, type Finding, JOB, number, PLATE, RUN } from './finding.ts'
import { HEAT, heatSeverity } from './trouble.ts'

/** A fan this much slower than its full speed is slow (drive application note: derate or force-cool below half). */
const SLOW_FAN = 0.5
/** An air path with less left than this is dirty. */
const DIRTY = 0.85
/** Bare metal that burns a hand within ten seconds, °C (ISO 13732-1, from memory: 1 min 51, 10 s 55, 1 s 65 to 70). */
export const TOUCH_C = 55

/** What heat does to the same torque: amps over those of a cold motor, and copper heat over that of a cold one. */
function hotter({ job, now }: Case): Finding['evidence'] {
  const { winding, heat } = job.parts
  const amps = constantAt(winding, heat.air) / constantAt(winding, now.hottestFrameC)
  const ohms = resistanceAt(winding, now.hottestWindingC) / resistanceAt(winding, heat.air)
  return {
    ohms: number(ohms, 'number', 'copper, IEC 60034-1'),
    amps: number(amps, 'number', 'the magnets’ loss of flux'),
    copper: number(ohms * amps * amps, 'number', 'both together'),
  }
}

const heatNumbers = (one: Case): Finding['evidence'] => ({
  winding: number(one.now.hottestWindingC, 'temperature', RUN),
  switch: number(one.now.hottestSwitchC, 'temperature', RUN),
  ...(one.now.firstOpening === null ? {} : { opens: number(one.now.firstOpening, 'time', RUN) }),
  ...(one.now.openFor === null ? {} : { openFor: number(one.now.openFor, 'time', RUN) }),
})

function air(one: Case): Draft[] {
  const { job, work, ratio } = one
  const { heat, rotor } = job.parts
  const severity = heatSeverity(one)
  const { cooling } = heat
  const found: Draft[] = []
  if (heat.airPath < DIRTY && cooling !== 'enclosed' && cooling !== 'enclosed, outer fan')
    found.push(
      draft(
        'dirty',
        severity ? 'Fix' : 'Better',
        severity ?? 'gain',
        { ...heatNumbers(one), path: number(heat.airPath, 'share', JOB) },
        ['clean'],
        { faults: HEAT, defect: true, ...(severity ? {} : { leastGain: 3 }) },
      ),
    )
  if (!severity) return found
  const numbers = { ...heatNumbers(one), ...hotter(one) }
  const about = { faults: HEAT }
  const follows = { faults: HEAT, consequence: true }
  if (cooling === 'none')
    found.push(
      draft(
        'fanMissing',
        'Fix',
        severity,
        { ...numbers, flywheel: number(rotor.flywheel, 'inertia', JOB) },
        ['shaft fan', 'blower'],
        {
          ...about,
          defect: true,
        },
      ),
    )
  else if (cooling === 'enclosed')
    found.push(draft('enclosed', 'Fix', severity, numbers, ['outer fan'], follows))
  else if (cooling !== 'blower') {
    const turns = (work.speed * ratio) / heat.fanSpeed
    if (turns < SLOW_FAN)
      found.push(
        draft(
          'fanUseless',
          'Fix',
          severity,
          {
            ...numbers,
            turns: number(turns, 'share', 'motor speed over that of its full fan'),
            removed: number(turns ** heat.fanExponent, 'share', 'airflow to the power that cooling follows'),
            speed: number(work.speed * ratio, 'angular speed', JOB),
          },
          cooling === 'shaft fan' ? ['blower'] : [],
          follows,
        ),
      )
  }
  return found
}

function peak(one: Case): Draft[] {
  const { job, work, ratio } = one
  const { plate, parts } = job
  const { power, continuousPower, speed } = plate
  if (!heatSeverity(one) || power === undefined || continuousPower === undefined || speed === undefined)
    return []
  const asked = work.mean / (ratio * parts.belt.efficiency)
  if (asked <= continuousPower / speed || continuousPower >= power) return []
  return [
    draft(
      'peak',
      'Avoid',
      'short',
      {
        power: number(power, 'power', PLATE),
        continuous: number(continuousPower, 'power', PLATE),
        heat: number((power / continuousPower) ** 2, 'number', 'the two powers, squared'),
        asked: number(asked, 'torque', 'the cut with its surges and the belt, at the motor'),
        allDay: number(continuousPower / speed, 'torque', PLATE),
      },
      ['longer rest', 'shorter work'],
      { faults: HEAT, consequence: true },
    ),
  ]
}

function touch({ now, job }: Case): Draft[] {
  if (now.hottestFrameC <= TOUCH_C) return []
  const frame = number(now.hottestFrameC, 'temperature', RUN)
  const winding = number(now.hottestWindingC, 'temperature', RUN)
  // Heat that brings the frame from the air's temperature to where a hand lets go in a minute.
  const watts = (job.parts.heat.frameCapacity * (TOUCH_C - job.parts.heat.air)) / 60
  return [
    draft(
      'touch',
      'Safety',
      'note',
      { frame, winding, minute: number(watts, 'power', 'the frame’s heat capacity') },
      [],
    ),
  ]
}

/** Nothing more particular to say, and still too hot. */
export const tooHot = (one: Case): Draft =>
  draft(
    'tooHot',
    'Fix',
    heatSeverity(one) ?? 'fails',
    { ...heatNumbers(one), ...hotter(one) },
    ['more reduction', 'most reduction', 'blower', 'longer rest', 'shorter work'],
    { faults: HEAT },
  )

export const airFindings = (one: Case): Draft[] => [...air(one), ...peak(one), ...touch(one)]
