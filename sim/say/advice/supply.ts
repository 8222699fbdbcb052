// Sentences about the supply: AC, a bare bridge, volts, lumpy current, the outlet, the earth.
import type { FindingName } from '../../advise/finding.ts'
import { LONG_LOAD } from '../../advise/breakers.ts'
import { NBSP, told } from '../number.ts'
import {
  amount,
  cureSentences,
  has,
  heatFigure,
  joined,
  machineOf,
  type Say,
  say,
  type Telling,
  type Words,
} from './words.ts'

const CODE = 'A licensed electrician and your local code decide how.'

export const supplyWords = {
  ac: (t) => ({
    headline: 'Give it DC from a speed controller, not AC.',
    text: joined(
      `On AC from the outlet (${say(t, 'line')}) its torque turns about a hundred times a second: it hums, does not start, and the winding burns in minutes.`,
      cureSentences(t),
    ),
    figure: '0 rpm',
    note: 'on AC',
  }),
  bareBridge: (t) => ({
    headline: 'Do not run it off a bare bridge.',
    text: joined(
      `With little to do it runs up to ${say(t, 'idle')}${has(t, 'plate') ? `, and its plate says ${say(t, 'plate')}` : ''}: the bridge charges it towards the peak of the mains, where steady DC of the same volts gives ${say(t, 'steady')}. Under the cut it sags all the more. There is no knob, no soft start and no limit to the amps.`,
      cureSentences(t),
    ),
    figure: say(t, 'idle'),
    note: 'at the motor, running free',
  }),
  underVolts: (t) => ({
    headline: 'Give the motor the volts it was made for.',
    text: joined(
      `The supply gives ${say(t, 'volts')}, the plate says ${say(t, 'plate')}: with the knob fully up the spindle gets to ${say(t, 'top')}, and ${say(t, 'asked')} is asked. Fewer volts take speed away and nothing else: for the same torque it draws the same amps and gets as hot.`,
      cureSentences(t),
    ),
    figure: say(t, 'top'),
    note: `top speed; ${say(t, 'asked')} asked`,
  }),
  overVolts: (t) => ({
    headline: 'Bring the supply down to the plate’s volts.',
    text: joined(
      `${say(t, 'volts')} on a motor for ${say(t, 'plate')}: with a lost speed signal it runs away to ${say(t, 'idle')}${has(t, 'plateSpeed') ? `, and the plate says ${say(t, 'plateSpeed')}` : ''}${has(t, 'rim') ? `; the flywheel’s rim then moves at ${say(t, 'rim')}, and cast ones are held to ${say(t, 'rimLimit')}` : ''}.`,
      has(t, 'shorted') &&
        `A shorted power device passes the peak of the mains, whatever the supply is set to: ${say(t, 'shorted')}.`,
      cureSentences(
        t,
        amount(t, 'rimAfter') > amount(t, 'rimLimit')
          ? { left: `run away, the flywheel’s rim still gets to ${say(t, 'rimAfter')}` }
          : {},
      ),
    ),
    figure: say(t, 'idle'),
    note: 'if it runs away',
  }),
  lumpy: (t) => ({
    headline: 'Put a choke in the motor lead.',
    text: joined(
      `Lumpy current heats by its peaks and turns by its mean: at this cut the copper makes ${say(t, 'square')} times the heat of steady current.`,
      cureSentences(t),
    ),
    ...heatFigure(t),
  }),
  bigBreaker: (t) => ({
    headline: `Fuse the drive for its own wire, not for ${say(t, 'breaker')}.`,
    text: joined(
      `Sockets and the wire behind them are made for ${say(t, 'largest')} at most. A short or a jam draws more than the lead stands, and a breaker of ${say(t, 'breaker')} waits until it burns. This drive takes about ${say(t, 'outlet')}: have a breaker of a usual socket put before it.`,
      CODE,
    ),
    figure: say(t, 'breaker'),
    note: `sockets: ${say(t, 'largest')} at most`,
  }),
  socket: (t) => ({
    headline:
      amount(t, 'outlet') > amount(t, 'breaker')
        ? 'Take less from the outlet: its breaker opens.'
        : 'Take less from the outlet.',
    text: joined(
      `The cut draws about ${say(t, 'outlet')} where it is plugged in, and the breaker is for ${say(t, 'breaker')}; loads of hours are held to 80${NBSP}% of that. The winding carries ${say(t, 'motor')} meanwhile: the two sides of a controller never read the same.`,
      cureSentences(t, {
        comes: ({ outletAmps }) => `it draws ${told(outletAmps, 'current', t.units)} there`,
        left: `that is over ${told(LONG_LOAD * amount(t, 'breaker'), 'current', t.units)}`,
      }),
    ),
    figure: say(t, 'outlet'),
    note: `of ${say(t, 'breaker')}`,
  }),
  weakSupply: (t) => ({
    headline: 'Match the current limit to the supply.',
    text: joined(
      `The cut runs into the limit of ${say(t, 'limit')}, and at that limit and this speed ${say(t, 'atLimit')} are drawn from a supply fused for ${say(t, 'breaker')}: the fuse goes when the work is hardest.`,
      cureSentences(t, {
        comes: ({ outletAmps, workAmps }) =>
          `the cut takes ${told(workAmps, 'current', t.units)} in the motor and ${told(outletAmps, 'current', t.units)} from the supply`,
      }),
    ),
    figure: say(t, 'atLimit'),
    note: `of ${say(t, 'breaker')}`,
  }),
  noEarth: (t) => (t.job.parts.supply.kind === 'battery' ? unbonded(t) : unearthed(t)),
  earthUnknown: (t) => {
    const battery = t.job.parts.supply.kind === 'battery'
    return {
      headline: 'Measure the earth before the first run.',
      text: `${battery ? 'Leads off the battery’s posts' : 'Unplugged'}: from the bare frame, the ${machineOf(t)} and the controller’s case to ${battery ? 'one another' : 'the plug’s earth pin'}, ${say(t, 'ohms')} at most each, the meter’s own leads taken off. Then say so under “Outlet”.`,
      figure: say(t, 'ohms'),
      note: battery ? 'at most, frame to case' : 'at most, frame to earth pin',
    }
  },
} as const satisfies Partial<Record<FindingName, Say>>

/** What the mains do on metal that is not earthed. */
function unearthed(t: Telling): Words {
  return {
    headline: 'Earth the motor, the machine and the controller’s case.',
    text: `Nothing is earthed, and up to ${say(t, 'volts')} stand on the brushes: one worn wire makes the whole ${machineOf(t)} live, and no breaker opens. Frame, machine and case each get their own earth wire, and a motor lead never does. ${CODE}`,
    figure: say(t, 'volts'),
    note: 'on a frame nobody earthed',
  }
}

/** What a battery does there: it floats, and wants a second fault. */
function unbonded(t: Telling): Words {
  return {
    headline: 'Bond the motor, the machine and the controller’s case.',
    text: `A battery floats: one worn wire puts a pole of it on the whole ${machineOf(t)}, and nobody notices. A second fault, or a hand on the other pole, then meets up to ${say(t, 'volts')}, and no breaker opens. Frame, machine and case are joined by a conductor each, and a motor lead never is. ${CODE}`,
    figure: say(t, 'volts'),
    note: 'with a second fault',
  }
}
