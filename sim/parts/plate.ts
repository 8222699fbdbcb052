// The motor's plate, as printed: nothing here is believed by the plant but the amps and speed that scale lumpy current.
import * as v from 'valibot'
import { choiceOr, quantity } from '../field.ts'

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
  printedWatts: printed(
    'Watts printed beside horsepower',
    'power',
    '1 W',
    '50 kW',
    'Where both are printed.',
  ),
  values: choiceOr('warm', {
    label: 'The plate speaks of',
    options: { warm: 'A warm motor: a plate', cold: 'A cold motor: a data sheet' },
  }),
  continuousPower: printed(
    'Continuous power',
    'power',
    '1 W',
    '50 kW',
    'A second, smaller power, if one is printed.',
  ),
  continuousSpeed: v.optional(
    quantity({
      label: 'Continuous speed',
      dimension: 'angular speed',
      low: '50 rpm',
      high: '12000 rpm',
      help: 'Left open: the plate speed.',
    }),
  ),
  continuousAmps: printed('Continuous amps', 'current', '0.05 A', '500 A'),
  continuousFor: v.optional(
    quantity({
      label: 'Held for',
      dimension: 'time',
      low: '1 min',
      high: '24 h',
      help: 'Minutes printed beside it. Left open: all day.',
    }),
  ),
  duty: choiceOr('not printed', {
    label: 'Duty printed',
    options: { 'not printed': 'Not printed', continuous: 'CONT or S1' },
  }),
  formFactor: v.optional(
    quantity({
      label: 'Form factor printed',
      dimension: 'number',
      low: '1',
      high: '2.5',
      help: 'FF, if it is printed.',
    }),
  ),
  soldWith: choiceOr('shaft fan', {
    label: 'Sold with',
    options: {
      'shaft fan': 'A fan on the shaft or flywheel',
      none: 'Open frame, no fan',
      enclosed: 'A closed frame, no fan',
      'enclosed, outer fan': 'A closed frame, fan outside',
    },
    help: 'The cooling that the plate takes for granted.',
  }),
  mass: printed('Mass of the motor', 'mass', '0.05 kg', '500 kg', 'Bathroom scales will do.'),
})

export type Plate = v.InferOutput<typeof PlateFields>
