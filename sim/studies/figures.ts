// Figures a study can ask for by name: what each is called, its dimension, and how it is read off a job's figures.
import type { Job } from '../job.ts'
import type { Figures } from '../judge.ts'
import type { Dimension } from '../quantity.ts'

export interface FigureKind {
  readonly label: string
  readonly dimension: Dimension
  /** What it means where there is none. */
  readonly none: string
  /** The figure in SI, temperatures in °C; null where there is none. */
  of(figures: Figures, job: Job): number | null
}

const NEVER = 'never'

const kind = (label: string, dimension: Dimension, of: FigureKind['of'], none = 'none'): FigureKind => ({
  label,
  dimension,
  none,
  of,
})

/** Every figure, by the name a command takes. */
export const FIGURES = {
  firstOpening: kind('Cutoff first opens at', 'time', ({ firstOpening }) => firstOpening?.t ?? null, NEVER),
  timesOpen: kind('Times the cutoff opens', 'number', ({ timesOpen }) => timesOpen),
  firstOpenFor: kind('Stays open for', 'time', ({ firstOpenFor }) => firstOpenFor, NEVER),
  delivered: kind('Running time you get', 'share', ({ delivered }) => delivered),
  hottestWinding: kind('Hottest winding', 'temperature', ({ hottestWindingC }) => hottestWindingC.value),
  hottestFrame: kind('Hottest frame', 'temperature', ({ hottestFrameC }) => hottestFrameC.value),
  hottestSwitch: kind('Hottest cutoff', 'temperature', ({ hottestSwitchC }) => hottestSwitchC.value),
  classMargin: kind('Left to the class limit', 'temperature difference', ({ classMargin }) => classMargin),
  classPassed: kind('Class limit passed at', 'time', ({ classPassed }) => classPassed, NEVER),
  cutoffMargin: kind(
    'Left to the cutoff’s opening',
    'temperature difference',
    ({ cutoffMargin }) => cutoffMargin,
    'it opens',
  ),
  rmsAmps: kind('Heating value of the current', 'current', ({ rmsAmps }) => rmsAmps),
  peakAmps: kind('Greatest current', 'current', ({ peakAmps }) => peakAmps.value),
  workAmps: kind('Average current in the hardest step', 'current', ({ workAmps }) => workAmps),
  outletAmps: kind('Average current at the outlet', 'current', ({ outletAmps }) => outletAmps),
  slowest: kind(
    'Slowest in the cut',
    'angular speed',
    ({ slowest }) => slowest?.value ?? null,
    'never gets to its speed',
  ),
  sag: kind(
    'Speed lost in the cut',
    'share',
    ({ slowest }) => slowest?.sag ?? null,
    'never gets to its speed',
  ),
  limitSeconds: kind('Time at the current limit', 'time', ({ limitSeconds }) => limitSeconds),
  slipSeconds: kind('Time the belt slips', 'time', ({ slipSeconds }) => slipSeconds),
  workDone: kind('Work done at the spindle', 'energy', ({ energy }) => energy.work),
  energyTaken: kind('Energy taken by the motor', 'energy', ({ energy }) => energy.taken),
  efficiency: kind(
    'Of the energy taken, work',
    'share',
    ({ energy }) => (energy.taken > 0 ? energy.work / energy.taken : null),
    'nothing taken',
  ),
} as const satisfies Readonly<Record<string, FigureKind>>
export type FigureName = keyof typeof FIGURES
export const FIGURE_NAMES = Object.keys(FIGURES) as FigureName[]
