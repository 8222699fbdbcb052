// An axis of a grid: an input of the job and the texts it takes, from a range or a list of them.
import { parseQuantity, toUnit } from '../../quantity.ts'
import { nearest } from '../../nearest.ts'
import type { Problem } from '../../problem.ts'
import { type ChoiceField, type QuantityField, readField } from '../../reading.ts'
import { givenAt, type Input, inputAt, inputsOf, type Scenario } from '../../scenario.ts'

export interface Axis {
  readonly path: string
  /** As they would stand in the file. */
  readonly texts: readonly string[]
}

/** Most values an axis may take. */
export const MOST_VALUES = 60
const LEAST_VALUES = 2

/** Axes are numbers and choices that a run depends on, named by paths that are there. */
const NO_AXIS = /^(name|about|format|variants|bench)\b|\.name$/
export const mayBeAxis = (input: Input): input is Varied =>
  input.field.kind !== 'text' && !NO_AXIS.test(input.path)

type Varied = Input & { readonly field: QuantityField | ChoiceField }

/** The axis "from..to" of `count` even steps, "a, b, c", or all words of a choice where nothing is said; or what is amiss. */
export function axisOf(
  scenario: Scenario,
  path: string,
  range: string | null,
  count: number,
): Axis | Problem {
  const no = (wrong: string, wouldDo: string): Problem => ({ path, wrong, wouldDo })
  const input = inputAt(scenario, path)
  if (!input || !mayBeAxis(input) || !hasPlace(scenario, path)) {
    const known = inputsOf(scenario)
      .filter(mayBeAxis)
      .map((each) => each.path)
    const guess = nearest(path, known)
    return no(
      'No input that can be varied has this name.',
      guess
        ? `Did you mean ${guess}?`
        : 'Names are those of the job file, such as heat.air or belt.machinePulley.',
    )
  }
  const texts = textsOf(input, range, count)
  if (typeof texts === 'string') return no(texts, like(input))
  if (texts.length < LEAST_VALUES || texts.length > MOST_VALUES)
    return no(
      `${texts.length === 1 ? '1 value makes' : `${texts.length} values make`} no axis.`,
      `From ${LEAST_VALUES} to ${MOST_VALUES}.`,
    )
  for (const text of texts) {
    const reading = readField(input.field, text)
    if (!reading.ok) return no(reading.wrong, reading.wouldDo)
  }
  return { path, texts }
}

/** An item of a list can be varied where it is there. */
const hasPlace = (scenario: Scenario, path: string): boolean => {
  const item = /^(.*\.\d+)\./.exec(path)
  return !item || givenAt(scenario, item[1]) !== undefined
}

const like = ({ field }: Varied): string =>
  field.kind === 'quantity'
    ? `A range such as ${field.low}..${field.high}, or values with commas between.`
    : `Of these, with commas between: ${Object.keys(field.options).join(', ')}.`

/** The texts of a range or a list; or what is wrong with it. */
function textsOf({ field }: Varied, range: string | null, count: number): readonly string[] | string {
  if (range === null)
    return field.kind === 'choice' ? Object.keys(field.options) : 'No range is given for it.'
  const ends = range.split('..').map((end) => end.trim())
  if (field.kind === 'choice' || ends.length === 1)
    return range.split(/\s*[,;]\s*/).filter((text) => text !== '')
  if (ends.length !== 2) return `"${range}" is no range.`
  const high = parseQuantity(ends[1], field.dimension)
  if (!high.ok) return `${high.wrong} ${high.wouldDo}`
  // "10..40 °C": the unit stands once.
  const low = parseQuantity(ends[0], field.dimension, high.unit)
  if (!low.ok) return `${low.wrong} ${low.wouldDo}`
  if (!(high.value > low.value)) return `"${range}" does not rise.`
  return spaced(low.value, high.value, count, high.unit)
}

/** Values at even steps, written as short as tells them apart. */
export function spaced(low: number, high: number, count: number, unit: string): string[] {
  const written = (digits: number) =>
    Array.from({ length: count }, (_, n) => {
      const value = low + ((high - low) * n) / Math.max(1, count - 1)
      return `${Number(toUnit(value, unit).toPrecision(digits))} ${unit}`.trim()
    })
  const short = written(3)
  return new Set(short).size === count ? short : written(8)
}
