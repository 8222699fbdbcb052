// The comparison with the old motor as plain text: sentence, a table a speed, plates, and where its torques are from.
import type { Job } from '../job.ts'
import type { Comparison } from '../rival/compare.ts'
import { compareSentence, dutyWords, platesWords, verdictWords } from './compare.ts'
import { type CompareRow, compareRows } from './compareRows.ts'
import { told } from './number.ts'
import { type Units, unitFor } from './units.ts'

const HEAD: CompareRow = { label: '', old: 'old', motor: 'this', note: '' }

function tableLines(rows: readonly CompareRow[]): string[] {
  const width = (pick: (row: CompareRow) => string) => Math.max(...rows.map((row) => pick(row).length))
  const label = width((row) => row.label)
  const old = width((row) => row.old)
  const motor = width((row) => row.motor)
  return rows.map((row) =>
    `  ${row.label.padEnd(label)}  ${row.old.padStart(old)}  ${row.motor.padStart(motor)}  ${row.note}`.trimEnd(),
  )
}

/** Where the old motor's torques are from, and what stands behind the others. */
function knownLines({ rival }: Comparison, job: Job, units: Units): string[] {
  const { drag } = job.parts.machine
  const less = drag > 0 ? [`The machine’s own drag, ${told(drag, 'torque', units)}, is taken off both.`] : []
  if (rival.kind === 'DC')
    return [...less, 'The old motor’s heat is estimated from its plate, as this one’s is.']
  const { locked, breakdown, serviceFactor } = rival.sources
  return [
    ...less,
    `The old motor pulls at least this: it is taken as the least that the standard allows${rival.hertz === 50 ? ', though on 60 Hz' : ''}.`,
    `Seconds: ${breakdown}. Standing: ${locked}. Minutes: ${serviceFactor}.`,
  ]
}

/** The report. */
export function compareReport(title: string, comparison: Comparison, job: Job, units: Units): string {
  const { met, rival, top } = comparison
  const blocks = met.flatMap((each) => [
    '',
    `At ${told(each.speed, 'angular speed', units)}, ${unitFor('torque', units)} at the spindle`,
    ...tableLines([HEAD, ...compareRows(each, job, rival, units)]),
    `  ${verdictWords(each, job, top, units)}`,
  ])
  const plates = platesWords(comparison, job, units)
  return [
    title,
    '',
    [compareSentence(comparison, units), dutyWords(comparison, units)]
      .filter((text) => text !== '')
      .join(' '),
    ...blocks,
    '',
    ...(plates === '' ? [] : [plates]),
    ...knownLines(comparison, job, units),
  ].join('\n')
}
