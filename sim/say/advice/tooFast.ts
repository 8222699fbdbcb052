// Sentences about what is turned too fast: the motor, its flywheel, a grinding wheel.
import type { FindingName } from '../../advise/finding.ts'
import { told } from '../number.ts'
import { amount, cureSentences, has, joined, type Say, say } from './words.ts'

/** Said of every wheel. */
const STAND_ASIDE = 'Guard it, ring-test it, stand aside as it starts; goggles on, every time.'

export const tooFastWords = {
  overspeeds: (t) => ({
    headline: 'Slow the motor down: gear it less.',
    text: joined(
      `The job turns it at ${say(t, 'motor')}${has(t, 'plate') ? `, and its plate says ${say(t, 'plate')}` : ', and brushes stand about 10 000 rpm'}: windings lift, commutators come apart, flywheels burst.`,
      cureSentences(t),
    ),
    figure: say(t, 'motor'),
    note: has(t, 'plate') ? `plate ${say(t, 'plate')}` : 'at the motor',
  }),
  flywheelRim: (t) => ({
    headline: 'Slow the flywheel down, or take it off.',
    text: joined(
      `The job turns it at ${say(t, 'motor')}: its rim, ${say(t, 'diameter')} across, moves at ${say(t, 'rim')}, every day and not only when something fails. Cast rims are held to ${say(t, 'limit')}, and then burst; this one to ${say(t, 'most')}.`,
      cureSentences(t, {
        comes: ({ ratio, hottestWindingC }, { changes }) => {
          const winding = `the winding gets to ${told(hottestWindingC, 'temperature', t.units)}`
          const rim = told((amount(t, 'rim') * ratio) / t.now.ratio, 'speed', t.units)
          return 'rotor.flywheel' in changes ? winding : `the rim moves at ${rim}, and ${winding}`
        },
      }),
      t.finding.cures.some(({ name }) => name === 'Without the flywheel') &&
        'Where the fan is part of the flywheel, put another fan on the shaft.',
    ),
    figure: say(t, 'rim'),
    note: `at the flywheel’s rim; limit ${say(t, 'limit')}`,
  }),
  wheelUnknown: (t) => ({
    headline: 'Read the speed printed on the wheel.',
    text: `The job turns it at ${say(t, 'asked')}, and with a lost speed signal or a shorted power device it runs up to ${say(t, 'wild')} or more: fit a wheel marked for that. ${STAND_ASIDE}`,
    figure: say(t, 'wild'),
    note: 'if it runs away',
  }),
  wheelSpeed: (t) => ({
    headline: 'Fit a wheel marked for more, or slow this one down.',
    text: joined(
      `It is marked ${say(t, 'printed')}; the job turns it at ${say(t, 'asked')}, and with a lost speed signal or a shorted power device it runs up to ${say(t, 'wild')} or more. A wheel over its speed bursts.`,
      cureSentences(t),
      STAND_ASIDE,
    ),
    figure: say(t, 'printed'),
    note: 'marked on the wheel',
  }),
} as const satisfies Partial<Record<FindingName, Say>>
