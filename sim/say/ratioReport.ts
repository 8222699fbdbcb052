// The ratio study as plain text: the window, a table of ratios, and pulleys to buy.
import type { RatioPoint, RatioStudy } from '../studies/ratio.ts'
import { DECIDED } from '../studies/ratio/fits.ts'
import type { Pair } from '../studies/ratio/pairs.ts'
import type { Proposal } from '../studies/ratio/proposals.ts'
import type { StepTrial } from '../studies/ratio/steps.ts'
import type { TwoStages } from '../studies/ratio/jackshaft.ts'
import { duration, percent, ratioText, told } from './number.ts'
import { beltSentence, presentSentence, whyWords, windowSentence } from './ratio.ts'
import type { Units } from './units.ts'

export interface RatioRow {
  readonly ratio: string
  readonly pulley: string
  readonly top: string
  readonly allDay: string
  readonly sag: string
  readonly winding: string
  readonly opens: string
  readonly verdict: string
}

const HEAD: RatioRow = {
  ratio: 'Ratio',
  pulley: 'Last pulley',
  top: 'Top speed',
  allDay: 'All day from',
  sag: 'Sag',
  winding: 'Hottest winding',
  opens: 'Cutoff opens',
  verdict: '',
}

/** Points nearer to the one before are left out of the table, a share; never the ends of what works. */
const NEAR = 0.04

/** One ratio as a row of texts. */
function ratioRow(point: RatioPoint, study: RatioStudy, units: Units): RatioRow {
  const { faults, beltFaults, firstOpening, lowestAllDay, sag } = point
  const whys = [...faults, ...beltFaults.map(({ kind }) => kind).filter((kind) => DECIDED.includes(kind))]
  return {
    ratio: ratioText(point.ratio),
    pulley: told(point.machinePulley, 'length', units),
    top: told(point.topSpeed, 'angular speed', units),
    allDay:
      lowestAllDay === null
        ? 'never'
        : lowestAllDay === 0
          ? 'any speed'
          : told(lowestAllDay, 'angular speed', units),
    sag: sag === null ? '—' : percent(sag),
    winding: told(point.hottestWindingC, 'temperature', units),
    opens: firstOpening === null ? 'never' : `at ${duration(firstOpening)}`,
    verdict: whys.length === 0 ? 'works' : whyWords(whys[0], study, units),
  }
}

/** The points worth a row: evenly spread, with the present ratio and both edges. */
export function shownPoints({ points, duty, present }: RatioStudy): readonly RatioPoint[] {
  const edges = duty === null ? [] : [duty.low.ratio, duty.high.ratio]
  const nearEdge = ({ ratio }: RatioPoint, by: number) =>
    edges.some((each) => Math.abs(each / ratio - 1) < by)
  let before = 0
  return points.filter((point) => {
    const kept = point === present || nearEdge(point, 1e-9)
    if (!kept && (nearEdge(point, NEAR) || point.ratio < before * (1 + NEAR))) return false
    before = point.ratio
    return true
  })
}

const COLUMNS = Object.keys(HEAD) as (keyof RatioRow)[]

function tableLines(rows: readonly RatioRow[]): string[] {
  const widths = COLUMNS.map((column) => Math.max(...rows.map((row) => row[column].length)))
  return rows.map((row) =>
    `  ${COLUMNS.map((column, index) => row[column].padEnd(widths[index])).join('  ')}`.trimEnd(),
  )
}

const toBuy = (buys: number): string =>
  buys === 0 ? 'nothing to buy' : buys === 1 ? 'one pulley to buy' : `${buys} pulleys to buy`

/** What a proposal comes to, in a few words. */
const outcome = ({ trial }: Proposal<object>, units: Units): string =>
  `hottest winding ${told(trial.hottestWindingC, 'temperature', units)}${trial.sag === null ? '' : `, sag ${percent(trial.sag)}`}`

/** A pair of pulleys with its belt. */
function pairLine(pair: Proposal<Pair>, units: Units): string {
  const length = (size: number) => told(size, 'length', units)
  const belt =
    pair.length === null || pair.centres === null
      ? ''
      : `, ${length(pair.length)} belt at ${length(pair.centres)} between centres`
  const pull = pair.trial.stages.at(-1)?.pull ?? null
  const pulls = pull === null ? '' : `; pulls each shaft with ${told(pull, 'force', units)}`
  // Beside a jackshaft these are the last stage's, and the ratio that of both.
  const last = pair.trial.stages.length > 1 ? 'Last stage ' : ''
  return `${last}${length(pair.driving)} to ${length(pair.driven)}: ${ratioText(pair.ratio)}${last === '' ? '' : ' in both stages'}${belt}; ${outcome(pair, units)}${pulls}; ${toBuy(pair.buys)}`
}

/** A step of the pulleys, and what becomes of the job on it. */
function stepLine(step: StepTrial, study: RatioStudy, units: Units): string {
  const { trial, driving, driven, inUse } = step
  const [first] = trial.faults
  const comes = first === undefined ? `works; ${outcome(step, units)}` : whyWords(first, study, units)
  return `Step ${step.step}${inUse ? ' (in use)' : ''}: ${told(driving, 'length', units)} to ${told(driven, 'length', units)}, ${ratioText(step.ratio)}; ${comes}`
}

/** Two stages. */
function twoStageLine(stages: Proposal<TwoStages>, units: Units): string {
  const [motor, large, small, machine] = stages.pulleys.map((size) => told(size, 'length', units))
  return `${motor} to ${large}, then ${small} to ${machine}: ${ratioText(stages.ratio)}; ${outcome(stages, units)}; ${toBuy(stages.buys)}`
}

/** The whole study, line by line. */
export function ratioLines(title: string, study: RatioStudy, units: Units): string[] {
  const { present, pairs, twoStages } = study
  const notes = present.beltFaults.map((fault) => beltSentence(fault, present.stages.length, units))
  if (study.toothed) notes.push('Toothed pulleys come by teeth: take the ones nearest to these diameters.')
  const list = (head: string, lines: readonly string[]) =>
    lines.length === 0 ? [] : ['', head, ...lines.map((line) => `  ${line}`)]
  return [
    title,
    windowSentence(study, units),
    presentSentence(study, units),
    ...notes,
    '',
    ...tableLines([HEAD, ...shownPoints(study).map((point) => ratioRow(point, study, units))]),
    ...list(
      'Steps the pulleys have, run through the whole job',
      study.steps.map((step) => stepLine(step, study, units)),
    ),
    ...list(
      'Pulleys that are sold, run through the whole job',
      pairs.map((pair) => pairLine(pair, units)),
    ),
    ...list(
      'Two stages through a jackshaft',
      twoStages.map((stages) => twoStageLine(stages, units)),
    ),
    ...(pairs.length + twoStages.length === 0 ? ['', 'No pulleys that are sold do the job.'] : []),
  ]
}
