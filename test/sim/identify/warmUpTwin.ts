// Warm-up logs of made-up motors: run by the one-page plant, read by noisy meters, and what the fit is told of them.
import type { LoggedMotor } from '../../../sim/identify/heatDrive.ts'
import type { HeatNumbers } from '../../../sim/identify/heatPath.ts'
import type { Log } from '../../../sim/identify/log.ts'
import { references } from '../../checks/files.ts'
import { onePage, type PageNumbers } from '../../onePagePlant.ts'
import { seeded } from '../../seeded.ts'

/** Which meters were at hand, and for how long. */
export interface Protocol {
  readonly ohms: boolean
  readonly heating: number
  readonly cooling: number
  readonly every: number
}
export const RECOMMENDED: Protocol = { ohms: false, heating: 3600, cooling: 1800, every: 60 }

/** How good the meters are. Sd: K, share of each reading of amps and ohms; 8-in-10 half-widths of what is off alike in all readings. */
export interface Meters {
  readonly kelvin: number
  readonly jitter: number
  readonly ohms: number
  readonly ampsGain: number
  readonly resistance: number
  readonly friction: number
}
export const METERS: Meters = {
  kelvin: 0.5,
  jitter: 0.02,
  ohms: 0.005,
  ampsGain: 0.02,
  resistance: 0.02,
  friction: 0.4,
}

export interface Trial {
  readonly log: Log
  /** As the fit is told. */
  readonly motor: LoggedMotor
  readonly truth: HeatNumbers
}

const EIGHT_IN_TEN = 1.2816

/**
 * How far motors stray from the pattern: the factor they stay within 8 times in 10. Windings hold 18 to 33 % of the
 * heat, frames take 0.65 to 1.5 times the usual share from them; the rest is wider or narrower in the same way
 * (common practice, no source: nobody has measured many such motors).
 */
const STRAYS = {
  windingCapacity: Math.sqrt(0.33 / 0.18),
  windingToFrame: Math.sqrt(1.5 / 0.65),
  windingToAir: 2,
  windingToFanAir: 1.5,
  frameToAir: 1.3,
  frameToFanAir: 2,
}

/** The usual pattern for a mass (kg): PHYSICS.md §3. */
function usual(mass: number): HeatNumbers {
  const scale = 0.25 * mass ** (2 / 3)
  return {
    windingCapacity: 100 * mass,
    frameCapacity: 300 * mass,
    windingToFrame: 1.5 * scale,
    windingToAir: 0.3 * scale,
    windingToFanAir: 3.5 * scale,
    frameToAir: 1.2 * scale,
    frameToFanAir: 0.6 * scale,
  }
}

/** A motor strayed from the pattern as far as the fit supposes motors do, warmed up, logged. */
export function trial(seed: number, protocol: Protocol, meters: Meters = METERS): Trial {
  const { normal, even } = seeded(seed)
  const off = (give: number) => Math.exp(give * normal())
  const stray = (factor: number) => off(Math.log(factor) / EIGHT_IN_TEN)
  const share = (halfWidth: number) => off(halfWidth / EIGHT_IN_TEN)
  const mass = even(3, 9)
  const guess = usual(mass)
  const whole = 400 * mass * off(0.25)
  const scale = off(0.35)
  const inWinding = 0.25 * stray(STRAYS.windingCapacity)
  const led = (name: Exclude<keyof HeatNumbers, 'windingCapacity' | 'frameCapacity'>) =>
    guess[name] * scale * stray(STRAYS[name])
  const truth: HeatNumbers = {
    windingCapacity: inWinding * whole,
    frameCapacity: (1 - inWinding) * whole,
    windingToFrame: led('windingToFrame'),
    windingToAir: led('windingToAir'),
    windingToFanAir: led('windingToFanAir'),
    frameToAir: led('frameToAir'),
    frameToFanAir: led('frameToFanAir'),
  }
  const cooling = (['shaft fan', 'none', 'enclosed'] as const)[seed % 3]
  const wRef = even(300, 450)
  const speed = wRef * even(0.4, 0.95)
  const [R20, k20] = [even(0.5, 2), even(0.2, 0.4)]
  const [Tc, B] = [even(0.08, 0.16), even(1e-4, 3e-4)]
  const [m, FF, airC] = [0.8, 1.05, even(15, 28)]
  // Amps that settle the winding near 90 °C.
  const stir = 0.2
  const flow = (speed / wRef) ** m * (cooling === 'shaft fan' ? 1 : stir)
  const Ga = cooling === 'enclosed' ? 0 : truth.windingToAir + truth.windingToFanAir * flow
  const Gc = truth.frameToAir + (cooling === 'enclosed' ? 0 : truth.frameToFanAir * flow)
  const through = Ga + (truth.windingToFrame * Gc) / (truth.windingToFrame + Gc)
  const lost = (Tc + B * speed) * speed
  const amps = Math.sqrt(Math.max(20, through * even(50, 90) - 0.7 * lost) / (FF ** 2 * R20 * 1.25))
  const page: PageNumbers = {
    ...references.base,
    R20,
    k20,
    L: 0.005 * R20,
    Tc,
    B,
    FF,
    stir,
    m,
    wRef,
    Ta: airC,
    Imax: 100,
    Vmax: 1000,
    Topen: 1000,
    Jfly: 0,
    Jsp: 0,
    Td: 0,
    Bs: 0,
    N: 1,
    eta: 1,
    Cw: truth.windingCapacity,
    Cm: truth.frameCapacity,
    Gwm: truth.windingToFrame,
    Ga0: truth.windingToAir,
    Gfan: truth.windingToFanAir,
    Gc0: truth.frameToAir,
    GcFan: truth.frameToFanAir,
    fan: cooling === 'none' ? 'none' : 'shaft',
    ...(cooling === 'enclosed' ? { enclosed: 'plain' as const } : {}),
  }
  const { heating, every } = protocol
  const total = heating + protocol.cooling
  const times = Array.from({ length: Math.floor(total / every) }, (_, n) => (n + 1) * every)
  const load = { kind: 'torque' as const, value: Math.max(0.05, k20 * amps - Tc - B * speed) }
  // Switched on with the stopwatch or at some moment after it, and off at some moment between two readings.
  const from = seed % 2 === 0 ? 0 : even(0.05, 0.95) * every
  const until = heating - even(0.05, 0.95) * every
  const { samples } = onePage(
    page,
    [{ seconds: from }, { seconds: until - from, speed, load }, { seconds: total - until }],
    total,
    times,
    1e-6,
  )
  const rows = [[0, 0, 0, airC, airC, airC], ...samples]
  const gain = share(meters.ampsGain)
  const column = (value: (row: number[], at: number) => number) => Float64Array.from(rows, value)
  const empty = column(() => Number.NaN)
  const told = guess
  return {
    truth,
    log: {
      rows: rows.length,
      time: Float64Array.from([0, ...times]),
      frameC: column(([, , , , frame]) => frame + meters.kelvin * normal()),
      windingC: empty,
      ohms: protocol.ohms
        ? column(([i, , , winding]) =>
            i > 0.01 ? Number.NaN : ((R20 * (235 + winding)) / 255) * (1 + meters.ohms * normal()),
          )
        : empty,
      airC: empty,
      amps: column(([i]) => Math.max(0, i) * gain * (1 + meters.jitter * normal())),
      speed: column(([, w]) => Math.max(0, w)),
      volts: empty,
      place: 'can',
    },
    motor: {
      winding: {
        resistance: R20 * share(meters.resistance),
        constant: k20,
        magnets: 'ferrite',
        brushDrop: page.Vb,
        insulation: 'B',
      },
      rotor: { inertia: page.Jm, flywheel: 0, ...frictionTold() },
      heat: {
        ...told,
        cooling,
        air: 25,
        airflow: 1,
        airPath: 1,
        stir,
        fanSpeed: wRef,
        fanExponent: m,
        frictionShare: page.rotToW,
        brushShare: page.brushToW,
      },
      supply: {
        kind: 'pwm',
        volts: 1000,
        resistance: 0,
        formFactor: FF,
        lineVolts: 120,
        breaker: 15,
      },
      lumpy: null,
    },
  }

  function frictionTold() {
    const wrong = share(meters.friction)
    return { dryFriction: Tc * wrong, windage: B * wrong }
  }
}
