// Findings about the reduction: a motor kept slow, chosen by horsepower, short of speed, stalled, or sagging.
import { classLimitC } from '../handbook/insulation.ts'
import { constantAt, resistanceAt } from '../parts/winding.ts'
import { fromUnit } from '../quantity.ts'
import { type Case, OLD_SPEED } from './case.ts'
import { type Draft, draft, type Finding, JOB, number, PLATE, RUN, type Severity, STEADY } from './finding.ts'
import { HEAT, heatSeverity, severityOf, TORQUE } from './trouble.ts'

/** Under this share of its plate speed a motor's range is wasted (PHYSICS.md §9). */
const WASTED = 0.6
/** From this plate speed on a motor's horsepower is mostly speed (common practice, no source). */
const FAST_PLATE = fromUnit(6000, 'rpm')
/** A pulley has to bring so much to be worth a word where all is well, K. */
const WORTH_K = 5
/** And the winding has to be so near its class limit, K. */
const NEAR_CLASS = 30

const GEARING = ['another step', 'more reduction', 'most reduction', 'jackshaft'] as const

const ampsOf = ({ now, job }: Case): Finding['evidence'] => ({
  amps: number(now.workAmps, 'current', RUN),
  copper: number(now.copper / job.duty.seconds, 'power', RUN),
})

function horsepower(one: Case): Draft[] {
  const { job, work, plateSpeed, ratio } = one
  const { power } = job.plate
  const severity = severityOf(one)
  if (!severity || power === undefined || plateSpeed === null || plateSpeed < FAST_PLATE) return []
  const torque = power / plateSpeed
  const atSpindle = torque * ratio * job.parts.belt.efficiency
  if (power < work.mean * work.speed || atSpindle >= work.peak) return []
  return [
    draft(
      'horsepower',
      'Fix',
      severity,
      {
        ...ampsOf(one),
        power: number(power, 'power', PLATE),
        speed: number(plateSpeed, 'angular speed', PLATE),
        torque: number(torque, 'torque', 'power over speed'),
        old: number(power / OLD_SPEED, 'torque', 'the same power at 1725 rpm'),
        atSpindle: number(atSpindle, 'torque', 'through these pulleys'),
        asked: number(work.peak, 'torque', 'the cut with surge and drag'),
      },
      GEARING,
      { faults: [...HEAT, ...TORQUE], defect: true },
    ),
  ]
}

function range(one: Case): Draft[] {
  const { motorSpeed, plateSpeed, job, now } = one
  if (plateSpeed === null || motorSpeed >= WASTED * plateSpeed || motorSpeed === 0) return []
  const severity: Severity | null = heatSeverity(one) ?? severityOf(one)
  const { supply, winding } = job.parts
  if (supply.kind === 'ac' || one.has('reach')) return []
  // A motor that is cool, and does the job, is left in peace.
  if (!severity && now.hottestWindingC < classLimitC(winding.insulation) - NEAR_CLASS) return []
  return [
    draft(
      'range',
      severity ? 'Fix' : 'Better',
      severity ?? 'gain',
      {
        ...ampsOf(one),
        motor: number(motorSpeed, 'angular speed', JOB),
        plate: number(plateSpeed, 'angular speed', PLATE),
        share: number(motorSpeed / plateSpeed, 'share', 'the two speeds'),
      },
      severity ? GEARING : ['another step', 'more reduction', 'most reduction'],
      { faults: severity ? [...HEAT, ...TORQUE] : [], ...(severity ? {} : { leastGain: WORTH_K }) },
    ),
  ]
}

function reach(one: Case): Draft[] {
  const { motorSpeed, job, now, fastest } = one
  const { kind, volts } = job.parts.supply
  const enough = job.plate.volts === undefined || volts >= 0.95 * job.plate.volts
  if (!one.has('reach') || kind === 'ac' || !enough) return []
  return [
    draft(
      'reach',
      'Fix',
      'fails',
      {
        motor: number(motorSpeed, 'angular speed', JOB),
        top: number(now.topSpeed, 'angular speed', STEADY),
        asked: number(fastest, 'angular speed', JOB),
        volts: number(volts, 'voltage', JOB),
      },
      ['less reduction'],
      { faults: ['reach', 'sags'] },
    ),
  ]
}

/** Motor speed lost for each amp, rad/s per A, warm: (R − what the controller makes up for) / k. */
function lostPerAmp({ job, now }: Case): number {
  const { winding, controller, supply } = job.parts
  if (controller.holds === 'speed feedback') return 0
  const made = controller.holds === 'sag compensation' ? controller.compensation * winding.resistance : 0
  return (
    Math.max(0, resistanceAt(winding, now.hottestWindingC) + supply.resistance - made) /
    constantAt(winding, now.hottestFrameC)
  )
}

function slowed(one: Case): Draft[] {
  const { now, job, ratio, work } = one
  const { supply, machine, controller } = job.parts
  if (supply.kind === 'ac' || one.has('reach')) return []
  if (now.stalled !== null)
    return [
      draft(
        'stalls',
        'Fix',
        'damage',
        {
          at: number(now.stalled, 'time', RUN),
          asked: number(work.peak, 'torque', 'the cut with surge and drag'),
          limit: number(controller.currentLimit, 'current', JOB),
        },
        [...GEARING, 'higher limit'],
        { faults: ['stalls'], consequence: true },
      ),
    ]
  if (!one.has('sags') || now.sag === null || now.slowest === null) return []
  const compensated = controller.holds === 'fixed voltage' ? (['compensation'] as const) : []
  return [
    draft(
      'sags',
      'Fix',
      'fails',
      {
        slowest: number(now.slowest, 'angular speed', RUN),
        sag: number(now.sag, 'share', RUN),
        accepted: number(machine.acceptedSag, 'share', JOB),
        perAmp: number(lostPerAmp(one) / ratio, 'angular speed', 'ohms left over the motor constant'),
      },
      [...compensated, 'more reduction', 'most reduction', 'feedback'],
      { faults: ['sags'], consequence: true },
    ),
  ]
}

export function gearingFindings(one: Case): Draft[] {
  const chosen = horsepower(one)
  return [...chosen, ...(chosen.length > 0 ? [] : range(one)), ...reach(one), ...slowed(one)]
}
