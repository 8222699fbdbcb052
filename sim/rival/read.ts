// Reads the old motor, as texts, and makes it a rival; or every problem with the input it is at.
import * as v from 'valibot'
import { fieldOf, mayBeLeftOut } from '../field.ts'
import type { MainsHertz } from '../handbook/induction.ts'
import { nearest } from '../nearest.ts'
import type { Problem } from '../problem.ts'
import { readInput, textOf } from '../reading.ts'
import { direct } from './direct.ts'
import { type GivenRival, type ReadRival, RivalFields, StepFields } from './fields.ts'
import { induction, turningField } from './induction.ts'
import type { Rival, Step } from './rival.ts'

export type RivalReading =
  | { readonly ok: true; readonly rival: Rival }
  | { readonly ok: false; readonly problems: readonly Problem[] }

/** What is wrong with the inputs of a group, one by one. */
function amiss(fields: v.ObjectEntries, given: Readonly<Record<string, unknown>>, under: string): Problem[] {
  const known = Object.keys(fields)
  const unknown = Object.keys(given).filter((key) => !known.includes(key))
  return [
    ...unknown.map((key): Problem => {
      const guess = nearest(key, known)
      const wouldDo = guess ? `Did you mean "${guess}"?` : `Known here: ${known.join(', ')}.`
      return { path: `${under}${key}`, wrong: 'No input has this name.', wouldDo }
    }),
    ...known.flatMap((key): Problem[] => {
      const schema = fields[key] as v.GenericSchema
      const field = fieldOf(schema)
      if (!field) return []
      const path = `${under}${key}`
      if (textOf(given[key]) === undefined) {
        if (mayBeLeftOut(schema)) return []
        const wouldDo = field.kind === 'quantity' ? `Between ${field.low} and ${field.high}.` : 'Give one.'
        return [{ path, wrong: `${field.label} is missing.`, wouldDo }]
      }
      const reading = readInput(field, given[key])
      return reading.ok ? [] : [{ path, ...pick(reading) }]
    }),
  ]
}

const pick = ({ wrong, wouldDo, offers }: Pick<Problem, 'wrong' | 'wouldDo' | 'offers'>) =>
  offers ? { wrong, wouldDo, offers } : { wrong, wouldDo }

/** The steps, and what does not go together in them. Without any the motor sat straight on the spindle. */
function stepsOf({ steps, speed, beltEfficiency }: ReadRival): { steps: Step[]; problems: Problem[] } {
  if (steps.length === 0) return { steps: [{ ratio: 1, efficiency: 1 }], problems: [] }
  const problems: Problem[] = []
  const found = steps.flatMap(({ motorPulley, machinePulley, spindle }, n): Step[] => {
    const efficiency = beltEfficiency
    if (spindle !== undefined && motorPulley === undefined && machinePulley === undefined)
      return [{ ratio: speed / spindle, efficiency }]
    if (spindle === undefined && motorPulley !== undefined && machinePulley !== undefined)
      return [{ ratio: machinePulley / motorPulley, efficiency }]
    problems.push({
      path: `steps.${n}`,
      wrong: spindle === undefined ? 'One of the two pulleys is missing.' : 'Pulleys and a speed are given.',
      wouldDo: 'Give motor pulley and machine pulley, or the spindle speed alone.',
    })
    return []
  })
  return { steps: found, problems }
}

/** Mains that may be meant. */
const MAINS: Readonly<Record<ReadRival['mains'], readonly MainsHertz[]>> = {
  'by its speed': [60, 50],
  '60 Hz': [60],
  '50 Hz': [50],
}

/** The old motor from its inputs as texts. */
export function readRival(given: GivenRival): RivalReading {
  const wrong = amiss(RivalFields.entries, given as Record<string, unknown>, '')
  const each = Array.isArray(given.steps) ? given.steps : []
  for (const [n, step] of each.entries()) wrong.push(...amiss(StepFields.entries, step, `steps.${n}.`))
  if (wrong.length > 0) return { ok: false, problems: wrong }
  const parsed = v.safeParse(RivalFields, given)
  if (!parsed.success)
    return {
      ok: false,
      problems: parsed.issues.map((issue) => ({
        path: v.getDotPath(issue) ?? '',
        wrong: issue.message,
        wouldDo: 'A list of steps, each with two pulleys.',
      })),
    }
  const read = parsed.output
  const { steps, problems } = stepsOf(read)
  if (problems.length > 0) return { ok: false, problems }
  if (read.kind === 'DC') return direct(given, read, steps)
  const field = turningField(read.speed, MAINS[read.mains])
  if (!field)
    return {
      ok: false,
      problems: [
        {
          path: 'speed',
          wrong: 'No motor of the mains runs at this speed under load.',
          wouldDo:
            'Full-load speed as printed: 3450, 1725 or 1140 rpm on 60 Hz, 2850, 1425 or 940 rpm on 50 Hz.',
        },
      ],
    }
  const { kind, power, speed, serviceFactor, lockedTorque, breakdownTorque } = read
  const plate = { kind, power, speed, field, serviceFactor, locked: lockedTorque, breakdown: breakdownTorque }
  return { ok: true, rival: induction(plate, steps) }
}
