// The ratio study in sentences: which ratios work, what sets each edge, and what the belt itself objects to.
import { LEAST_WRAP } from '../handbook/beltSections.ts'
import type { RatioStudy } from '../studies/ratio.ts'
import type { Why } from '../studies/ratio/fits.ts'
import { type BeltFault, STEEPEST } from '../drive/limits.ts'
import type { Edge, Window } from '../studies/ratio/window.ts'
import { NBSP, ratioText, told } from './number.ts'
import type { Units } from './units.ts'

const degrees = (angle: number): string => `${Math.round((angle * 180) / Math.PI)}°`

/** What goes wrong, in a few words with its subject. */
export function whyWords(why: Why, { asked }: Pick<RatioStudy, 'asked'>, units: Units): string {
  const words: Readonly<Record<Why, string>> = {
    unfinished: 'there is no answer',
    destroyed: 'the winding burns out',
    opens: 'the cutoff opens',
    hot: 'the winding gets too hot',
    stalls: 'the spindle stops',
    slips: 'the belt slips',
    sags: 'it sags more than you accept',
    reach: `it cannot reach ${told(asked.fastest, 'angular speed', units)}`,
    touch: 'the pulleys do not fit between the shafts',
    wrap: `the belt wraps less than ${degrees(LEAST_WRAP)} of the small pulley`,
    'small driving': 'the driving pulley is too small for the belt',
    'small driven': 'the driven pulley is too small for the belt',
    balance: 'the belt runs so fast that pulleys need balancing',
    rim: 'the rims run too fast',
    load: 'the belt is too light for its pull',
    steep: 'it is steep for one stage',
  }
  return words[why]
}

/** The two worst reasons in one piece. */
const reasons = (edge: readonly Why[], study: RatioStudy, units: Units): string =>
  edge
    .slice(0, 2)
    .map((why) => whyWords(why, study, units))
    .join(', and ')

/** An edge to one decimal, rounded to the side that works. */
export const inward = (ratio: number, side: 'low' | 'high'): number =>
  (side === 'low' ? Math.ceil(ratio * 10 - 1e-6) : Math.floor(ratio * 10 + 1e-6)) / 10

function between(window: Window<Why>): string {
  const low = inward(window.low.ratio, 'low')
  const high = inward(window.high.ratio, 'high')
  if (low >= high) return `at about ${ratioText(Math.sqrt(window.low.ratio * window.high.ratio))}`
  return `from ${ratioText(low)} to ${ratioText(high)}`
}

function edgeClause(side: 'Below' | 'Above', edge: Edge<Why>, study: RatioStudy, units: Units): string {
  if (edge.beyond === null) return `${side} that nothing was tried`
  return `${side}, ${reasons(edge.why, study, units)}`
}

/** Why nothing works: what every ratio has in common, or what the two ends have. */
function whyNone(study: RatioStudy, units: Units): string {
  const { points } = study
  const common = points[0].faults.filter((fault) => points.every(({ faults }) => faults.includes(fault)))
  if (common.length > 0) return `At every one of them ${reasons(common, study, units)}.`
  const low = points[0]
  const high = points[points.length - 1]
  return `Towards ${ratioText(low.ratio)} ${reasons(low.faults, study, units)}; towards ${ratioText(high.ratio)} ${reasons(high.faults, study, units)}.`
}

/** Which ratios work, and what sets each edge: "Works from 3.7 : 1 to 5.6 : 1. Below, …; above, …" */
export function windowSentence(study: RatioStudy, units: Units): string {
  const { window, duty, points } = study
  if (window) {
    const above = edgeClause('Above', window.high, study, units)
    const steep =
      window.high.ratio > STEEPEST && study.present.stages.length === 1
        ? ` Over ${ratioText(STEEPEST)} two stages are better than one.`
        : ''
    return `Works ${between(window)}. ${edgeClause('Below', window.low, study, units)}; ${above[0].toLowerCase()}${above.slice(1)}.${steep}`
  }
  if (duty)
    return `Ratios ${between(duty)} would do the job, but not with this belt in one stage: ${bar(study, units)}.`
  const [first, last] = [points[0], points[points.length - 1]]
  return `No ratio from ${ratioText(first.ratio)} to ${ratioText(last.ratio)} works. ${whyNone(study, units)}`
}

/** What the belt objects to where the duty would be content. */
function bar(study: RatioStudy, units: Units): string {
  const fault = study.points.find(({ faults, beltFaults }) => faults.length === 0 && beltFaults.length > 0)
  return fault ? whyWords(fault.beltFaults[0].kind, study, units) : 'its limits are passed'
}

/** The drive as it is: does it, or what it does instead. */
export function presentSentence(study: RatioStudy, units: Units): string {
  const { ratio, faults, lowestAllDay } = study.present
  const cut = told(study.asked.torque, 'torque', units)
  const holds =
    lowestAllDay === null
      ? `It cannot hold the cut’s mean torque of ${cut} without rests at any speed.`
      : `It holds the cut’s mean torque of ${cut} all day ${lowestAllDay === 0 ? 'at any speed' : `from ${told(lowestAllDay, 'angular speed', units)} up`}.`
  if (faults.length === 0) return `The ${ratioText(ratio)} it has now works. ${holds}`
  return `At the ${ratioText(ratio)} it has now ${reasons(faults, study, units)}. ${holds}`
}

/** A limit of the belt that is passed, as a sentence. */
export function beltSentence(fault: BeltFault, stages: number, units: Units): string {
  const { kind, value, limit, stage } = fault
  const where = stages > 1 ? ` (stage ${stage + 1})` : ''
  const length = (size: number) => told(size, 'length', units)
  const speed = (size: number) => told(size, 'speed', units)
  switch (kind) {
    case 'touch':
      return `The pulleys${where} need ${length(limit)} between centres, and there is ${length(value)}.`
    case 'wrap':
      return `The belt${where} wraps only ${degrees(value)} of the small pulley; it wants ${degrees(limit)}.`
    case 'small driving':
    case 'small driven':
      return `The ${kind === 'small driving' ? 'driving' : 'driven'} pulley${where}, ${length(value)}, is under the ${length(limit)} that this belt bends round for long.`
    case 'load':
      return `The belt’s tight strand${where} pulls with ${told(value, 'force', units)}; such a belt stands about ${told(limit, 'force', units)} for long.`
    case 'balance':
      return `The belt${where} runs ${speed(value)}; over ${speed(limit)} pulleys need balancing.`
    case 'rim':
      return `The rims${where} run ${speed(value)}; cast pulleys stand ${speed(limit)}.`
    case 'steep':
      return `One stage${where} of ${ratioText(value)} is steep; about ${ratioText(limit).replace(`${NBSP}:`, ' :')} is usual.`
  }
}
