// The whole answer as plain text: sentence, figures with units, what limits, events, notes.
import type { Skipping } from '../carryOut.ts'
import type { CrossCheck } from '../crossCheck.ts'
import type { Job } from '../job.ts'
import type { Figures } from '../judge.ts'
import type { PhaseCut } from '../phaseCuts.ts'
import type { Problem } from '../problem.ts'
import type { Sure } from '../studies/sure.ts'
import type { Trace } from '../trace.ts'
import { answerOf } from './answer.ts'
import { checkWords } from './check.ts'
import { driveLines } from './drive.ts'
import { eventLines } from './events.ts'
import { keyNumbers, limitsOf } from './keyNumbers.ts'
import { brief, grouped, percent, told } from './number.ts'
import { phaseCutLines } from './phaseCuts.ts'
import { skippingWords } from './skipping.ts'
import { sureLines } from './sure.ts'
import type { Units } from './units.ts'

export interface Reported {
  readonly job: Job
  readonly trace: Trace
  readonly figures: Figures
  /** The cuts that steps name. */
  readonly cuts?: readonly PhaseCut[]
  readonly notes: readonly Problem[]
  readonly check: CrossCheck | null
  /** Which cycles were run, where not all were. */
  readonly skipping?: Skipping | null
  /** How sure it is, where that was asked. */
  readonly sure?: Sure | null
  /** What to do about it, line by line. */
  readonly advice?: readonly string[]
  /** The wiring checklist, line by line, where that was asked. */
  readonly checklist?: readonly string[]
}

/** Said under every answer. */
export const cautionOf = ({ parts: { supply } }: Job): string =>
  `This is an estimate, not a rating. ${supply.kind === 'battery' ? 'A battery burns what shorts it, and over 60 V it can kill' : 'Mains-derived DC can kill'}: a licensed electrician and your local electrical code decide.`

const LOSSES = [
  ['work', 'the cut'],
  ['idle', 'the machine’s own drag'],
  ['belt', 'the belt'],
  ['copper', 'heat in the copper'],
  ['friction', 'the motor’s friction'],
  ['brushes', 'the brushes'],
] as const

const indented = (line: string): string => (line === '' ? '' : `  ${line}`)

/** Most event lines in a report; the rest is counted. */
const MOST_EVENTS = 24

/** Two significant digits are more than the rule is worth. */
const lifeWords = (life: number): string => {
  if (life > 999) return 'over 999'
  return life < 0.001 ? 'under 0.001' : brief(Number(life.toPrecision(2)))
}

function figureLines(job: Job, figures: Figures, units: Units): string[] {
  const rows: (readonly [string, string])[] = keyNumbers(job, figures, units).map(
    ({ label, number, unit, note }) =>
      [label, `${number}${unit === '' ? '' : ` ${unit}`}  (${note})`] as const,
  )
  const { energy } = figures
  // On AC nothing of this is worked out.
  if (job.parts.supply.kind !== 'ac')
    rows.push(
      ['Hottest frame', told(figures.hottestFrameC.value, 'temperature', units)],
      ...(job.parts.cutoff.fitted === 'none'
        ? []
        : [['Hottest cutoff switch', told(figures.hottestSwitchC.value, 'temperature', units)] as const]),
      [
        'Insulation life',
        `${lifeWords(figures.life)} times that at the class limit (rule of thumb: 10 K halve it)`,
      ],
      ['Heating current, whole job', told(figures.rmsAmps, 'current', units)],
      [
        'At the current limit',
        `${grouped(figures.limitSeconds, 0)} s, of which ${grouped(figures.limitedInCut, 0)} s after start-up`,
      ],
      ['Energy taken', told(energy.taken, 'energy', units)],
      ...LOSSES.map(
        ([name, words]) =>
          [`  of that, ${words}`, energy.taken > 0 ? percent(energy[name] / energy.taken) : '—'] as const,
      ),
    )
  const width = Math.max(...rows.map(([label]) => label.length))
  return rows.map(([label, value]) => `  ${label.padEnd(width)}  ${value}`)
}

/** The report. */
export function jobReport(
  title: string,
  {
    job,
    trace,
    figures,
    cuts = [],
    notes,
    check,
    skipping,
    sure = null,
    advice = [],
    checklist = [],
  }: Reported,
  units: Units,
): string {
  const answer = answerOf(job, figures, units, sure)
  const limits = limitsOf(job, figures, units)
  const events = eventLines(job, trace.marks, trace.ending, figures.reached, units)
  const shown =
    events.length > MOST_EVENTS ? [...events.slice(0, MOST_EVENTS - 1), events[events.length - 1]] : events
  const hidden = events.length - shown.length
  return [
    title,
    '',
    answer.sentence,
    answer.support,
    '',
    ...(sure
      ? ['How sure', ...sureLines(sure, job, units).map(indented), '', 'With the values as given']
      : []),
    ...figureLines(job, figures, units),
    ...(cuts.length > 0 ? ['', 'What the work asks', ...phaseCutLines(cuts, job, units)] : []),
    '',
    'The drive',
    ...driveLines(job, units),
    '',
    'What limits',
    ...limits.map(({ name, limits: bad, why }) => `  ${bad ? '✗' : '✓'} ${name.padEnd(8)} ${why}`),
    '',
    'What happens',
    ...shown.map(({ time, words }) => `  ${time.padStart(8)}  ${words}`),
    ...(hidden > 0 ? [`            and ${hidden} more; --json lists them all`] : []),
    ...(notes.length > 0
      ? ['', 'Worth a look', ...notes.map(({ path, wrong, wouldDo }) => `  ${path}: ${wrong} ${wouldDo}`)]
      : []),
    ...(advice.length > 0 ? ['', 'What to do about it', ...advice] : []),
    ...(checklist.length > 0 ? ['', 'Wiring and safety', ...checklist] : []),
    ...(skipping ? ['', skippingWords(skipping)] : []),
    ...(check ? ['', 'Second method', `  ${checkWords(check, units)}`] : []),
    '',
    cautionOf(job),
  ].join('\n')
}
