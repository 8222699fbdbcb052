// The changes that give a scenario another belt, and the job it then is.
import { BELT_SECTIONS } from '../../handbook/beltSections.ts'
import type { Job } from '../../job.ts'
import type { Belt } from '../../parts/belt.ts'
import { toUnit, writeQuantity } from '../../quantity.ts'
import { read } from '../../read.ts'
import type { Scenario, Variant } from '../../scenario.ts'

export type Changes = Variant['changes']

const inches = (length: number): string => writeQuantity(length, 'in')
/** Nobody sets a shaft finer: to a twentieth of an inch. */
const roughly = (length: number): string => `${Math.round(toUnit(length, 'in') * 20) / 20} in`
const share = (part: number): string => `${Number((100 * part).toFixed(1))} %`

const hasJackshaft = (belt: Belt): boolean =>
  belt.jackshaftLarge !== undefined && belt.jackshaftSmall !== undefined

/** Another last pulley. */
export const lastPulley = (diameter: number): Changes => ({ 'belt.machinePulley': inches(diameter) })

/** Other pulleys in the last stage, and the centres they need where they are known, m. */
export const lastStage = (belt: Belt, driving: number, driven: number, centres: number | null): Changes => ({
  [hasJackshaft(belt) ? 'belt.jackshaftSmall' : 'belt.motorPulley']: inches(driving),
  'belt.machinePulley': inches(driven),
  ...(centres === null ? {} : { 'belt.centreDistance': roughly(centres) }),
})

/** Two stages of these pulleys (m, from motor to machine); a stage more or less costs what a stage loses. */
export const twoStage = (belt: Belt, pulleys: readonly [number, number, number, number]): Changes => ({
  'belt.motorPulley': inches(pulleys[0]),
  'belt.jackshaftLarge': inches(pulleys[1]),
  'belt.jackshaftSmall': inches(pulleys[2]),
  'belt.machinePulley': inches(pulleys[3]),
  'belt.centreDistance': null,
  'belt.jackshaftCentres': null,
  ...(hasJackshaft(belt) ? {} : { 'belt.efficiency': share(belt.efficiency ** 2) }),
})

/** The job with these changes; null where the reader refuses it. */
export function jobWith(scenario: Scenario, changes: Changes): Job | null {
  const reading = read(scenario, { name: 'tried', changes })
  return reading.ok ? reading.job : null
}

/** True where toothed pulleys are needed, which come by teeth and not by inches. */
export const isToothed = ({ section }: Belt): boolean =>
  section !== undefined && section !== 'not said' && BELT_SECTIONS[section].toothed
