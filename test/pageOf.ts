// A job as the one-page plant takes it: its numbers by their short names, phases at the motor's speed.
import type { Job } from '../sim/job.ts'
import type { Phase } from '../sim/duty.ts'
import type { PageNumbers, PagePhase } from './onePagePlant.ts'

const FLUX = { ferrite: -0.002, NdFeB: -0.0011, AlNiCo: -0.0002 } as const
const MODE = { 'fixed voltage': 'open', 'sag compensation': 'sag', 'speed feedback': 'tach' } as const
/** Share of the winding's temperature and lag by place. */
const PLACE = { shell: [0.1, 90], 'brush end': [0.4, 45], magnet: [0.25, 60] } as const

export function ratioOf({
  motorPulley,
  machinePulley,
  jackshaftLarge,
  jackshaftSmall,
}: Job['parts']['belt']) {
  if (jackshaftLarge === undefined || jackshaftSmall === undefined) return machinePulley / motorPulley
  return (jackshaftLarge * machinePulley) / (motorPulley * jackshaftSmall)
}

function phaseOf({ seconds, speed, cut, surge }: Phase, ratio: number): PagePhase {
  const load: PagePhase['load'] =
    cut.kind === 'power'
      ? { kind: 'power', value: cut.power, slow: cut.fullAbove }
      : cut.kind === 'fan'
        ? { kind: 'square', value: cut.coefficient }
        : { kind: 'torque', value: cut.torque }
  return { seconds, speed: speed * ratio, load, ...(surge && { surge }) }
}

/** The page's plant and phases. Throws where it has no name for something: a belt that slips, AC, open numbers. */
export function pageOf({ parts, duty }: Job): { plant: PageNumbers; phases: PagePhase[] } {
  const { supply, controller, winding, rotor, belt, machine, heat, cutoff, lumpy } = parts
  const { formFactor } = supply
  if (formFactor === undefined || winding.inductance === undefined || supply.kind === 'ac')
    throw new Error('the page wants a form factor, an inductance and DC')
  if (belt.section !== undefined && belt.section !== 'not said')
    throw new Error('the page’s belt never slips')
  const [blend, ts] = PLACE[cutoff.place]
  const ratio = ratioOf(belt)
  const never = cutoff.fitted === 'none'
  const plant: PageNumbers = {
    R20: winding.resistance,
    L: winding.inductance,
    k20: winding.constant,
    kTempCoeff: FLUX[winding.magnets],
    Vb: winding.brushDrop,
    Tc: rotor.dryFriction,
    B: rotor.windage,
    Jm: rotor.inertia,
    Jfly: rotor.flywheel,
    N: ratio,
    eta: belt.efficiency,
    Jsp: machine.inertia,
    Td: machine.drag,
    Bs: machine.windage,
    Vmax: supply.volts,
    Imax: controller.currentLimit,
    FF: formFactor,
    mode: MODE[controller.holds],
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
    fan: heat.cooling === 'blower' || heat.cooling === 'none' ? heat.cooling : 'shaft',
    ...(heat.cooling === 'enclosed' && { enclosed: 'plain' as const }),
    ...(heat.cooling === 'enclosed, outer fan' && { enclosed: 'outer fan' as const }),
    blow: heat.airflow,
    dirt: heat.airPath,
    stir: heat.stir,
    rotToW: heat.frictionShare,
    brushToW: heat.brushShare,
    Ta: heat.air,
    Tstart: duty.startC,
    Topen: never ? Infinity : cutoff.opensAt,
    Tclose: cutoff.reclosesAt,
    ts: cutoff.lag ?? ts,
    blend: cutoff.windingShare ?? blend,
    reset: cutoff.fitted === 'self-reset' ? 'self' : 'manual',
    Rs: supply.resistance,
    wPower: 1,
    lumpy:
      supply.kind === 'phase control' && lumpy ? { FFp: formFactor, Ip: lumpy.amps, wp: lumpy.speed } : null,
  }
  return { plant, phases: duty.phases.map((phase) => phaseOf(phase, ratio)) }
}
