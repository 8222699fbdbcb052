// The changes that give a scenario another belt, and the job it then is.
import type { Job } from '../../job.ts'
import { type Belt, hasJackshaft, sectionOf, slipStages, stagesOf } from '../../parts/belt.ts'
import { toUnit, writeQuantity } from '../../quantity.ts'
import { read } from '../../read.ts'
import type { Scenario, Variant } from '../../scenario.ts'

export type Changes = Variant['changes']

const inches = (length: number): string => writeQuantity(length, 'in')
/** Nobody sets a shaft finer: to a twentieth of an inch. */
const roughly = (length: number): string => `${Math.round(toUnit(length, 'in') * 20) / 20} in`
const share = (part: number): string => `${Number((100 * part).toFixed(1))} %`

/**
 * A belt whose step or length is said, told by its pulleys and centres alone: what other pulleys are then tried at.
 * Its shafts stay where they are, and a belt of the right length is bought. Nothing where neither is said.
 */
export function settled(belt: Belt): Changes {
  const { step, pairs, length, jackshaftLength, motorPulley, jackshaftSmall, machinePulley } = belt
  const centres = stagesOf(belt).map((stage) => inches(stage.centres))
  return {
    ...(pairs === undefined || step === undefined || step === 1
      ? {}
      : {
          'belt.step': null,
          ...(hasJackshaft(belt)
            ? { 'belt.jackshaftSmall': inches(jackshaftSmall as number) }
            : { 'belt.motorPulley': inches(motorPulley) }),
          'belt.machinePulley': inches(machinePulley),
        }),
    ...(length === undefined
      ? {}
      : { 'belt.length': null, 'belt.centreDistance': centres[centres.length - 1] }),
    ...(jackshaftLength === undefined
      ? {}
      : { 'belt.jackshaftLength': null, 'belt.jackshaftCentres': centres[0] }),
  }
}

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

/**
 * Changes of pulleys with the belt as tight as it was, where its owner said at what torque it slips: that was said of
 * the pulleys there are, and other pulleys make another torque of the same pull.
 */
export function asTight(scenario: Scenario, belt: Belt, changes: Changes): Changes {
  const isGiven = belt.carries !== undefined && belt.carriesAt === undefined
  const before = isGiven ? slipStages(belt) : null
  const changed = before && jobWith(scenario, changes)?.parts.belt
  const after = changed && slipStages(changed)
  if (!before || !after || before.length !== after.length) return changes
  const carries = Math.min(...after.map(({ grip, lever }, stage) => before[stage].installed * grip * lever))
  return { ...changes, 'belt.carries': writeQuantity(Number(carries.toPrecision(4)), 'N·m') }
}

/** True where toothed pulleys are needed, which come by teeth and not by inches. */
export const isToothed = (belt: Belt): boolean => sectionOf(belt)?.toothed ?? false
