// Jobs for the drawing: the apple mill with its belt, machine and motor changed.
import type { Scenario } from '../../../sim/scenario.ts'
import { withChange } from '../../../sim/scenario.ts'
import { type Drive, driveOf } from '../../../ui/drawing/drive.ts'
import { type Frame, type Sheet, sheetOf } from '../../../ui/drawing/sheet.ts'
import { example } from '../demo.ts'

const mill = example('appleMill')

/** The mill with these inputs changed; null takes one out. */
const changed = (texts: Readonly<Record<string, string | null>>): Scenario =>
  Object.entries(texts).reduce((scenario, [path, text]) => withChange(scenario, path, text), mill)

export const DESKTOP: Frame = { width: 816, k: 1, narrow: false }
export const PHONE: Frame = { width: 358, k: 1, narrow: true }

/** Drive and sheet of such a job; mass in kg. */
export function laidOut(
  texts: Readonly<Record<string, string | null>> = {},
  frame: Frame = DESKTOP,
  mass = 5,
): { drive: Drive; sheet: Sheet } {
  const drive = driveOf(changed(texts), mass)
  return { drive, sheet: sheetOf(drive, frame) }
}

/** A drive over a jackshaft, 20.25 : 1. */
export const TWO_STAGES = {
  'belt.motorPulley': '2 in',
  'belt.jackshaftLarge': '9 in',
  'belt.jackshaftSmall': '2 in',
  'belt.machinePulley': '9 in',
  'belt.jackshaftCentres': '14 in',
  'belt.centreDistance': '12 in',
} as const
