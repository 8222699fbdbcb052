// Findings about the supply: the wrong kind, volts over or under the plate, lumpy current, the earth.
import { CAST_RIM, flywheelRim, runaway, TRIED } from '../drive/runaway.ts'
import { SAFETY } from '../handbook/safety.ts'
import { formFactorSquared, liveVolts } from '../parts/supply.ts'
import { fromUnit } from '../quantity.ts'
import { operatingPoint } from '../steady/operating.ts'
import { bridgeIdle } from './bridge.ts'
import type { Case } from './case.ts'
import { TOUCHABLE_VOLTS } from './discharge.ts'
import { type Draft, draft, JOB, LIVE, number, PLATE, RUN, STEADY } from './finding.ts'
import { heatSeverity, HEAT } from './trouble.ts'

/** Volts this share under or over the plate's are other volts than the plate's. */
const UNDER = 0.95
const OVER = 1.15
/** Speed that brushes stand, rad/s. */
export const BRUSH_SPEED = fromUnit(10000, 'rpm')
/** Ohms from what is earthed to the earth pin, at most, the meter's own leads taken off (common practice, no source). */
const BONDED = 1
/** Copper heat over that of steady current from which a choke is worth a word. */
const LUMPY = 1.2

/** True where the motor leads can kill. */
export const isDeadly = ({ kind, volts }: Case['job']['parts']['supply']): boolean =>
  kind !== 'battery' || volts > TOUCHABLE_VOLTS

/** More than a rotor was made for. */
const isTooFast = (speed: number, plateSpeed: number | null): boolean =>
  speed > BRUSH_SPEED || (plateSpeed !== null && speed > TRIED * plateSpeed)

function wrongKind(one: Case): Draft[] {
  const { supply, winding } = one.job.parts
  if (supply.kind === 'ac')
    return [
      draft('ac', 'Fix', 'damage', { line: number(supply.lineVolts, 'voltage', JOB) }, ['chopped DC'], {
        faults: ['stalls', 'reach', 'sags'],
        defect: true,
      }),
    ]
  if (supply.kind !== 'bare bridge') return []
  const idle = bridgeIdle(one.job.parts)
  const steady = supply.lineVolts / winding.constant
  return [
    draft(
      'bareBridge',
      isTooFast(idle, one.plateSpeed) ? 'Safety' : 'Fix',
      isTooFast(idle, one.plateSpeed) ? 'danger' : 'short',
      {
        idle: number(idle, 'angular speed', 'closed form of a bridge at light load'),
        steady: number(steady, 'angular speed', 'the same volts as steady DC'),
        ...(one.plateSpeed === null ? {} : { plate: number(one.plateSpeed, 'angular speed', PLATE) }),
      },
      ['chopped DC', 'choke'],
      { defect: true, heals: ({ faults }) => !faults.some((fault) => HEAT.includes(fault)) },
    ),
  ]
}

function volts(one: Case): Draft[] {
  const { job, now, work } = one
  const { supply } = job.parts
  const plate = job.plate.volts
  if (plate === undefined || supply.kind === 'ac' || supply.kind === 'bare bridge') return []
  if (supply.volts < UNDER * plate) {
    const short =
      one.has('reach') ||
      (one.has('sags', 'stalls') && operatingPoint(job.parts, work.speed, work.peak).limit === 'voltage')
    if (!short) return []
    const top = number(now.topSpeed, 'angular speed', STEADY)
    const asked = number(one.fastest, 'angular speed', JOB)
    const told = { volts: number(supply.volts, 'voltage', JOB), plate: number(plate, 'voltage', PLATE) }
    return [
      draft('underVolts', 'Fix', 'fails', { ...told, top, asked }, ['plate volts'], {
        faults: ['reach', 'sags', 'stalls'],
        defect: true,
      }),
    ]
  }
  if (supply.volts <= OVER * plate) return []
  return [tooManyVolts(one, supply.volts, plate)]
}

/**
 * Speed with all the volts a controller gives and nothing to do, rad/s: (V − Vb)/k, cold, when the magnets are strongest
 * and it is slowest: a lower bound.
 */
const idleAt = ({ job: { parts } }: Case, volts: number): number =>
  Math.max(0, volts - parts.winding.brushDrop) / parts.winding.constant

function tooManyVolts(one: Case, volts: number, plate: number): Draft {
  const { job, plateSpeed } = one
  const { flywheelDiameter } = one.motor.bench
  const idle = idleAt(one, volts)
  const rim = flywheelRim(job.parts, idle, flywheelDiameter)
  const rimAfter = flywheelRim(job.parts, idleAt(one, plate), flywheelDiameter)
  const shorted = runaway(job.parts, undefined).motor
  const evidence = {
    volts: number(volts, 'voltage', JOB),
    plate: number(plate, 'voltage', PLATE),
    idle: number(idle, 'angular speed', 'volts over the motor constant'),
    ...(shorted > idle ? { shorted: number(shorted, 'angular speed', 'peak of the mains over it') } : {}),
    ...(plateSpeed === null ? {} : { plateSpeed: number(plateSpeed, 'angular speed', PLATE) }),
    ...(rim === null || rimAfter === null
      ? {}
      : {
          rim: number(rim, 'speed', 'the flywheel’s rim at that speed'),
          rimAfter: number(rimAfter, 'speed', 'the flywheel’s rim on the plate’s volts'),
          rimLimit: number(CAST_RIM, 'speed', SAFETY.castRim),
        }),
  }
  return draft(
    'overVolts',
    'Safety',
    isTooFast(idle, plateSpeed) || (rim ?? 0) > CAST_RIM ? 'danger' : 'short',
    evidence,
    ['plate volts', 'plate volts, no flywheel'],
    {
      defect: true,
      wanted: true,
      heals: (_, changes) => rimAfter === null || rimAfter <= CAST_RIM || 'rotor.flywheel' in changes,
    },
  )
}

function lumpy(one: Case): Draft[] {
  const { supply, lumpy: scale } = one.job.parts
  if (supply.kind === 'ac' || supply.kind === 'bare bridge') return []
  const square = formFactorSquared(supply, scale, one.now.workAmps, one.work.speed * one.ratio)
  if (square < LUMPY) return []
  const heat = heatSeverity(one)
  return [
    draft(
      'lumpy',
      heat ? 'Fix' : 'Better',
      heat ?? 'gain',
      {
        square: number(square, 'number', 'form factor squared, at this cut'),
        winding: number(one.now.hottestWindingC, 'temperature', RUN),
      },
      ['choke', 'chopped DC'],
      { faults: HEAT, defect: true, ...(heat ? {} : { leastGain: 3 }) },
    ),
  ]
}

function earth({ job: { parts } }: Case): Draft[] {
  const { supply } = parts
  if (!isDeadly(supply) || supply.earth === 'yes') return []
  const evidence = {
    volts: number(liveVolts(supply), 'voltage', LIVE),
    ohms: number(BONDED, 'resistance', SAFETY.practice),
  }
  // A battery floats: it takes a second fault before anybody is hurt.
  if (supply.earth === 'no')
    return [
      draft('noEarth', 'Safety', supply.kind === 'battery' ? 'short' : 'danger', evidence, ['earth'], {
        defect: true,
        heals: () => true,
      }),
    ]
  return [draft('earthUnknown', 'Measure', supply.kind === 'battery' ? 'note' : 'unknown', evidence, [])]
}

export const supplyFindings = (one: Case): Draft[] => [
  ...earth(one),
  ...wrongKind(one),
  ...volts(one),
  ...lumpy(one),
]
