// What to measure: the guess whose own band decides the answer, found by running the job at both of its ends.
import { classLimitC } from '../handbook/insulation.ts'
import type { MotorNumber } from '../identify/motor.ts'
import { know } from '../identify/known.ts'
import { MOTOR_PATHS } from '../fill.ts'
import type { Progress } from '../run.ts'
import { inputAt } from '../scenario.ts'
import { parseQuantity } from '../quantity.ts'
import type { Case } from './case.ts'
import type { Bench } from './cures.ts'
import { type Changes, type Draft, draft, number, RUN } from './finding.ts'
import type { Outcome } from './outcome.ts'

/** What nobody measured a cut to: its torque lies within this share (rough loads are orders of magnitude; common practice). */
const CUT_BAND = 0.25

const GROUPS = {
  ohms: ['resistance'],
  cooling: ['windingToFrame', 'windingToAir', 'windingToFanAir', 'frameToAir', 'frameToFanAir'],
} as const satisfies Readonly<Record<string, readonly MotorNumber[]>>

const UNITS: Partial<Record<MotorNumber, string>> = { resistance: 'Ω' }

interface Guess {
  readonly name: string
  readonly ends: readonly [Changes, Changes]
}

function guesses({ motor, job, scenario, work }: Case): Guess[] {
  const known = know(motor)?.known
  const found: Guess[] = []
  if (known)
    for (const [name, members] of Object.entries(GROUPS)) {
      if (members.some((member) => known[member].from === 'measured' || known[member].from === 'given'))
        continue
      const at = (end: 'low' | 'high'): Changes =>
        Object.fromEntries(
          members.map((member) => [MOTOR_PATHS[member], `${known[member][end]} ${UNITS[member] ?? 'W/K'}`]),
        )
      found.push({ name, ends: [at('low'), at('high')] })
    }
  const path = `duty.phases.${work.phase}.torque`
  const input = inputAt(scenario, path)
  const torque = input && parseQuantity(input.text, 'torque')
  if (torque?.ok && job.duty.phases[work.phase].cut.kind === 'torque') {
    const at = (times: number): Changes => ({ [path]: `${times * torque.value} N·m` })
    found.push({ name: 'cut', ends: [at(1 - CUT_BAND), at(1 + CUT_BAND)] })
  }
  return found
}

/** Further than this from the class limit no guess decides, K. */
const NEAR = 35

const isFine = ({ faults }: Outcome): boolean => faults.length === 0

/** The guess that decides most; null where none decides whether the job gets done. */
export function* doubt(one: Case, { run }: Bench): Generator<Progress, Draft | null> {
  const limit = classLimitC(one.job.parts.winding.insulation)
  if (Math.abs(one.now.hottestWindingC - limit) > NEAR) return null
  let best: Draft | null = null
  let widest = 0
  for (const { name, ends } of guesses(one)) {
    const outcomes: Outcome[] = []
    for (const changes of ends) {
      const outcome = yield* run(changes)
      if (outcome) outcomes.push(outcome)
    }
    const [low, high] = outcomes.map(({ hottestWindingC }) => hottestWindingC).sort((a, b) => a - b)
    const decides = outcomes.some((outcome) => isFine(outcome) !== isFine(one.now))
    if (!decides || !(high - low > widest)) continue
    widest = high - low
    const openings = outcomes.flatMap(({ firstOpening }) => (firstOpening === null ? [] : [firstOpening]))
    best = draft(
      'doubt',
      'Measure',
      'note',
      {
        low: number(low, 'temperature', RUN),
        high: number(high, 'temperature', RUN),
        amps: number(one.now.workAmps, 'current', RUN),
        outlet: number(one.now.outletAmps, 'current', RUN),
        ...(openings.length === 0 ? {} : { opens: number(Math.min(...openings), 'time', RUN) }),
      },
      [],
      { quotes: [name] },
    )
  }
  return best
}
