// Inputs that are right each by itself and do not go together are told beside one of them.
import { expect, it } from 'vitest'
import { areTold, pathsOf } from './problems.ts'

areTold([
  [
    'hysteresis under 5 K',
    { 'cutoff.reclosesAt': '116 °C' },
    'cutoff.reclosesAt',
    /4 °C under its opening/,
    /At least 5 °C lower/,
  ],
  [
    'a switch the wrong way round',
    { 'cutoff.reclosesAt': '130 °C' },
    'cutoff.reclosesAt',
    /no cooler than it opens/,
    /20 to 40/,
  ],
  [
    'a duty of no time',
    { 'duty.phases': [{ name: 'a', lasts: '0 s' }] },
    'duty.phases',
    /no time at all/,
    /a length/,
  ],
  [
    'steps of a nanosecond',
    { 'duty.phases': [{ name: 'a', lasts: '0.000001 ms' }] },
    'duty.phases',
    /no time at all/,
    /a length/,
  ],
  ['a job of no time', { 'duty.repeatFor': '0 s' }, 'duty.repeatFor', /no time at all/, /3 h/],
  [
    'two cuts in one step',
    { 'duty.phases.2.power': '100 W' },
    'duty.phases.2.torque',
    /more than one kind of cut/,
    /Keep one/,
  ],
  [
    'a fan’s torque at no speed',
    { 'duty.phases.1.fanTorque': '3 N·m' },
    'duty.phases.1.fanTorque',
    /that is 0/,
    /Ask for a speed/,
  ],
  [
    'a surge that never ends',
    { 'duty.phases.2.surge.lasts': '12 s' },
    'duty.phases.2.surge.lasts',
    /as long as the time between/,
    /Shorter/,
  ],
  [
    'one jackshaft pulley',
    { 'belt.jackshaftLarge': '6 in' },
    'belt.jackshaftSmall',
    /two pulleys/,
    /Give the other/,
  ],
  [
    'the other jackshaft pulley',
    { 'belt.jackshaftSmall': '2 in' },
    'belt.jackshaftLarge',
    /two pulleys/,
    /Give the other/,
  ],
  [
    'lumpy current without plate amps',
    { 'supply.kind': 'phase control', 'plate.amps': null },
    'plate.amps',
    /follows from the plate/,
    /choke/,
  ],
])

it('what does not go together is told beside what cannot be read', () => {
  expect(
    pathsOf({
      'supply.volts': 'x',
      'supply.kind': 'phase control',
      'plate.amps': null,
      'plate.speed': null,
      'belt.jackshaftLarge': '6 in',
      'duty.phases.2.surge.lasts': '20 s',
      'duty.repeatFor': '0 s',
    }).sort(),
  ).toEqual(
    [
      'supply.volts',
      'plate.amps',
      'plate.speed',
      'belt.jackshaftSmall',
      'duty.phases.2.surge.lasts',
      'duty.repeatFor',
    ].sort(),
  )
  // An opening temperature that cannot be read is no mismatch with the reclosing one.
  expect(pathsOf({ 'cutoff.opensAt': 'hot', 'cutoff.reclosesAt': '190 °C' })).toEqual(['cutoff.opensAt'])
})
