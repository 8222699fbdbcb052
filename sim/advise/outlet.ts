// Findings about the outlet: its breaker opens, the supply cannot feed the current limit, or nothing guards the lead.
import { SAFETY } from '../handbook/safety.ts'
import { supplyAmps } from '../parts/supply.ts'
import { constantAt, resistanceAt } from '../parts/winding.ts'
import type { Case } from './case.ts'
import { type Draft, draft, JOB, number, RUN, STEADY } from './finding.ts'
import { largestUsual, LONG_LOAD } from './breakers.ts'

/** A change has to take this off the outlet's amps to be worth a word. */
const LESS = 0.97

function load(one: Case): Draft[] {
  const { now, job, motorSpeed } = one
  const { supply, controller, winding } = job.parts
  const share = now.outletAmps / supply.breaker
  const breaker = number(supply.breaker, 'current', JOB)
  const motor = number(now.workAmps, 'current', RUN)
  const found: Draft[] = []
  if (share > LONG_LOAD)
    found.push(
      draft(
        'socket',
        'Fix',
        share > 1 ? 'fails' : 'short',
        { outlet: number(now.outletAmps, 'current', RUN), breaker, motor },
        ['more reduction', 'most reduction', 'jackshaft'],
        {
          heals: (outcome) => outcome.outletAmps <= LONG_LOAD * supply.breaker,
          helps: (outcome) => outcome.outletAmps < LESS * now.outletAmps,
          consequence: true,
        },
      ),
    )
  const most = controller.currentLimit
  const power =
    most *
    (constantAt(winding, now.hottestFrameC) * motorSpeed + resistanceAt(winding, now.hottestWindingC) * most)
  const atLimit = supplyAmps(supply, Math.min(power, supply.volts * most), most, 1)
  if (one.has('limited') && share <= 1 && atLimit > supply.breaker)
    found.push(
      draft(
        'weakSupply',
        'Fix',
        'short',
        { atLimit: number(atLimit, 'current', STEADY), breaker, limit: number(most, 'current', JOB) },
        ['more reduction', 'most reduction'],
        { faults: ['limited'] },
      ),
    )
  return found
}

/** A breaker that no wire behind a socket stands: a short burns the lead before it opens. */
function tooLarge({ now, job }: Case): Draft[] {
  const { supply } = job.parts
  if (supply.kind === 'battery') return []
  const largest = largestUsual(supply.lineVolts)
  if (supply.breaker <= largest) return []
  return [
    draft(
      'bigBreaker',
      'Safety',
      'short',
      {
        breaker: number(supply.breaker, 'current', JOB),
        largest: number(largest, 'current', SAFETY.sockets),
        outlet: number(now.outletAmps, 'current', RUN),
      },
      ['usual breaker'],
      { defect: true, heals: () => true },
    ),
  ]
}

export const outletFindings = (one: Case): Draft[] => [...load(one), ...tooLarge(one)]
