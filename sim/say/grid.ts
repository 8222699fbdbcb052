// A grid in words: its axes as a reader knows them, its cells, and what it shows in a sentence.
import { FIGURES, type FigureName } from '../studies/figures.ts'
import type { GridPoint, GridSpec } from '../studies/grid.ts'
import { parseQuantity } from '../quantity.ts'
import { givenAt, inputAt, type Scenario } from '../scenario.ts'
import { clockTime, duration, NBSP, show, told } from './number.ts'
import { type Units, unitFor } from './units.ts'

/** "Machine pulley"; an input of a step with the step's name: "Torque of the cut, milling". */
export function axisWords(scenario: Scenario, path: string): string {
  const label = inputAt(scenario, path)?.field.label ?? path
  const step = /^duty\.phases\.(\d+)\./.exec(path)
  if (!step) return label
  const name = givenAt(scenario, `duty.phases.${step[1]}.name`)
  return `${label}, ${typeof name === 'string' && name.trim() !== '' ? name.trim() : `step ${Number(step[1]) + 1}`}`
}

/** A value of an axis: "9 in", or the words of a choice. */
export function valueWords(scenario: Scenario, path: string, text: string): string {
  const field = inputAt(scenario, path)?.field
  if (field?.kind === 'choice') return field.options[text] ?? text
  return text.replace(/^(\S+) (\S+)$/, `$1${NBSP}$2`)
}

/** "Cutoff first opens at, h:min:s": a figure and what its cells are in. */
export function figureWords(name: FigureName, units: Units): string {
  const { label, dimension } = FIGURES[name]
  const unit =
    dimension === 'time'
      ? 'min:s'
      : dimension === 'temperature difference'
        ? units.temperature
        : unitFor(dimension, units)
  return unit === '' ? label : `${label}, ${unit}`
}

/** Behind a number where the spindle stops or the winding burns out. */
const MARK = '†'

/** A cell: a number in the figure's unit, short words where there is none; marked where the drive fails. */
export function cellWords(name: FigureName, point: GridPoint, units: Units): string {
  if (!point.ok) return '—'
  const value = point.figures[name]
  const { dimension, none } = FIGURES[name]
  if (value === null) return point.trouble ?? (none.length > SHORT ? '—' : none)
  const text = dimension === 'time' ? clockTime(value) : show(value, dimension, units).number
  return point.trouble ? `${text}${MARK}` : text
}

/** Longer words do not fit a cell. */
const SHORT = 8

const TROUBLES = {
  'no answer': 'no answer',
  burnt: 'the winding burns out',
  stalls: 'the spindle stops',
} as const

/** What is the case in a cell, in full: "24 min 10 s", "never; the spindle stops", or why there is no job. */
export function cellSentence(name: FigureName, point: GridPoint, units: Units): string {
  if (!point.ok) return `no job: ${point.problem.wrong}`
  const value = point.figures[name]
  const { dimension, none } = FIGURES[name]
  const words = value === null ? none : dimension === 'time' ? duration(value) : told(value, dimension, units)
  return point.trouble ? `${words}; ${TROUBLES[point.trouble]}` : words
}

interface Crossing {
  readonly value: number
  readonly n: number
}

/** Least and most of a figure, what has none, and what there is no job for. */
export function gridSentence(
  { scenario, x, y }: Pick<GridSpec, 'scenario' | 'x' | 'y'>,
  points: readonly (GridPoint | undefined)[],
  name: FigureName,
  units: Units,
): string {
  const there = points.flatMap((point, n) => (point ? [{ point, n }] : []))
  const values = there.flatMap(({ point, n }): Crossing[] => {
    const value = point.ok ? point.figures[name] : null
    return value === null ? [] : [{ value, n }]
  })
  const none = there.filter(({ point }) => point.ok && point.figures[name] === null).length
  const fails = there.filter(({ point }) => point.ok && point.trouble !== null).length
  const refused = there.filter(({ point }) => !point.ok).length
  const { label, none: noneWords, dimension } = FIGURES[name]
  const at = ({ value, n }: Crossing) =>
    `${dimension === 'time' ? duration(value) : told(value, dimension, units)} at ${valueWords(scenario, x.path, x.texts[n % x.texts.length])} and ${valueWords(scenario, y.path, y.texts[Math.floor(n / x.texts.length)])}`
  const least = values.reduce<Crossing | null>((a, b) => (a && a.value <= b.value ? a : b), null)
  const most = values.reduce<Crossing | null>((a, b) => (a && a.value >= b.value ? a : b), null)
  const range =
    !least || !most
      ? `${label}: ${noneWords} in all of them.`
      : least.value === most.value
        ? `${label}: ${at(least)}, and nowhere else another.`
        : `${label}: least ${at(least)}; most ${at(most)}.`
  const some = none > 0 && least ? ` In ${none} of ${there.length}: ${noneWords}.` : ''
  const fail = fails > 0 ? ` In ${fails} (${MARK}) the spindle stops or the winding burns out.` : ''
  const bad = refused > 0 ? ` For ${refused} there is no job.` : ''
  return there.length === refused ? `There is no job at any of them.` : `${range}${some}${fail}${bad}`
}

/** The grid as plain text: x across, y down. */
export function gridLines(
  title: string,
  spec: GridSpec,
  points: readonly GridPoint[],
  name: FigureName,
  units: Units,
): string[] {
  const { scenario, x, y } = spec
  const columns = x.texts.length
  const head = x.texts.map((text) => valueWords(scenario, x.path, text))
  const rows = y.texts.map((text, row) => [
    valueWords(scenario, y.path, text),
    ...head.map((_, column) => cellWords(name, points[row * columns + column], units)),
  ])
  const table = [['', ...head], ...rows]
  const widths = table[0].map((_, column) => Math.max(...table.map((row) => row[column].length)))
  return [
    title,
    '',
    gridSentence(spec, points, name, units),
    '',
    `${figureWords(name, units)}. Across: ${axisWords(scenario, x.path)}. Down: ${axisWords(scenario, y.path)}.`,
    '',
    ...table.map((row) =>
      row
        .map((cell, column) => (column === 0 ? cell.padEnd(widths[0]) : cell.padStart(widths[column])))
        .join('  '),
    ),
  ]
}

/** A variant made of a crossing, in a few words: "Machine pulley 9 in, air 30 °C". */
export function crossingName(scenario: Scenario, changes: Readonly<Record<string, string | null>>): string {
  const parts = Object.entries(changes).map(([path, text]) => {
    const label = inputAt(scenario, path)?.field.label ?? path
    return `${label} ${valueWords(scenario, path, text ?? '')}`
  })
  const [first, ...rest] = parts
  return [first, ...rest.map((part) => `${part.charAt(0).toLowerCase()}${part.slice(1)}`)]
    .join(', ')
    .slice(0, 60)
}

/** A text of an axis in SI, to draw by; null for a choice. */
export function axisNumber(scenario: Scenario, path: string, text: string): number | null {
  const field = inputAt(scenario, path)?.field
  if (field?.kind !== 'quantity') return null
  const parsed = parseQuantity(text, field.dimension)
  return parsed.ok ? parsed.value : null
}
