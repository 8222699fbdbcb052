// Every finding of a case, before any cure is run.
import { airFindings, tooHot } from './air.ts'
import { beltFindings } from './belt.ts'
import type { Case } from './case.ts'
import { controllerFindings } from './controller.ts'
import { cutoffFindings } from './cutoff.ts'
import type { Draft, FindingName } from './finding.ts'
import { gearingFindings } from './gearing.ts'
import { outletFindings } from './outlet.ts'
import { plateFindings } from './plate.ts'
import { supplyFindings } from './supply.ts'
import { tooFastFindings } from './tooFast.ts'
import { heatSeverity } from './trouble.ts'

/** Findings that say why it is too hot. */
const EXPLAIN: readonly FindingName[] = [
  'fanMissing',
  'fanUseless',
  'enclosed',
  'dirty',
  'lumpy',
  'range',
  'horsepower',
  'bareBridge',
]

/** What there is to say of a case. */
export function find(one: Case): Draft[] {
  const found = [
    ...supplyFindings(one),
    ...outletFindings(one),
    ...controllerFindings(one),
    ...cutoffFindings(one),
    ...airFindings(one),
    ...gearingFindings(one),
    ...tooFastFindings(one),
    ...beltFindings(one),
    ...plateFindings(one),
  ]
  const explained = found.some(({ name }) => EXPLAIN.includes(name))
  return heatSeverity(one) && !explained ? [...found, tooHot(one)] : found
}
