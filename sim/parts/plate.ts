// The motor's plate, as printed: nothing here is believed by the plant but the amps and speed that scale lumpy current.
import * as v from 'valibot'
import { quantity } from '../field.ts'

const printed = (
  label: string,
  dimension: 'voltage' | 'current' | 'power' | 'mass',
  low: string,
  high: string,
  help?: string,
) => v.optional(quantity({ label, dimension, low, high, help }))

export const PlateFields = v.object({
  volts: printed('Plate volts', 'voltage', '1 V', '400 V'),
  amps: printed('Plate amps', 'current', '0.05 A', '500 A'),
  power: printed('Plate power', 'power', '1 W', '50 kW', 'Often a peak, not all day.'),
  speed: v.optional(
    quantity({
      label: 'Plate speed',
      dimension: 'angular speed',
      low: '50 rpm',
      high: '12000 rpm',
      above: 'more than brushes stand (about 10 000 rpm)',
    }),
  ),
  continuousPower: printed(
    'Continuous power',
    'power',
    '1 W',
    '50 kW',
    'A second, smaller power, if one is printed.',
  ),
  mass: printed('Mass of the motor', 'mass', '0.05 kg', '500 kg', 'Bathroom scales will do.'),
})

export type Plate = v.InferOutput<typeof PlateFields>
