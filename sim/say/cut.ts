// The words of a cut: its answer, its refusal and its inputs.
import type { Amount, CutAnswer, Sum } from '../cuts/answer.ts'
import { type Field, fieldOf, mayBeLeftOut, usualOf } from '../field.ts'
import { boundsOf } from '../reading.ts'
import { duration, show, told } from './number.ts'
import type { Units } from './units.ts'

const STANDING: Readonly<Record<CutAnswer['standing'], string>> = {
  read: 'the row was read there',
  memory: 'the row is from memory: nobody has the page',
  practice: 'common practice',
  given: 'your own number',
}

/** The source of the row, and how well it is known: "Machinery’s Handbook …; the row was read there". */
export function knownWords({ source, standing }: CutAnswer): string {
  if (standing === 'given') return STANDING.given
  return source.startsWith(STANDING.practice) ? source : `${source}; ${STANDING[standing]}`
}

const amountText = ({ value, dimension }: Amount, units: Units): string =>
  dimension === 'time' ? duration(value) : told(value, dimension, units)

/** A sum as a sentence in the reader's units. */
export const sumText = (sum: Sum, units: Units): string =>
  sum.map((part) => (typeof part === 'string' ? part : amountText(part, units))).join('')

/** "2.8 to 4.8 N·m", or the torque alone where it was given. */
export function spreadText({ torque, low, high }: CutAnswer, units: Units): string {
  if (low === high) return `${told(torque, 'torque', units)}, as given`
  return `${show(low, 'torque', units).number} to ${told(high, 'torque', units)}`
}

/** The answer in one sentence. */
export const cutSentence = ({ torque, power, speed }: CutAnswer, units: Units): string =>
  `The spindle asks ${told(torque, 'torque', units)} at ${told(speed, 'angular speed', units)}: ${told(power, 'power', units)}.`

/** The answer in full, line by line. */
export function cutLines(label: string, answer: CutAnswer, units: Units): string[] {
  const rows: (readonly [string, string])[] = [
    ['Torque', told(answer.torque, 'torque', units)],
    ['8 times in 10', spreadText(answer, units)],
    ['Power', told(answer.power, 'power', units)],
    ['Spindle', told(answer.speed, 'angular speed', units)],
    ['Sum', sumText(answer.how, units)],
    ['Row', answer.row],
    ['Known', STANDING[answer.standing]],
  ]
  if (answer.standing !== 'given') rows.push(['Source', answer.source])
  if (answer.caution !== null) rows.push(['Caution', answer.caution])
  const width = Math.max(...rows.map(([name]) => name.length))
  return [
    label,
    cutSentence(answer, units),
    '',
    ...rows.map(([name, value]) => `  ${name.padEnd(width)}  ${value}`),
  ]
}

/** What an input may be. */
function rangeText(field: Field, units: Units): string {
  if (field.kind === 'text') return `up to ${field.longest} characters`
  if (field.kind === 'choice')
    return Object.keys(field.options)
      .map((word) => `"${word}"`)
      .join(', ')
  const { low, high } = boundsOf(field)
  return `${told(low, field.dimension, units)} to ${told(high, field.dimension, units)}`
}

/** The inputs of a kind of cut, a line each: what it is called, what it may be, what it is when left out. */
export function inputLines(
  inputs: Readonly<Record<string, Parameters<typeof fieldOf>[0]>>,
  units: Units,
): string[] {
  const width = Math.max(...Object.keys(inputs).map((name) => name.length))
  return Object.entries(inputs).flatMap(([name, schema]) => {
    const field = fieldOf(schema)
    if (!field) return []
    const usual = usualOf(schema)
    const open = usual !== null ? `; else ${usual}` : mayBeLeftOut(schema) ? '; may be left out' : ''
    const help = field.help === undefined ? '' : `. ${field.help}`
    return `  --${name.padEnd(width)}  ${field.label}: ${rangeText(field, units)}${open}${help}`
  })
}
