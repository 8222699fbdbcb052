// Asks for a cut as a person writes it, and a working example of every kind.
import type { CutAnswer } from '../../../sim/cuts/answer.ts'
import type { CutName } from '../../../sim/cuts/index.ts'
import { readCut } from '../../../sim/cuts/read.ts'
import { fromUnit } from '../../../sim/quantity.ts'

export type Texts = Readonly<Record<string, string>>

/** The answer. Throws where there is none: a slip in the test. */
export function ask(name: CutName, texts: Texts): CutAnswer {
  const worked = readCut(name, texts)
  if (!worked.ok) throw new Error(worked.problems.map(({ path, wrong }) => `${path}: ${wrong}`).join(' '))
  return worked.answer
}

/** Energy (J) of one cm³ at a unit power in hp·min/in³, as American textbooks print it. */
export const hpMinutes = (value: number): string =>
  `${(value * fromUnit(1, 'hp') * 60) / (fromUnit(1, 'in') * 100) ** 3} J`

/** Inputs of every kind that give an answer. */
export const EXAMPLES: Readonly<Record<CutName, Texts>> = {
  turning: { depth: '1 mm', feed: '0.1 mm', diameter: '50 mm', spindle: '200 rpm' },
  drilling: { diameter: '10 mm', feed: '0.2 mm', spindle: '400 rpm' },
  milling: { width: '20 mm', depth: '2 mm', diameter: '16 mm', tooth: '0.05 mm', spindle: '500 rpm' },
  sawingWood: { height: '100 mm', feed: '0.05 m/s', diameter: '14 in', spindle: '700 rpm' },
  sawingMetal: { width: '50 mm', height: '50 mm', lasts: '4 min', diameter: '11 in', spindle: '35 rpm' },
  beltGrinding: { width: '2 in', diameter: '4 in', spindle: '3000 rpm' },
  wheelGrinding: { width: '10 mm', depth: '0.02 mm', feed: '0.2 m/s', diameter: '8 in', spindle: '3000 rpm' },
  crushing: { mass: '100 kg', lasts: '30 min', spindle: '600 rpm' },
  hoisting: { mass: '100 kg', diameter: '50 mm', spindle: '40 rpm', holds: 'brake' },
  wheel: { mass: '200 kg', slope: '5 %', diameter: '400 mm', spindle: '50 rpm' },
  stirring: { diameter: '200 mm', spindle: '200 rpm' },
  kneading: { mass: '5 kg', lasts: '10 min', spindle: '100 rpm' },
  clay: { spindle: '100 rpm' },
  torque: { torque: '5 N·m', spindle: '100 rpm' },
  force: { force: '50 N', radius: '100 mm', spindle: '100 rpm' },
}
