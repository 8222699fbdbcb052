// The title block, as at the corner of a drawing: whose job, which variant, what came out, from how many inputs, when.
import { html, type TemplateResult } from 'lit'
import { answerOf, inShort } from '../../../sim/say/answer.ts'
import { keyNumbers } from '../../../sim/say/keyNumbers.ts'
import { ratioText, told } from '../../../sim/say/number.ts'
import { stationRows } from '../../../sim/say/stations.ts'
import type { Units } from '../../../sim/say/units.ts'
import { assemble } from '../../../sim/plant.ts'
import { FORMAT } from '../../../sim/scenario.ts'
import type { Report } from './facts.ts'
import { originCounts } from './inputs.ts'

interface Cell {
  readonly label: string
  readonly value: string
}

/** "hp, in, °C". */
const unitWords = ({ system, temperature }: Units): string =>
  `${system === 'us' ? 'hp, in, lbf·ft' : 'kW, mm, N·m'}, ${temperature}`

/** "9 from the plate, 29 given, 11 worked out, 21 usual". */
function inputWords({ inputs }: Report): string {
  const { measured, plate, given, usual, 'worked out': made } = originCounts(inputs)
  const parts: readonly (readonly [number, string])[] = [
    [measured, 'measured'],
    [plate, 'from the plate'],
    [given, 'given'],
    [made, 'estimated'],
    [usual, 'usual'],
  ]
  return parts
    .filter(([count]) => count > 0)
    .map(([count, words]) => `${count} ${words}`)
    .join(', ')
}

const rowOf = (station: 'motor' | 'machine', label: string, report: Report): string =>
  stationRows(station, report.shown.result.job, report.units).find((row) => row.label === label)?.value ?? ''

/** The cells, in order, without the number of the sheet. `day`: as the reader writes days. */
export function titleCells(report: Report, day: string): readonly Cell[] {
  const { job, figures } = report.shown.result
  const { units } = report
  const { belt } = job.parts
  const [first] = keyNumbers(job, figures, units)
  const { verdict } = answerOf(job, figures, units, report.shown.sure)
  const short = `${first.label} ${first.number}`
    .replace('at never', 'never')
    .replace('at none fitted', ': none fitted')
    .toLowerCase()
  const length = (value: number) => told(value, 'length', units)
  return [
    { label: 'Job', value: report.name },
    { label: 'Variant', value: `${report.variant}: ${inShort(job)}` },
    { label: 'Answer', value: `${verdict}. As given: ${short}` },
    { label: 'Inputs', value: inputWords(report) },
    { label: 'Motor', value: rowOf('motor', 'Plate', report) },
    {
      label: 'Belt',
      value: `${length(belt.motorPulley)} to ${length(belt.machinePulley)}, ${ratioText(assemble(job.parts).ratio)}`,
    },
    {
      label: 'Duty',
      value: `${rowOf('machine', 'Duty', report)}; ${rowOf('machine', 'Repeated', report)}`,
    },
    { label: 'Date', value: day },
    { label: 'Units', value: unitWords(units) },
    { label: 'Made by', value: `Dutywright, job format ${FORMAT}` },
  ]
}

const cell = ({ label, value }: Cell): TemplateResult => html`<div><dt>${label}</dt><dd>${value}</dd></div>`

/** The block; `sheet`: "Sheet 1 of 2", where it heads paper. */
export const titleBlock = (report: Report, day: string, sheet = ''): TemplateResult =>
  html`<dl class="title" aria-label="Title block">
    ${titleCells(report, day).map(cell)}
    ${cell({ label: 'Status', value: report.shown.previous ? 'Previous result: an input needs a look' : 'An estimate, not a rating' })}
    ${sheet === '' ? cell({ label: 'Prints on', value: '2 sheets and a checklist' }) : cell({ label: 'Sheet', value: sheet })}
  </dl>`

/** One line that heads a further sheet. */
export const titleLine = ({ name, variant }: Report, day: string, sheet: string): TemplateResult =>
  html`<p class="running"><strong>${name}</strong><span>${variant}</span><span>${day}</span><span>${sheet}</span></p>`
