// Findings about the supply: the wrong kind, volts over or under the plate, lumpy current, the outlet, the earth.
import { runaway, TRIED } from '../drive/runaway.ts'
import { formFactorSquared, liveVolts, supplyAmps } from '../parts/supply.ts'
import { constantAt, resistanceAt } from '../parts/winding.ts'
import { fromUnit } from '../quantity.ts'
import { friction } from '../parts/rotor.ts'
import { operatingPoint } from '../steady/operating.ts'
import { bridgeEmf } from './bridge.ts'
import type { Case } from './case.ts'
import { TOUCHABLE_VOLTS } from './discharge.ts'
import { type Draft, draft, JOB, LIVE, number, PLATE, RUN, STEADY } from './finding.ts'
import { heatSeverity, HEAT } from './trouble.ts'

/** Volts this share under or over the plate's are other volts than the plate's. */
const UNDER = 0.95
const OVER = 1.15
/** Speed that brushes stand, rad/s. */
export const BRUSH_SPEED = fromUnit(10000, 'rpm')
/** Copper heat over that of steady current from which a choke is worth a word. */
const LUMPY = 1.2
/** Loads of hours are held to this share of a breaker (common practice; your code decides). */
const LONG_LOAD = 0.8

/** True where the motor leads can kill. */
export const isDeadly = ({ kind, volts }: Case['job']['parts']['supply']): boolean =>
  kind !== 'battery' || volts > TOUCHABLE_VOLTS

/** More than a rotor was made for. */
const isTooFast = (speed: number, plateSpeed: number | null): boolean =>
  speed > BRUSH_SPEED || (plateSpeed !== null && speed > TRIED * plateSpeed)

function wrongKind(one: Case): Draft[] {
  const { supply, winding, rotor } = one.job.parts
  if (supply.kind === 'ac')
    return [
      draft('ac', 'Fix', 'damage', { line: number(supply.lineVolts, 'voltage', JOB) }, ['chopped DC'], {
        faults: ['stalls', 'reach', 'sags'],
        defect: true,
      }),
    ]
  if (supply.kind !== 'bare bridge') return []
  const peak = Math.SQRT2 * supply.lineVolts
  const amps = friction(rotor, peak / winding.constant) / winding.constant
  const idle = (peak * bridgeEmf((amps * winding.resistance) / peak)) / winding.constant
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
  const { job, now, plateSpeed, work } = one
  const { supply } = job.parts
  const plate = job.plate.volts
  if (plate === undefined || supply.kind === 'ac' || supply.kind === 'bare bridge') return []
  const told = { volts: number(supply.volts, 'voltage', JOB), plate: number(plate, 'voltage', PLATE) }
  if (supply.volts < UNDER * plate) {
    const short =
      one.has('reach') ||
      (one.has('sags', 'stalls') && operatingPoint(job.parts, work.speed, work.peak).limit === 'voltage')
    if (!short) return []
    const top = number(now.topSpeed, 'angular speed', STEADY)
    const asked = number(one.fastest, 'angular speed', JOB)
    return [
      draft('underVolts', 'Fix', 'fails', { ...told, top, asked }, ['plate volts'], {
        faults: ['reach', 'sags', 'stalls'],
        defect: true,
      }),
    ]
  }
  if (supply.volts <= OVER * plate) return []
  const { motor: fast, flywheelRim: rim } = runaway(job.parts, one.motor.bench.flywheelDiameter)
  const evidence = {
    ...told,
    idle: number(fast, 'angular speed', 'volts over the motor constant'),
    ...(plateSpeed === null ? {} : { plateSpeed: number(plateSpeed, 'angular speed', PLATE) }),
    ...(rim === null ? {} : { rim: number(rim, 'speed', 'the flywheel’s rim at that speed') }),
  }
  const severity = isTooFast(fast, plateSpeed) ? 'danger' : 'short'
  return [
    draft('overVolts', 'Safety', severity, evidence, ['plate volts'], {
      defect: true,
      heals: (outcome) => !outcome.faults.includes('reach'),
    }),
  ]
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

function outlet(one: Case): Draft[] {
  const { now, job, motorSpeed } = one
  const { supply, controller, winding } = job.parts
  const share = now.outletAmps / supply.breaker
  const breaker = number(supply.breaker, 'current', JOB)
  const motor = number(now.workAmps, 'current', RUN)
  const found: Draft[] = []
  if (share > LONG_LOAD)
    found.push(
      draft(
        'socket',
        'Fix',
        share > 1 ? 'fails' : 'short',
        { outlet: number(now.outletAmps, 'current', RUN), breaker, motor },
        ['more reduction', 'most reduction', 'shorter work'],
        { heals: (outcome) => outcome.outletAmps <= LONG_LOAD * supply.breaker, consequence: true },
      ),
    )
  const most = controller.currentLimit
  const power =
    most *
    (constantAt(winding, now.hottestFrameC) * motorSpeed + resistanceAt(winding, now.hottestWindingC) * most)
  const atLimit = supplyAmps(supply, Math.min(power, supply.volts * most), most, 1)
  if (one.has('limited') && share <= 1 && atLimit > supply.breaker)
    found.push(
      draft(
        'weakSupply',
        'Fix',
        'short',
        { atLimit: number(atLimit, 'current', STEADY), breaker, limit: number(most, 'current', JOB) },
        ['more reduction', 'most reduction'],
        { faults: ['limited'] },
      ),
    )
  return found
}

function earth({ job: { parts } }: Case): Draft[] {
  const { supply } = parts
  if (!isDeadly(supply) || supply.earth === 'yes') return []
  const evidence = { volts: number(liveVolts(supply), 'voltage', LIVE) }
  if (supply.earth === 'no')
    return [draft('noEarth', 'Safety', 'danger', evidence, ['earth'], { defect: true, heals: () => true })]
  return [draft('earthUnknown', 'Measure', 'note', evidence, [])]
}

export const supplyFindings = (one: Case): Draft[] => [
  ...earth(one),
  ...wrongKind(one),
  ...volts(one),
  ...lumpy(one),
  ...outlet(one),
]
