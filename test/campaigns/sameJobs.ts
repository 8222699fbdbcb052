// Changes of a job that must change nothing: laws that hold exactly in the model, whatever the numbers.
import { type Phase, phaseSeconds } from '../../sim/duty.ts'
import { HEAT_NUMBERS } from '../../sim/identify/heatPath.ts'
import type { Job } from '../../sim/job.ts'
import type { Parts } from '../../sim/plant.ts'
import type { Chance } from '../seeded.ts'
import { ratioOf } from '../pageOf.ts'

/** The job to be changed, and the change: they must run alike, `later` (s) apart. null: nothing to change here. */
export interface Pair {
  readonly one: Job
  readonly other: Job
  readonly later?: number
}
export type Law = (job: Job, chance: Chance) => Pair | null

type Changed = { readonly [P in keyof Parts]?: Partial<Parts[P]> }

/** The job with some numbers of its parts, and with its phases, changed. */
export function changed(job: Job, parts: Changed, phase: (phase: Phase) => Phase = (same) => same): Job {
  const all = Object.entries(job.parts).map(([name, part]) => [
    name,
    part && { ...part, ...parts[name as keyof Parts] },
  ])
  const phases = job.duty.phases.map(phase)
  return { ...job, parts: Object.fromEntries(all) as Parts, duty: { ...job.duty, phases } }
}

/** A phase whose work and surges take so many times the torque. */
export const loaded =
  (times: number) =>
  ({ cut, surge, ...phase }: Phase): Phase => ({
    ...phase,
    cut:
      cut.kind === 'torque'
        ? { ...cut, torque: cut.torque * times }
        : cut.kind === 'power'
          ? { ...cut, power: cut.power * times }
          : { ...cut, coefficient: cut.coefficient * times },
    surge: surge && { ...surge, torque: surge.torque * times },
  })

/** Numbers of a group times a factor. */
const times = <T>(part: T, factor: number, names: readonly (keyof T)[]): Partial<T> =>
  Object.fromEntries(names.map((name) => [name, (part[name] as number) * factor])) as Partial<T>

/** The knee of the brush drop lies at 0.05 A whatever the motor: laws that scale amps leave the brushes out. */
const brushless = (job: Job): Job => changed(job, { winding: { brushDrop: 0 } })

/** The turns of the duty one after another; the last is cut short by the job's end, as it is when it repeats. */
function writtenOut({ duty }: Job): Phase[] {
  const cycle = duty.phases.reduce((sum, phase) => sum + phaseSeconds(phase), 0)
  return Array.from({ length: Math.ceil(duty.seconds / cycle) }, () => duty.phases).flat()
}

export const LAWS = {
  /** A step in two pieces is the same step; surges begin anew with a step, so that one with surges is cut between two. */
  'a step in two': (job, { pick, even }) => {
    const at = pick(job.duty.phases.map((_, n) => n))
    const { surge, seconds } = job.duty.phases[at]
    const turns = surge ? Math.floor(seconds / surge.every) : 0
    if (surge && turns < 1) return null
    const first = surge ? surge.every * Math.ceil(turns * even(0, 1)) : seconds * even(0.02, 0.98)
    const pieces = [first, seconds - first].map((length) => ({ ...job.duty.phases[at], seconds: length }))
    if (pieces.some((piece) => piece.seconds <= 0)) return null
    return {
      one: job,
      other: { ...job, duty: { ...job.duty, phases: job.duty.phases.toSpliced(at, 1, ...pieces) } },
    }
  },
  /** Repeated, and written out turn by turn: the clock does not drift. */
  'written out': (job) => ({ one: job, other: { ...job, duty: { ...job.duty, phases: writtenOut(job) } } }),
  /** A rest before it all, cold, moves the clock and nothing else. */
  'a rest before': (job, { even }) => {
    const cold = { ...job, duty: { ...job.duty, startC: job.parts.heat.air } }
    const later = even(10, 1000)
    const rest: Phase = {
      name: 'rest',
      seconds: later,
      speed: 0,
      cut: { kind: 'torque', torque: 0 },
      surge: null,
    }
    const phases = [rest, ...writtenOut(cold)]
    return {
      one: cold,
      other: { ...cold, duty: { ...cold.duty, phases, seconds: cold.duty.seconds + later } },
      later,
    }
  },
  /** So many motors side by side on one shaft, each with its share of everything: amps, torques, watts, joules alike. */
  'motors side by side': (job, { size }) => {
    const one = brushless(job)
    const n = size(0.3, 4)
    const { supply, controller, winding, rotor, machine, heat, lumpy } = one.parts
    const other = changed(
      one,
      {
        supply: times(supply, 1 / n, ['resistance']),
        controller: times(controller, n, ['currentLimit']),
        winding: times(winding, 1 / n, ['resistance', 'inductance']),
        rotor: times(rotor, n, ['inertia', 'flywheel', 'dryFriction', 'windage']),
        machine: times(machine, n, ['inertia', 'drag', 'windage']),
        heat: times(heat, n, HEAT_NUMBERS),
        lumpy: times(lumpy!, n, ['amps']),
      },
      loaded(n),
    )
    return { one, other }
  },
  /** Rewound with so many times the turns of so many times thinner wire, on so many times the volts. */
  rewound: (job, { size }) => {
    const one = brushless(job)
    const n = size(0.3, 4)
    const { supply, controller, winding, lumpy } = one.parts
    const other = changed(one, {
      supply: { volts: supply.volts * n, resistance: supply.resistance * n ** 2 },
      controller: times(controller, 1 / n, ['currentLimit']),
      winding: {
        resistance: winding.resistance * n ** 2,
        inductance: winding.inductance! * n ** 2,
        constant: winding.constant * n,
      },
      lumpy: times(lumpy!, 1 / n, ['amps']),
    })
    return { one, other }
  },
  /** What turns with the spindle may sit on the motor's shaft, by the ratio squared; two stages are one of their product. */
  'at the other end': (job) => {
    const { belt, rotor, machine } = job.parts
    const ratio = ratioOf(belt)
    const other = changed(job, {
      belt: {
        jackshaftLarge: undefined,
        jackshaftSmall: undefined,
        motorPulley: 0.05,
        machinePulley: 0.05 * ratio,
      },
      rotor: { flywheel: rotor.flywheel + machine.inertia / ratio ** 2 },
      machine: { inertia: 0 },
    })
    return { one: job, other }
  },
  /** A belt that loses its share is one that loses nothing under so much more load and drag. */
  'a lossless belt': (job) => {
    const { belt, machine } = job.parts
    const more = 1 / belt.efficiency
    const idle = times(machine, more, ['drag', 'windage'])
    return { one: job, other: changed(job, { belt: { efficiency: 1 }, machine: idle }, loaded(more)) }
  },
  /** Whatever cools it is a shaft fan, or a blower at full air, of other conductances through a clean air path. */
  'other air': (job) => {
    const { heat } = job.parts
    const { cooling, airPath, airflow, stir, fanExponent } = heat
    const flow = cooling === 'blower' ? airflow ** fanExponent : cooling === 'none' ? stir : 1
    const closed = cooling === 'enclosed' || cooling === 'enclosed, outer fan'
    const other = changed(job, {
      heat: {
        cooling: cooling === 'blower' ? 'blower' : 'shaft fan',
        airflow: 1,
        airPath: 1,
        windingToAir: closed ? 0 : airPath * heat.windingToAir,
        windingToFanAir: closed ? 0 : airPath * flow * heat.windingToFanAir,
        frameToFanAir: cooling === 'enclosed' ? 0 : flow * heat.frameToFanAir,
      },
    })
    return { one: job, other }
  },
} satisfies Record<string, Law>
