// Every input of a job with its value, where it came from, and its doubt: the assumptions of the report.
import type { MotorReadings } from '../../../sim/identify/motor.ts'
import { bandWords, MOTOR_NUMBERS, originWords } from '../../../sim/say/motor.ts'
import { NBSP } from '../../../sim/say/number.ts'
import { type Units, unitFor } from '../../../sim/say/units.ts'
import { type Input, inputsOf, type Scenario } from '../../../sim/scenario.ts'
import { knownOf, motorNumberAt, numberText } from '../../edit/known.ts'
import { fieldText } from '../../edit/shownText.ts'

/** Where a value came from. */
export type From = 'given' | 'plate' | 'measured' | 'usual' | 'worked out'

export interface InputRow {
  readonly label: string
  readonly value: string
  readonly from: From
  /** Its source in words; '' where none is told. */
  readonly source: string
  /** Between which values it lies 8 times in 10; '' where no doubt is told. */
  readonly doubt: string
}

export interface InputGroup {
  readonly heading: string
  readonly rows: readonly InputRow[]
}

const HEADINGS: Readonly<Record<string, string>> = {
  plate: 'Motor, from its plate',
  bench: 'Motor, from the bench',
  supply: 'Supply',
  controller: 'Controller',
  winding: 'Winding',
  rotor: 'Rotor',
  heat: 'Heat',
  cutoff: 'Cutoff',
  belt: 'Belt',
  machine: 'Machine',
  duty: 'Duty',
}

export const FROM_WORDS: Readonly<Record<From, string>> = {
  given: 'given',
  plate: 'plate',
  measured: 'measured',
  usual: 'usual value',
  'worked out': 'worked out',
}

function valueText({ field }: Input, text: string, units: Units): string {
  if (text === '') return ''
  if (field.kind === 'choice') return field.options[text] ?? text
  if (field.kind === 'text') return text
  const shown = fieldText(field, text, units)
  return shown.unit === '' ? shown.text : `${shown.text}${NBSP}${shown.unit}`
}

const fromOf = ({ path, usual }: Input): From =>
  usual ? 'usual' : path.startsWith('plate.') ? 'plate' : path.startsWith('bench.') ? 'measured' : 'given'

/** A number of the motor that was left open, as plate and bench tell it; null where they do not. */
function motorRow({ path, field }: Input, motor: MotorReadings, units: Units): InputRow | null {
  const name = motorNumberAt(path)
  const knowledge = name && knownOf(motor)
  if (!name || !knowledge) return null
  const known = knowledge.known[name]
  const { dimension } = MOTOR_NUMBERS[name]
  const unit = unitFor(dimension, units)
  return {
    label: field.label,
    value: `${numberText(known.value, name, units)}${unit === '' ? '' : NBSP + unit}`,
    from: known.from === 'measured' || known.from === 'plate' ? known.from : 'worked out',
    source: originWords(known),
    doubt: known.low === known.high ? '' : bandWords(known, dimension, units),
  }
}

const doubtText = (input: Input, units: Units): string =>
  input.low && input.high
    ? `${valueText(input, input.low, units)} to ${valueText(input, input.high, units)}`
    : ''

function rowOf(input: Input, motor: MotorReadings | null, units: Units): InputRow | null {
  const { field, text, source } = input
  if (text === '') return motor && motorRow(input, motor, units)
  return {
    label: field.label,
    value: valueText(input, text, units),
    from: fromOf(input),
    source: source ?? '',
    doubt: doubtText(input, units),
  }
}

const READINGS: Readonly<Record<string, string>> = {
  running: 'Running free',
  spin: 'Turned by a drill',
  locked: 'Held still',
  coast: 'Coasting',
}

/** What a line of a list is called: "Running free, 2"; the pulleys of a belt themselves are its step 1. */
function placeLabel(place: string): string {
  const [part, list, index] = place.split('.')
  const nth = Number(index) + 1
  return part === 'bench'
    ? `${READINGS[list] ?? 'Reading'}, ${nth}`
    : `Step ${part === 'belt' ? nth + 1 : nth}`
}

/** A step of the duty or of the belt, or a reading of the bench: all its values in one line, headed by its own name. */
function listRow(place: string, inputs: readonly Input[], units: Units): InputRow | null {
  const told = inputs.filter(({ text, usual }) => text !== '' && !usual)
  if (told.length === 0) return null
  const name = told.find(({ path }) => path === `${place}.name`)
  const words = (input: Input) => {
    const value = valueText(input, input.text, units)
    const plain = /\.(lasts|speed|kind)$/.test(input.path) || input.field.kind === 'choice'
    return plain ? value : `${input.field.label.toLowerCase()} ${value}`
  }
  const values = told.filter((input) => input !== name)
  return {
    label: name?.text.trim() || placeLabel(place),
    value: values.map(words).join(', '),
    from: place.startsWith('bench') ? 'measured' : 'given',
    source: [...new Set(told.flatMap(({ source }) => source ?? []))].join('; '),
    doubt: values
      .filter(({ low, high }) => low && high)
      .map((input) => `${input.field.label.toLowerCase()} ${doubtText(input, units)}`)
      .join('; '),
  }
}

/** The place in a list that a path stands under: "duty.phases.0"; null where it stands in none. */
const placeOf = (path: string): string | null => /^\w+\.\w+\.\d+/.exec(path)?.[0] ?? null

/**
 * Every input that has a value, under the heading of its part, in the order of the field tables. `scenario`: as the
 * chosen variant has it. `motor`: what its motor was identified from; null where it does not read.
 */
export function inputGroups(
  scenario: Scenario,
  motor: MotorReadings | null,
  units: Units,
): readonly InputGroup[] {
  const inputs = inputsOf(scenario)
  return Object.entries(HEADINGS).flatMap(([part, heading]) => {
    const lists = new Map<string, Input[]>()
    for (const input of inputs.filter(({ path }) => path.startsWith(`${part}.`))) {
      const place = placeOf(input.path) ?? input.path
      lists.set(place, [...(lists.get(place) ?? []), input])
    }
    const rows = [...lists].map(([place, own]) =>
      own[0].path !== place ? listRow(place, own, units) : rowOf(own[0], motor, units),
    )
    const told = rows.filter((row) => row !== null)
    return told.length === 0 ? [] : [{ heading, rows: told }]
  })
}

/** How many of the inputs are measured, printed or given, and how many are not. */
export function originCounts(groups: readonly InputGroup[]): Readonly<Record<From, number>> {
  const counts = { given: 0, plate: 0, measured: 0, usual: 0, 'worked out': 0 }
  for (const { rows } of groups) for (const { from } of rows) counts[from]++
  return counts
}
