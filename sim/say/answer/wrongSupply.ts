// The answer where the supply itself says no: AC turns no such motor, and a bare bridge sets no speed.
import { bridgeIdle } from '../../advise/bridge.ts'
import type { Job } from '../../job.ts'
import { ratio } from '../../parts/belt.ts'
import { told } from '../number.ts'
import type { Units } from '../units.ts'
import type { Answer } from './given.ts'

/** No, whatever the numbers of the run; null: a supply that can be judged by them. */
export function wrongSupply({ parts, duty }: Job, units: Units): Answer | null {
  const { kind } = parts.supply
  if (kind === 'ac')
    return {
      verdict: 'No',
      sentence: 'No. On AC it does not turn: it hums, and burns in minutes.',
      short: { words: 'No · does not turn on AC', doubt: '' },
      support:
        'Magnets make no steady torque of alternating current, whatever the pulleys, and only the winding holds the amps back. Give it a DC speed controller. Heat and amps are not worked out on AC.',
    }
  if (kind !== 'bare bridge') return null
  const idle = told(bridgeIdle(parts) / ratio(parts.belt), 'angular speed', units)
  const asked = told(Math.max(...duty.phases.map(({ speed }) => speed)), 'angular speed', units)
  return {
    verdict: 'No',
    sentence: `No. A bare bridge sets no speed: with little to do the spindle runs up to ${idle}, and ${asked} is wanted.`,
    short: { words: `No · runs up to ${idle}`, doubt: 'off a bare bridge' },
    support:
      'It has neither knob nor current limit. The numbers that follow are those of the same volts with both, as a controller would have them.',
  }
}
