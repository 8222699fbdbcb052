// What every chart gives: its title, what stands still, what it reads at a moment, its sentence and its table.
import { type SVGTemplateResult, svg } from 'lit'
import { gutterMarks, labelMarks } from './layers/labels.ts'
import type { Reading } from './layers/readout.ts'
import { placeLabels, type Polyline, type Rect, textWidth, type Wanted } from './label.ts'
import type { Scales } from './scales.ts'
import { timeStep } from './time.ts'
import { type View, within } from './view.ts'

/** Rows of text under headings: the same facts as the drawing. */
export interface Table {
  readonly head: readonly string[]
  readonly rows: readonly (readonly string[])[]
}

export interface Chart {
  readonly id: string
  readonly title: string
  /** After the title, in plain weight: the unit, and how to read the lines. */
  readonly unit: string
  readonly hint: string
  /** Height of the svg, px. */
  readonly height: number
  readonly scales: Scales
  /** What does not follow the scrubber: what lies under its line, and the texts and marks over it. */
  readonly still: SVGTemplateResult
  readonly over: SVGTemplateResult
  /** What the readouts are of ("switch"), or nothing. */
  readonly reads: string
  readonly readings: (at: number) => readonly Reading[]
  /** The chart in a sentence. */
  readonly words: string
  readonly table: () => Table
}

/** Times of the rows of a table, s: one a minute, or a round step that makes about 60. */
export function tableTimes(from: number, to: number): number[] {
  const step = Math.max(60, timeStep(to - from, 61))
  const times: number[] = []
  for (let t = Math.ceil(from / step) * step; t <= to; t += step) times.push(t)
  return times
}

/** A text that belongs to a level of the plot, as a limit does. */
export interface Level {
  readonly text: string
  readonly look: string
  readonly value: number
}

/**
 * Texts of the levels: in the right gutter above the readouts, or inside a narrow plot, clear of lines and of what is
 * taken. Returns what inner labels must keep clear of.
 */
export function levelTexts(
  view: View,
  scales: Scales,
  levels: readonly Level[],
  lines: readonly Polyline[] = [],
  taken: readonly Rect[] = [],
): { marks: SVGTemplateResult; taken: readonly Rect[] } {
  const { box, y } = scales
  const height = (value: number) => Math.max(box.top, y(value))
  if (!view.narrow) {
    const texts = levels.map(({ value, ...text }) => ({ ...text, at: height(value) }))
    const readouts = (view.variants.length + 1) * view.row + 4
    return {
      marks: gutterMarks(texts, box.right + 10, view.row, box.top - view.row / 2, box.bottom - readouts),
      taken,
    }
  }
  const wanted = levels.map(({ text, value }): Wanted => {
    const width = textWidth(text, view.type)
    const over = height(value) - view.row
    const under = height(value) + 1
    const left = box.left + 4
    const right = box.right - width - 4
    // The ends first, then anywhere along the line, then rows away from it.
    const along = [0, 1, 0.25, 0.5, 0.75].map((share) => right + share * (left - right))
    const rows = [over, under, over - view.row, under + view.row, over - 2 * view.row]
    const spots = rows.flatMap((y) => along.map((x) => [x, y] as const))
    return { text, width, height: view.row - 1, spots }
  })
  const roomy = within({ ...box, top: Math.max(0, box.top - view.row) })
  const places = placeLabels(wanted, taken, lines, roomy)
  return {
    marks: labelMarks(levels, places),
    taken: [...taken, ...places.filter((place) => place !== undefined)],
  }
}

/** Everything inside the plot and nothing outside: the shape that lines are cut to. */
export const clipShape = (id: string, { box }: Scales): SVGTemplateResult => svg`
  <clipPath id="clip-${id}">
    <rect x=${box.left} y=${box.top - 2} width=${box.right - box.left} height=${box.bottom - box.top + 4} />
  </clipPath>`
