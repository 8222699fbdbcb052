// A job for the one-page plant: the same numbers by its short names, so that a cure is tried by other code.
import { MAGNETS } from '../../../sim/handbook/materials.ts'
import { FORM_FACTORS } from '../../../sim/handbook/formFactor.ts'
import type { Job } from '../../../sim/job.ts'
import { assemble } from '../../../sim/plant.ts'
import { references } from '../../checks/files.ts'
import { onePage, type PageNumbers, type PagePhase, type PageRun } from '../../onePagePlant.ts'

const MODES = { 'fixed voltage': 'open', 'sag compensation': 'sag', 'speed feedback': 'tach' } as const
/** Share of the winding that a cutoff feels by its place, and its lag, s: PHYSICS.md §1. */
const PLACES = { shell: [0.1, 90], 'brush end': [0.4, 45], magnet: [0.25, 60] } as const

function numbersOf({ parts, duty }: Job): PageNumbers {
  const { supply, controller, winding, rotor, belt, machine, heat, cutoff, lumpy } = parts
  const plant = assemble(parts)
  const [blend, ts] = PLACES[cutoff.place]
  const FF = supply.formFactor ?? FORM_FACTORS[supply.kind].value
  return {
    ...references.base,
    R20: winding.resistance,
    L: plant.inductance,
    k20: winding.constant,
    kTempCoeff: MAGNETS[winding.magnets].perKelvin,
    Vb: winding.brushDrop,
    Tc: rotor.dryFriction,
    B: rotor.windage,
    Jm: rotor.inertia,
    Jfly: rotor.flywheel,
    N: plant.ratio,
    eta: belt.efficiency,
    Jsp: machine.inertia,
    Td: machine.drag,
    Bs: machine.windage,
    Vmax: supply.volts,
    Rs: supply.resistance,
    Imax: controller.currentLimit,
    FF,
    mode: MODES[controller.holds],
    Rc: controller.compensation * winding.resistance,
    accel: controller.ramp,
    tauCl: controller.response,
    Cw: heat.windingCapacity,
    Cm: heat.frameCapacity,
    Gwm: heat.windingToFrame,
    Ga0: heat.windingToAir,
    Gfan: heat.windingToFanAir,
    wRef: heat.fanSpeed,
    m: heat.fanExponent,
    Gc0: heat.frameToAir,
    GcFan: heat.frameToFanAir,
    fan: heat.cooling === 'none' ? 'none' : heat.cooling === 'blower' ? 'blower' : 'shaft',
    ...(heat.cooling === 'enclosed' ? { enclosed: 'plain' as const } : {}),
    ...(heat.cooling === 'enclosed, outer fan' ? { enclosed: 'outer fan' as const } : {}),
    blow: heat.airflow,
    dirt: heat.airPath,
    stir: heat.stir,
    rotToW: heat.frictionShare,
    brushToW: heat.brushShare,
    Ta: heat.air,
    Tstart: duty.startC,
    Topen: cutoff.fitted === 'none' ? 1000 : cutoff.opensAt,
    Tclose: cutoff.reclosesAt,
    ts: cutoff.lag ?? ts,
    blend: cutoff.windingShare ?? blend,
    reset: cutoff.fitted === 'self-reset' ? 'self' : 'manual',
    ...(supply.kind === 'phase control' && lumpy
      ? { lumpy: { FFp: FF, Ip: lumpy.amps, wp: lumpy.speed } }
      : {}),
  }
}

/** Runs the first `seconds` of a job in the one-page plant; motor speeds at `times`, s. */
export function twin(job: Job, seconds: number, times: number[] = []): PageRun {
  const { ratio } = assemble(job.parts)
  const phases = job.duty.phases.map(({ seconds: lasts, speed, cut, surge }): PagePhase => {
    if (cut.kind !== 'torque') throw new Error('only cuts of a torque')
    return {
      seconds: lasts,
      speed: speed * ratio,
      load: { kind: 'torque', value: cut.torque },
      ...(surge ? { surge } : {}),
    }
  })
  return onePage(numbersOf(job), phases, seconds, times, 1e-5)
}
