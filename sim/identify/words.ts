// Numbers as the sentences about a motor's readings write them: in the units of plates and meters.
import { toUnit } from '../quantity.ts'

/** A number short enough for a sentence, up to four significant digits before its unit. */
export const text = (value: number, unit: string, digits = 3): string =>
  `${Number(toUnit(value, unit).toPrecision(digits))} ${unit}`.trim()

/** A share in per cent: two digits, or more where it stands beside its bound. */
export const percent = (share: number, digits = 2): string => `${Number((share * 100).toPrecision(digits))} %`
