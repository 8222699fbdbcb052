// An induction motor from its plate: poles from the speed, torques from power, speed and the standard's minimums.
import {
  along,
  BREAKDOWN,
  LOCKED_ROTOR,
  type MainsHertz,
  type Poles,
  PULL_UP,
  SMALL_THREE_PHASE,
} from '../handbook/induction.ts'
import {
  fromTable,
  SERVICE_FACTOR,
  SINGLE_PHASE_BREAKDOWN,
  SINGLE_PHASE_LOCKED,
} from '../handbook/inductionSinglePhase.ts'
import { toUnit } from '../quantity.ts'
import { breakdownSlip } from './kloss.ts'
import { type Induction, plateTorque, type Step } from './rival.ts'

/** Slips a plate can speak of: smaller is the field itself, larger no motor of the mains. */
const LEAST_SLIP = 0.002
const MOST_SLIP = 0.13

export interface TurningField {
  readonly poles: Poles
  readonly hertz: MainsHertz
  /** rad/s */
  readonly synchronous: number
}

/** The field that full-load speed `speed` (rad/s) lags by least, of the mains that may be; null: no motor runs so. */
export function turningField(speed: number, mains: readonly MainsHertz[] = [60, 50]): TurningField | null {
  const all = mains.flatMap((hertz) =>
    ([2, 4, 6, 8] as const).map(
      (poles): TurningField => ({ poles, hertz, synchronous: (4 * Math.PI * hertz) / poles }),
    ),
  )
  const slip = ({ synchronous }: TurningField) => 1 - speed / synchronous
  const may = all.filter((field) => slip(field) >= LEAST_SLIP && slip(field) <= MOST_SLIP)
  return may.toSorted((a, b) => slip(a) - slip(b))[0] ?? null
}

/** What the plate says. Torques over full load where they are known otherwise than from the standard. */
export interface InductionPlate {
  readonly kind: Induction['kind']
  readonly power: number
  readonly speed: number
  readonly field: TurningField
  readonly serviceFactor?: number | undefined
  readonly locked?: number | undefined
  readonly breakdown?: number | undefined
}

const GIVEN = 'given'
/** Breakdown over full load, at least. */
const LEAST_OVER = 1.1
/** On 50 Hz mains plates promise no more than they say (common practice). */
const NO_SERVICE_FACTOR = 'none is usual on 50 Hz'

/** Torque over full load of a three-phase motor from a table. */
function threePhase(hp: number, poles: Poles, breakdownSingle: number) {
  const tooSmall = hp < BREAKDOWN.rows[poles][0][0]
  return {
    locked: along(LOCKED_ROTOR.rows[poles], hp),
    pullUp: along(PULL_UP.rows[poles], hp),
    breakdown: tooSmall
      ? SMALL_THREE_PHASE.overSinglePhase * breakdownSingle
      : along(BREAKDOWN.rows[poles], hp),
    sources: {
      locked: LOCKED_ROTOR.source,
      breakdown: tooSmall ? SMALL_THREE_PHASE.source : BREAKDOWN.source,
    },
  }
}

/** The motor: what is not given is the least that the standard lets a motor of its plate have. */
export function induction(plate: InductionPlate, steps: readonly Step[]): Induction {
  const { kind, power, speed, field } = plate
  const { poles, hertz, synchronous } = field
  const hp = toUnit(power, 'hp')
  const fullLoad = plateTorque(power, speed)
  const single = fromTable(SINGLE_PHASE_BREAKDOWN, power, poles, hertz) / fullLoad
  const least =
    kind === 'three-phase'
      ? threePhase(hp, poles, single)
      : {
          locked: fromTable(SINGLE_PHASE_LOCKED, power, poles, hertz) / fullLoad,
          pullUp: 0,
          breakdown: single,
          sources: { locked: SINGLE_PHASE_LOCKED.source, breakdown: SINGLE_PHASE_BREAKDOWN.source },
        }
  // A plate a little off the table's speed must not have its breakdown under its own load.
  const over = plate.breakdown ?? Math.max(LEAST_OVER, least.breakdown)
  const locked = plate.locked ?? least.locked
  return {
    kind,
    power,
    speed,
    steps,
    poles,
    hertz,
    synchronous,
    fullLoad,
    serviceFactor: plate.serviceFactor ?? (hertz === 50 ? 1 : along(SERVICE_FACTOR.rows[poles], hp)),
    breakdown: over * fullLoad,
    breakdownSlip: breakdownSlip(1 - speed / synchronous, over),
    locked: locked * fullLoad,
    pullUp: least.pullUp * fullLoad,
    sources: {
      serviceFactor:
        plate.serviceFactor !== undefined ? GIVEN : hertz === 50 ? NO_SERVICE_FACTOR : SERVICE_FACTOR.source,
      breakdown: plate.breakdown === undefined ? least.sources.breakdown : GIVEN,
      locked: plate.locked === undefined ? least.sources.locked : GIVEN,
    },
  }
}
