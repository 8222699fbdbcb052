// Reference runs from a file: plants by the short names of the physics, expected events, samples and peaks.
import type { Job } from '../sim/job.ts'
import type { Cut } from '../sim/parts/machine.ts'
import { finish, run } from '../sim/run.ts'
import { STATE } from '../sim/plant.ts'

interface Load {
  kind: 'torque' | 'power' | 'square'
  value: number
}

/** Plant numbers as the file names them: SI, °C; see "about" in test/checks/runs.json. */
interface PlantNumbers {
  R20: number
  L: number
  k20: number
  kTempCoeff: number
  Vb: number
  Tc: number
  B: number
  Jm: number
  Jfly: number
  N: number
  eta: number
  Jsp: number
  Td: number
  Bs: number
  Vmax: number
  Imax: number
  FF: number
  mode: 'open' | 'sag' | 'tach'
  Rc: number
  accel: number
  tauCl: number
  Cw: number
  Cm: number
  Gwm: number
  Ga0: number
  Gfan: number
  wRef: number
  m: number
  Gc0: number
  GcFan: number
  fan: 'shaft' | 'blower' | 'none'
  blow: number
  rotToW: number
  brushToW: number
  Ta: number
  Topen: number
  Tclose: number
  ts: number
  blend: number
  reset: 'self' | 'manual'
  Rs: number
  stir: number
  wPower: number
  lumpy: { FFp: number; Ip: number; wp: number } | null
}

type StateNames = 'i' | 'w' | 'Tw' | 'Tm' | 'Ts'

export interface ReferenceRun {
  name: string
  about: string
  seconds: number
  samples: number[]
  plant?: Partial<PlantNumbers>
  phases: { seconds: number; speed?: number; load?: Load }[]
  expected: {
    events: ['opens' | 'recloses', number][]
    samples: Record<string, Record<StateNames, number>>
    peak: Record<'Tw' | 'Tm' | 'Ts', number>
    end: Record<StateNames, number>
  }
}

export interface ReferenceFile {
  base: PlantNumbers
  runs: ReferenceRun[]
}

const MAGNETS = new Map([
  [-0.002, 'ferrite'],
  [-0.0011, 'NdFeB'],
  [-0.0002, 'AlNiCo'],
] as const)
const HOLDS = { open: 'fixed voltage', sag: 'sag compensation', tach: 'speed feedback' } as const
const COOLING = { shaft: 'shaft fan', blower: 'blower', none: 'none' } as const

/** A reference run as one of our jobs. Throws where the file asks for magnets that no material has. */
export function referenceJob(base: PlantNumbers, reference: ReferenceRun, accuracy: Job['accuracy']): Job {
  const p = { ...base, ...reference.plant }
  const magnets = MAGNETS.get(p.kTempCoeff as never)
  if (!magnets)
    throw new Error(`${reference.name}: no magnet material loses ${p.kTempCoeff} of its flux per kelvin.`)
  const cutOf = (load?: Load): Cut =>
    load?.kind === 'power'
      ? { kind: 'power', power: load.value, fullAbove: p.wPower }
      : load?.kind === 'square'
        ? { kind: 'fan', coefficient: load.value }
        : { kind: 'torque', torque: load?.value ?? 0 }
  return {
    accuracy,
    plate: {},
    parts: {
      supply: {
        kind: p.lumpy ? 'phase control' : 'pwm',
        volts: p.Vmax,
        resistance: p.Rs,
        formFactor: p.lumpy?.FFp ?? p.FF,
        lineVolts: 120,
        breaker: 15,
      },
      lumpy: p.lumpy ? { amps: p.lumpy.Ip, speed: p.lumpy.wp } : null,
      controller: {
        holds: HOLDS[p.mode],
        compensation: p.Rc / p.R20,
        currentLimit: p.Imax,
        ramp: p.accel,
        response: p.tauCl,
      },
      winding: {
        resistance: p.R20,
        inductance: p.L,
        constant: p.k20,
        magnets,
        brushDrop: p.Vb,
        insulation: 'B',
      },
      rotor: { inertia: p.Jm, flywheel: p.Jfly, dryFriction: p.Tc, windage: p.B },
      belt: { motorPulley: 1, machinePulley: p.N, efficiency: p.eta },
      machine: { kind: 'other', inertia: p.Jsp, drag: p.Td, windage: p.Bs, acceptedSag: 0.2 },
      heat: {
        cooling: COOLING[p.fan],
        air: p.Ta,
        airflow: p.blow,
        airPath: 1,
        stir: p.stir,
        windingCapacity: p.Cw,
        frameCapacity: p.Cm,
        windingToFrame: p.Gwm,
        windingToAir: p.Ga0,
        windingToFanAir: p.Gfan,
        frameToAir: p.Gc0,
        frameToFanAir: p.GcFan,
        fanSpeed: p.wRef,
        fanExponent: p.m,
        frictionShare: p.rotToW,
        brushShare: p.brushToW,
      },
      cutoff: {
        fitted: p.reset === 'self' ? 'self-reset' : 'manual reset',
        opensAt: p.Topen,
        reclosesAt: p.Tclose,
        place: 'brush end',
        windingShare: p.blend,
        lag: p.ts,
      },
    },
    duty: {
      seconds: reference.seconds,
      startC: p.Ta,
      phases: reference.phases.map((phase) => ({
        name: '',
        seconds: phase.seconds,
        speed: (phase.speed ?? 0) / p.N,
        cut: cutOf(phase.load),
        surge: null,
      })),
    },
  }
}

/** How one reference run came out. */
export interface Comparison {
  readonly name: string
  /** Events found, and expected. */
  readonly found: number
  readonly expected: number
  /** True where the kinds of the events agree in order. */
  readonly sameEvents: boolean
  /** Largest relative error of an event's time, and of the first event's; 0 where there is none. */
  readonly eventError: number
  readonly firstEventError: number
  /** Largest temperature difference over samples, peaks and end, K; and over those before the first event. */
  readonly temperatureError: number
  readonly earlyTemperatureError: number
  readonly steps: number
}

const TEMPERATURES = [
  ['Tw', STATE.windingC, 'windingC'],
  ['Tm', STATE.frameC, 'frameC'],
  ['Ts', STATE.switchC, 'switchC'],
] as const

/** Runs one reference job and compares. */
export function compareRun(
  base: PlantNumbers,
  reference: ReferenceRun,
  accuracy: Job['accuracy'],
): Comparison {
  const job = referenceJob(base, reference, accuracy)
  const times = [...reference.samples, reference.seconds]
  const { trace, samples } = finish(run(job, { samples: times }))
  const { events, samples: wanted, peak, end } = reference.expected
  const marks = trace.marks.filter((mark) => mark.kind === 'opens' || mark.kind === 'recloses')
  const errors = events.map(([, t], index) => Math.abs((marks[index]?.t ?? Number.NaN) - t) / t)
  const first = events[0]?.[1] ?? Infinity

  let worst = 0
  let early = 0
  const note = (difference: number, t: number) => {
    // A missing sample is NaN, and must not pass as zero.
    const size = Number.isNaN(difference) ? Infinity : Math.abs(difference)
    worst = Math.max(worst, size)
    if (t < first) early = Math.max(early, size)
  }
  times.forEach((t, index) => {
    const target = index < reference.samples.length ? wanted[String(t)] : end
    for (const [name, state] of TEMPERATURES) note((samples[index]?.[state] ?? Number.NaN) - target[name], t)
  })
  for (const [name, , column] of TEMPERATURES) note(trace.peaks[column].value - peak[name], Infinity)
  return {
    name: reference.name,
    found: marks.length,
    expected: events.length,
    sameEvents:
      marks.length === events.length && events.every(([kind], index) => marks[index]?.kind === kind),
    eventError: errors.reduce((a, b) => Math.max(a, Number.isNaN(b) ? Infinity : b), 0),
    firstEventError: errors[0] ?? 0,
    temperatureError: worst,
    earlyTemperatureError: early,
    steps: trace.effort.steps,
  }
}

/** What the "precise" tolerance must meet (CHECKS.md): events relative, temperatures K. */
export const PRECISE = { event: 1e-4, temperature: 0.02 } as const

/** True where a run at the "precise" tolerance is good. */
export const passes = (c: Comparison): boolean =>
  c.sameEvents && c.eventError <= PRECISE.event && c.temperatureError <= PRECISE.temperature
