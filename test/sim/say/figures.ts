// Figures made up for tests of wording: a job that went well, to be changed in one thing at a time.
import type { Figures } from '../../../sim/judge.ts'

const WELL: Figures = {
  reached: 10800,
  seconds: 10800,
  ending: { kind: 'finished' },
  firstOpening: null,
  timesOpen: 0,
  firstOpenFor: null,
  delivered: 1,
  work: { phase: 2, asked: 6660, got: 6660 },
  hottestWindingC: { value: 101.2, t: 10000 },
  hottestFrameC: { value: 80, t: 10700 },
  hottestSwitchC: { value: 90, t: 10700 },
  classLimitC: 120,
  classMargin: 18.8,
  classPassed: null,
  damageC: 180,
  life: 2 ** 1.88,
  cutoffMargin: 30,
  rmsAmps: 6,
  peakAmps: { value: 12.34, t: 100 },
  workAmps: 8.64,
  slowest: { value: 34, t: 200, sag: 0.0723, asked: 36.65 },
  limitSeconds: 0,
  limitedInCut: 0,
  stalled: null,
  speedMissed: false,
  slipSeconds: 0,
  energy: { taken: 2e6, copper: 6e5, brushes: 1e5, friction: 2e5, belt: 1e5, idle: 2e5, work: 8e5 },
  outletAmps: 5.7,
}

const hot = { value: 172.6, t: 5000 }

/** What can become of a job, worst news last. */
export const FATES = {
  fine: {},
  'fine, no cutoff': { cutoffMargin: null },
  'close to the cutoff': { cutoffMargin: 2.4, hottestSwitchC: { value: 117.6, t: 9000 } },
  slow: { speedMissed: true, slowest: { value: 27.3, t: 200, sag: 0.255, asked: 36.65 } },
  'too hot': { classPassed: 1770, classMargin: -52.6, hottestWindingC: hot },
  'a hair too hot': { classPassed: 10700, classMargin: -0.2, hottestWindingC: { value: 120.2, t: 10799 } },
  stalled: { stalled: 260.4, speedMissed: true },
  'stalled at the limit': { stalled: 260.4, speedMissed: true, limitedInCut: 40, limitSeconds: 41 },
  opens: {
    firstOpening: { t: 1417, phase: 2 },
    timesOpen: 3,
    firstOpenFor: 1010,
    delivered: 0.351,
    work: { phase: 2, asked: 6660, got: 2340 },
    cutoffMargin: null,
  },
  'opens once and stays': {
    firstOpening: { t: 9700, phase: 0 },
    timesOpen: 1,
    delivered: 0.9,
    work: { phase: 2, asked: 6660, got: 6000 },
    cutoffMargin: null,
  },
  'open from the start': {
    firstOpening: { t: 0, phase: 0 },
    timesOpen: 1,
    firstOpenFor: 300,
    cutoffMargin: null,
  },
  destroyed: {
    ending: { kind: 'destroyed', t: 1234 },
    reached: 1234,
    work: { phase: 2, asked: 6660, got: 600 },
  },
  'too many steps': { ending: { kind: 'too many steps', t: 1234 }, reached: 1234 },
  'not finite': { ending: { kind: 'not finite', t: 0.2 }, reached: 0.2 },
  'step too small': { ending: { kind: 'step too small', t: 1234 }, reached: 1234 },
  abandoned: { ending: { kind: 'abandoned', t: 1234 }, reached: 1234 },
} satisfies Record<string, Partial<Figures>>

export type Fate = keyof typeof FATES
export const figuresOf = (fate: Fate): Figures => ({ ...WELL, ...FATES[fate] })
