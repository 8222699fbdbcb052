// Lengths as a note writes them: notes know no reader's units, so both systems stand side by side.
import { toUnit } from '../quantity.ts'

const short = (value: number): string => String(Number(value.toPrecision(3)))

/** "508 mm (20 in)" */
export const both = (length: number): string =>
  `${short(toUnit(length, 'mm'))} mm (${short(toUnit(length, 'in'))} in)`

/** "16 m/s (3150 ft/min)" */
export const bothSpeeds = (speed: number): string =>
  `${short(speed)} m/s (${short(toUnit(speed, 'ft/min'))} ft/min)`

/** "520 N (117 lbf)" */
export const bothPulls = (pull: number): string => `${short(pull)} N (${short(toUnit(pull, 'lbf'))} lbf)`
