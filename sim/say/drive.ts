// The drive in rows: what pulleys, belt and shafts come to, stage by stage and step by step.
import { stockBelt } from '../belting/stock.ts'
import { type BuiltStage, builtStages, smallestOf } from '../drive/limits.ts'
import { shaftPulls } from '../drive/pull.ts'
import { type StepFit, stepFits, TAKE_UP } from '../drive/steps.ts'
import type { Job } from '../job.ts'
import { type Belt, hasJackshaft, ratio } from '../parts/belt.ts'
import { toUnit } from '../quantity.ts'
import { grouped, NBSP, percent, ratioText, told } from './number.ts'
import type { Row } from './stations.ts'
import { type Units, unitFor } from './units.ts'

/** The rows of a stage under its name; null: the drive has one stage only. */
export interface StageRows {
  readonly name: string | null
  readonly rows: readonly Row[]
}

/** A length as belts are bought: four digits, a millimetre at 1.5 m. */
export function beltSize(length: number, units: Units): string {
  const unit = unitFor('length', units)
  const inUnit = Number(toUnit(length, unit).toPrecision(4))
  return `${grouped(inUnit, String(inUnit).split('.')[1]?.length ?? 0)}${NBSP}${unit}`
}

const fastestOf = ({ parts: { belt }, duty }: Job): number =>
  Math.max(...duty.phases.map(({ speed }) => speed)) * ratio(belt)

/** Where a stage's centres are from. */
function whence(belt: Belt, last: boolean): string {
  if ((last ? belt.centreDistance : belt.jackshaftCentres) !== undefined) return ''
  const length = last ? belt.length : belt.jackshaftLength
  return length === undefined ? ' (not measured: the diameters together)' : ' (from the belt)'
}

function stockRow({ driving, driven, centres, length }: BuiltStage, units: Units): Row {
  const sold = stockBelt(driving, driven, centres)
  const size = (value: number) => beltSize(value, units)
  const same = sold && Math.abs(sold.length - length) < 1e-4
  return {
    label: 'Sold nearest',
    value: !sold
      ? 'none goes round'
      : same
        ? `${size(sold.length)}, this one`
        : `${size(sold.length)}, at ${size(sold.centres)} between centres`,
  }
}

/** Rows of each stage, from motor to machine. */
export function driveRows(job: Job, units: Units): readonly StageRows[] {
  const { belt } = job.parts
  const pulls = shaftPulls(job)
  const stages = builtStages(belt, fastestOf(job))
  const size = (value: number) => told(value, 'length', units)
  const least = smallestOf(belt)
  return stages.map((stage, index) => {
    const last = index === stages.length - 1
    const pull = pulls?.[index]
    const rows: Row[] = [
      { label: 'Ratio', value: ratioText(stage.driven / stage.driving) },
      { label: 'Between centres', value: `${size(stage.centres)}${whence(belt, last)}` },
      { label: 'Belt length', value: beltSize(stage.length, units) },
      stockRow(stage, units),
      { label: 'Wrap, small pulley', value: `${Math.round((stage.wrap * 180) / Math.PI)}°` },
      { label: 'Belt speed, fastest', value: told(stage.speed, 'speed', units) },
      ...(least > 0 ? [{ label: 'Smallest pulley for it', value: size(least) }] : []),
      ...(pull
        ? [
            {
              label: 'Each strand, as fitted',
              value: `${told(pull.strand, 'force', units)}, to carry what it slips at`,
            },
            {
              label: `Pulls ${shafts(stages.length, index)}`,
              value: `${told(pull.rest, 'force', units)} at rest, up to ${told(pull.working, 'force', units)} at work`,
            },
          ]
        : last && !pulls
          ? [{ label: 'Pull on the shafts', value: noPull(belt) }]
          : []),
    ]
    return { name: stages.length === 1 ? null : last ? 'Jackshaft to machine' : 'Motor to jackshaft', rows }
  })
}

const shafts = (stages: number, index: number): string =>
  stages === 1
    ? 'motor and machine shaft'
    : index === 0
      ? 'motor shaft and jackshaft'
      : 'jackshaft and machine shaft'

const noPull = ({ section }: Belt): string =>
  section === undefined || section === 'not said'
    ? 'say which belt it is'
    : 'follows from how it is fitted, and what it carries is not known'

/** A step in one line: "2: 3 in to 8 in, 2.7 : 1; belt 0.4 % longer". */
export function stepRow(fit: StepFit, belt: Belt, units: Units): Row {
  const size = (value: number) => told(value, 'length', units)
  const off = Math.abs(fit.longer)
  const belted = fit.inUse
    ? 'in use'
    : off <= TAKE_UP
      ? 'the belt fits'
      : `wants a belt ${percent(off)} ${fit.longer > 0 ? 'longer' : 'shorter'}`
  const which = hasJackshaft(belt) ? ' after the jackshaft' : ''
  return {
    label: `Step ${fit.step}`,
    value: `${size(fit.driving)} to ${size(fit.driven)}${which}, ${ratioText(fit.ratio)}; ${belted}`,
  }
}

/** The steps of a drive; none where its pulleys have one each. */
const stepRows = ({ parts: { belt } }: Job, units: Units): readonly Row[] =>
  stepFits(belt).map((fit) => stepRow(fit, belt, units))

/** The drive in lines of a report. */
export function driveLines(job: Job, units: Units): string[] {
  const groups = [...driveRows(job, units)]
  const steps = stepRows(job, units)
  if (steps.length > 0) groups.push({ name: 'Steps', rows: steps })
  const width = Math.max(...groups.flatMap(({ rows }) => rows.map(({ label }) => label.length)))
  return groups.flatMap(({ name, rows }) => [
    ...(name === null ? [] : [`  ${name}`]),
    ...rows.map(({ label, value }) => `  ${label.padEnd(width)}  ${value}`),
  ])
}
