// Jobs for the tests of advice: well-made drives, and changes put into them.
import { type Advice, advise, caseFor } from '../../../sim/advise.ts'
import type { Case } from '../../../sim/advise/case.ts'
import { find } from '../../../sim/advise/find.ts'
import type { Changes as Texts, Draft, Finding, FindingName } from '../../../sim/advise/finding.ts'
import { finish } from '../../../sim/run.ts'
import { type Scenario, variantsOf, withChange, withVariant } from '../../../sim/scenario.ts'
import { type Changes, DEMOS, type Demo, demo } from '../../jobs.ts'

/** The demonstrations' variants that do the job with nothing amiss. */
const WELL_MADE: Readonly<Record<Demo, string>> = {
  appleMill: 'With the shaft fan',
  bandSaw: 'Ratio 30 : 1',
  bowlLathe: 'Ratio 6 : 1',
}

/** A well-made demonstration, with changes. */
export function wellMade(name: Demo = 'appleMill', changes: Changes = {}): Scenario {
  const variant = variantsOf(demo(name)).find((each) => each.name === WELL_MADE[name])
  if (!variant) throw new Error(`${name} has no variant ${WELL_MADE[name]}`)
  return Object.entries(changes).reduce<Scenario>(
    (before, [path, value]) => withChange(before, path, value),
    withVariant(demo(name), variant),
  )
}

export const everyWellMade = DEMOS

const cases = new Map<string, Case>()

/** The case of a scenario, run once. */
export function caseOf(scenario: Scenario): Case {
  const key = JSON.stringify(scenario)
  const one = cases.get(key) ?? finish(caseFor(scenario))
  if ('ok' in one) throw new Error(JSON.stringify(one.problems))
  cases.set(key, one)
  return one
}

/** What there is to say, before any cure is run. */
export const drafts = (scenario: Scenario): Draft[] => find(caseOf(scenario))
export const named = (all: readonly Draft[]): FindingName[] => all.map(({ name }) => name)

/** All of the advice; what to measure is left out unless asked for. */
export function adviceOf(scenario: Scenario, measure = false): Advice {
  const advice = finish(advise(scenario, { measure }))
  if (!advice.ok) throw new Error(JSON.stringify(advice.problems))
  return advice
}

/** The scenario with a cure in it. */
export const cured = (scenario: Scenario, changes: Texts): Scenario =>
  withVariant(scenario, { name: 'cured', changes })

export const first = ({ findings }: Advice): Finding => findings[0]
