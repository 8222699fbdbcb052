// The heat of the motor: a winding and a frame, the air each is given, and what warms them.
import * as v from 'valibot'
import { type Filled, choiceOr, quantity, quantityOr } from '../field.ts'

const capacity = { dimension: 'heat capacity', low: '0.1 J/K', high: '1000000 J/K' } as const
const conductance = {
  dimension: 'thermal conductance',
  low: '0 W/K',
  high: '1000 W/K',
  below: 'less than nothing',
} as const

export const HeatFields = v.object({
  cooling: choiceOr('shaft fan', {
    label: 'Cooling',
    options: {
      'shaft fan': 'Fan on the shaft: slows down with the motor',
      blower: 'Separate blower: same air at any speed',
      none: 'No fan: open frame, fan or flywheel removed',
      enclosed: 'Enclosed, no fan',
      'enclosed, outer fan': 'Enclosed, fan outside on the shaft',
    },
    help: 'Look at the shaft end opposite the brushes.',
  }),
  air: quantityOr('25 °C', {
    label: 'Air around the motor',
    dimension: 'temperature',
    low: '-30 °C',
    high: '70 °C',
    above: 'hotter than a workshop gets',
  }),
  airflow: quantityOr('100 %', {
    label: 'Air from the blower',
    dimension: 'share',
    low: '0 %',
    high: '500 %',
    help: 'Against what the shaft fan gives at its full speed.',
  }),
  airPath: quantityOr('100 %', {
    label: 'Air path, clean',
    dimension: 'share',
    low: '25 %',
    high: '100 %',
    help: 'Dust and chips in the openings: down to 25 % of the cooling is left.',
  }),
  stir: quantityOr('20 %', {
    label: 'Air the rotor stirs itself',
    dimension: 'share',
    low: '0 %',
    high: '50 %',
    help: 'Open frame with the fan gone: 10 to 30 % of what the fan gave.',
  }),
  windingCapacity: v.optional(
    quantity({
      label: 'Heat the winding stores',
      ...capacity,
      help: 'A quarter of 400 J/(kg K) times the motor’s mass.',
    }),
  ),
  frameCapacity: v.optional(
    quantity({
      label: 'Heat the frame stores',
      ...capacity,
      help: 'Three quarters of 400 J/(kg K) times the mass.',
    }),
  ),
  windingToFrame: v.optional(quantity({ label: 'Winding to frame', ...conductance, low: '0.0001 W/K' })),
  windingToAir: v.optional(quantity({ label: 'Winding to still air', ...conductance })),
  windingToFanAir: v.optional(quantity({ label: 'Winding to air, full fan', ...conductance })),
  frameToAir: v.optional(quantity({ label: 'Frame to still air', ...conductance, low: '0.0001 W/K' })),
  frameToFanAir: v.optional(quantity({ label: 'Frame to air, full fan', ...conductance })),
  fanSpeed: v.optional(
    quantity({
      label: 'Motor speed at full fan',
      dimension: 'angular speed',
      low: '1 rpm',
      high: '60000 rpm',
    }),
  ),
  fanExponent: quantityOr('0.8', {
    label: 'How cooling follows airflow',
    dimension: 'number',
    low: '0.3',
    high: '1',
    help: 'Power of the airflow; 0.5 to 0.8 is usual.',
  }),
  frictionShare: quantityOr('50 %', {
    label: 'Friction heat that warms the winding',
    dimension: 'share',
    low: '0 %',
    high: '100 %',
  }),
  brushShare: quantityOr('50 %', {
    label: 'Brush heat that warms the winding',
    dimension: 'share',
    low: '0 %',
    high: '100 %',
  }),
})

/** The heat numbers, every one known: read, or identified from mass and rating. */
export type Heat = Filled<
  v.InferOutput<typeof HeatFields>,
  | 'windingCapacity'
  | 'frameCapacity'
  | 'windingToFrame'
  | 'windingToAir'
  | 'windingToFanAir'
  | 'frameToAir'
  | 'frameToFanAir'
  | 'fanSpeed'
>

/** Conductances to the air at this moment. W/K */
export interface Air {
  windingToAir: number
  frameToAir: number
}

/** The shaft fan's airflow law at full speed, ωref^m: worked out once, since it divides at every moment. */
export const fullFan = (heat: Heat): number => heat.fanSpeed ** heat.fanExponent

/** Airflow of a shaft fan as heat removal against full speed: |ω/ωref|^m, smooth through standstill. */
const shaftFan = (heat: Heat, full: number, w: number): number =>
  // (w² + 1)^(m/2 − 1) by logarithm: three times as quick as a general power, and asked at every evaluation.
  (w * w * Math.exp((heat.fanExponent / 2 - 1) * Math.log(w * w + 1))) / full

/** How a shaft fan's airflow grows with motor speed w (rad/s), as a share of itself; 0 where no flow comes from the shaft. s/rad */
export const flowPerSpeed = ({ cooling, fanExponent }: Heat, w: number): number =>
  cooling === 'blower' || cooling === 'enclosed' || w === 0
    ? 0
    : 2 / w + ((fanExponent - 2) * w) / (w * w + 1)

/** Writes the conductances to the air at motor speed w (rad/s) into `air`; `full` is fullFan of the same heat. */
export function airAt(heat: Heat, full: number, w: number, air: Air): void {
  const { cooling } = heat
  if (cooling === 'enclosed' || cooling === 'enclosed, outer fan') {
    air.windingToAir = 0
    air.frameToAir =
      heat.frameToAir + (cooling === 'enclosed' ? 0 : heat.frameToFanAir * shaftFan(heat, full, w))
    return
  }
  let flow: number
  if (cooling === 'blower') flow = heat.airflow ** heat.fanExponent
  else if (cooling === 'none') flow = heat.stir === 0 ? 0 : heat.stir * shaftFan(heat, full, w)
  else flow = shaftFan(heat, full, w)
  air.windingToAir = heat.airPath * (heat.windingToAir + heat.windingToFanAir * flow)
  air.frameToAir = heat.frameToAir + heat.frameToFanAir * flow
}
