// What a warm-up log leaves unknown, each with where it is looked for and how far from there it usually lies.
import { ASSUMPTIONS } from './assume.ts'
import type { Drive, LoggedMotor } from './heatDrive.ts'
import { type Conditions, HEAT_NUMBERS, type HeatNumber, type HeatNumbers } from './heatPath.ts'
import { stretchesIn } from './heatFlicker.ts'
import { startOf } from './heatStart.ts'
import type { Log } from './log.ts'

/** Half-width of an 8-in-10 band in standard deviations. */
export const EIGHT_IN_TEN = 1.2816

/** How well what makes the heat is known: 8-in-10 half-widths, as shares. */
export interface HeatDoubt {
  readonly amps: number
  readonly resistance: number
  readonly friction: number
}

/** When nothing is said: a clamp, a meter, a guess at friction (common practice, no source). */
export const USUAL_DOUBT: HeatDoubt = { amps: 0.04, resistance: 0.03, friction: 0.4 }

/** An unknown: its usual value and standard deviation, bounds, and the step of its differences. */
export interface Unknown {
  readonly name: string
  readonly usual: number
  readonly give: number
  readonly low: number
  readonly high: number
  readonly step: number
}

const band = ({ low, high }: { low: number; high: number }): number => Math.log(high / low) / 2 / EIGHT_IN_TEN
const factor = (times: number): number => Math.log(times) / EIGHT_IN_TEN

/** How far each number strays from its usual share of the whole, as a logarithm (common practice, no source). */
export const STRAYS = {
  windingCapacity: band(ASSUMPTIONS.windingMass),
  windingToFrame: band(ASSUMPTIONS.frameCoupling),
  windingToAir: factor(2),
  windingToFanAir: factor(1.5),
  frameToAir: factor(1.3),
  frameToFanAir: factor(2),
} as const
/** How far the whole may lie from the job's numbers, as a logarithm: far, since they may be a guess. */
const WHOLE = 1
/** Ohms read at low current hold brush film: how far they lie from the winding's, as a logarithm. */
const FILM = 0.15
/** Most switchings whose moment is sought; with more, each lies half way between its readings. */
const MOST_SWITCHINGS = 6
/** When a switching lies between its two readings, as a share: anywhere, evenly. */
const MOMENT: Unknown = { name: 'switching', usual: 0.5, give: 0.29, low: 0, high: 1, step: 1e-3 }
/** The first switching on is early more often than not: stopwatches start with the motor (common practice, no source). */
const STOPWATCH = 0.25
/** Largest share of the capacity a winding has. */
const MOST_WINDING = 0.9

export interface Unknowns {
  readonly all: readonly Unknown[]
  /** Numbers that show in this log; the others stay as the job has them. */
  readonly active: readonly HeatNumber[]
  /** Heat numbers and conditions at values of the unknowns; ohms the meter shows at 20 °C. */
  readonly at: (p: ArrayLike<number>) => { numbers: HeatNumbers; conditions: Conditions; ohms20: number }
}

/** The unknowns of a log. */
export function unknownsOf(log: Log, drive: Drive, motor: LoggedMotor, doubt: HeatDoubt): Unknowns {
  const { heat, winding } = motor
  const start = startOf(log, heat.air)
  const all: Unknown[] = []
  /** Place of a new unknown; −1 reads as its usual value 0. */
  const add = (name: string, usual: number, give: number, reach = 4, step = 1e-4): number =>
    all.push({ name, usual, give, low: usual - reach * give, high: usual + reach * give, step }) - 1
  const active = HEAT_NUMBERS.filter((name) => heat[name] > 0 && felt(name, drive))
  const capacity = add('capacity', 0, WHOLE)
  const conductance = add('conductance', 0, WHOLE)
  const strays = new Map<HeatNumber, number>()
  for (const name of active)
    if (name !== 'frameCapacity') strays.set(name, add(name, 0, STRAYS[name as keyof typeof STRAYS]))
  const air = add('air', 0, start.airGive, 4, 1e-3)
  const frame = add('start', start.frameC, 5, 4, 1e-3)
  const lead = add('lead', 0, start.warm ? 10 : 0.5, 4, 1e-3)
  const sure = 1e-5
  const amps = add('amps', 0, Math.max(sure, doubt.amps / EIGHT_IN_TEN))
  const resistance = add('resistance', 0, Math.max(sure, doubt.resistance / EIGHT_IN_TEN))
  const friction = add('friction', 0, Math.max(sure, doubt.friction / EIGHT_IN_TEN))
  const ohms = log.ohms.every(Number.isNaN) ? -1 : add('ohms', 0, FILM, 10)
  const stretches = stretchesIn(log, drive).map(({ rows, give }) => ({
    rows,
    place: add('flicker', 0, give),
  }))
  const switchings = [...drive.running.keys()].filter(
    (at) => at + 1 < log.rows && drive.running[at] !== drive.running[at + 1],
  )
  const moments =
    switchings.length > MOST_SWITCHINGS
      ? []
      : switchings.map((at) => {
          all.push({ ...MOMENT, usual: at === 0 ? STOPWATCH : MOMENT.usual })
          return [at, all.length - 1] as const
        })

  const first = new Float64Array(log.rows).fill(0.5)
  const copper = new Float64Array(log.rows)
  const whole = heat.windingCapacity + heat.frameCapacity
  const share = heat.windingCapacity / whole
  return {
    all,
    active,
    at: (p) => {
      const stray = (name: HeatNumber): number => p[strays.get(name) ?? -1] ?? 0
      const inWinding = Math.min(MOST_WINDING, share * Math.exp(stray('windingCapacity')))
      const held = whole * Math.exp(p[capacity])
      const led = (name: HeatNumber): number =>
        active.includes(name) ? heat[name] * Math.exp(p[conductance] + stray(name)) : heat[name]
      for (const [at, place] of moments) first[at] = p[place]
      const heating = Math.exp(2 * p[amps] + p[resistance])
      copper.fill(heating)
      for (const { rows, place } of stretches)
        for (const at of rows) copper[at] = heating * Math.exp(p[place])
      return {
        numbers: {
          windingCapacity: inWinding * held,
          frameCapacity: (1 - inWinding) * held,
          windingToFrame: led('windingToFrame'),
          windingToAir: led('windingToAir'),
          windingToFanAir: led('windingToFanAir'),
          frameToAir: led('frameToAir'),
          frameToFanAir: led('frameToFanAir'),
        },
        conditions: {
          airC: start.airC,
          airOffset: p[air],
          frameC: p[frame],
          windingC: p[frame] + p[lead],
          copper,
          brushes: Math.exp(p[amps]),
          friction: Math.exp(p[friction]),
          shares: heat,
          first,
        },
        ohms20: winding.resistance * Math.exp(ohms < 0 ? 0 : p[ohms]),
      }
    },
  }
}

/** Values of one log's unknowns for another's, thinner or fuller: by name; when it was switched does not carry over. */
export function carried(from: Unknowns, p: ArrayLike<number>, to: Unknowns): ArrayLike<number> {
  if (from === to) return p
  const seen = new Map<string, number>()
  return to.all.map(({ name, usual }) => {
    const nth = seen.get(name) ?? 0
    seen.set(name, nth + 1)
    const places = [...from.all.keys()].filter((k) => from.all[k].name === name)
    return name === MOMENT.name || nth >= places.length ? usual : p[places[nth]]
  })
}

/** True where a number can show at all: air that is never moved says nothing of a fan. */
function felt(name: HeatNumber, drive: Drive): boolean {
  const column: Partial<Record<HeatNumber, Float64Array>> = {
    windingToAir: drive.windingStill,
    windingToFanAir: drive.windingFan,
    frameToAir: drive.frameStill,
    frameToFanAir: drive.frameFan,
  }
  return column[name]?.some((value) => value > 0) ?? true
}
