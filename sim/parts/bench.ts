// Bench readings: what a meter, a drill and a stopwatch tell of a motor on the table, belt off.
import * as v from 'valibot'
import { choiceOr, quantity, quantityOr } from '../field.ts'

const amps = (help?: string) =>
  quantity({
    label: 'Motor amps',
    dimension: 'current',
    low: '0.001 A',
    high: '500 A',
    below: 'too little to read',
    help,
  })
const volts = (help?: string) =>
  quantity({
    label: 'Motor volts',
    dimension: 'voltage',
    low: '0.001 V',
    high: '400 V',
    below: 'too little to read',
    help,
  })
const speed = (help?: string) =>
  quantity({
    label: 'Motor speed',
    dimension: 'angular speed',
    low: '0 rpm',
    high: '30000 rpm',
    below: 'less than standing still',
    help,
  })

/** Most readings of one kind. */
const MOST = 200
const readings = <S extends v.GenericSchema>(item: S) =>
  v.optional(v.pipe(v.array(item), v.maxLength(MOST, `More than ${MOST} readings of one kind.`)), [])

export const BenchFields = v.object({
  ohms: readings(
    quantity({
      label: 'Ohms between the motor leads',
      dimension: 'resistance',
      low: '0.001 Ω',
      high: '1000 Ω',
      below: 'less than any winding has: touch the probes together first and subtract that reading',
      help: 'At several positions of the shaft.',
    }),
  ),
  leadOhms: quantityOr('0 Ω', {
    label: 'Ohms with the probes touching',
    dimension: 'resistance',
    low: '0 Ω',
    high: '10 Ω',
    below: 'less than nothing',
    help: 'Is taken off each reading.',
  }),
  roomC: quantityOr('20 °C', {
    label: 'Motor temperature on the bench',
    dimension: 'temperature',
    low: '-30 °C',
    high: '120 °C',
    help: 'As the room, after a night’s rest.',
  }),
  locked: readings(
    v.object({
      volts: volts('Shaft held.'),
      amps: amps('2 to 5 A is enough: seconds only.'),
    }),
  ),
  spin: readings(
    v.object({
      speed: speed('Turned by a drill.'),
      volts: volts('Nothing connected but the meter.'),
    }),
  ),
  running: readings(
    v.object({
      volts: volts('Running free.'),
      amps: amps('Clamp round one motor lead.'),
      speed: v.optional(speed('If you can read it.')),
    }),
  ),
  clamp: choiceOr('motor lead', {
    label: 'Where the amps were read',
    options: {
      'motor lead': 'On one motor lead',
      'controller input': 'Where DC enters the controller',
      wall: 'At the wall',
    },
    help: 'Only a motor lead shows motor amps.',
  }),
  coast: readings(
    v.object({
      time: quantity({ label: 'Seconds since switching off', dimension: 'time', low: '0 s', high: '1 h' }),
      speed: speed(),
    }),
  ),
  coastedWith: choiceOr('flywheel', {
    label: 'Coasted with',
    options: { flywheel: 'The flywheel on', 'bare shaft': 'Nothing on the shaft' },
  }),
  flywheelMass: v.optional(
    quantity({ label: 'Flywheel mass', dimension: 'mass', low: '0.01 kg', high: '200 kg' }),
  ),
  flywheelDiameter: v.optional(
    quantity({ label: 'Flywheel diameter', dimension: 'length', low: '10 mm', high: '2 m' }),
  ),
  flywheelShape: choiceOr('disc', {
    label: 'Flywheel shape',
    options: { disc: 'A plain disc', rim: 'A heavy rim' },
  }),
})

export type Bench = v.InferOutput<typeof BenchFields>
