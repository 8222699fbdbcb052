// Limits of work and rest made up for tests of wording, to be changed in one thing at a time.
import type { Limits, LimitsStudy } from '../../../sim/studies/limits.ts'

export const limits = (changes: Partial<Limits> = {}): Limits => ({
  allDay: { torque: 3.26, limit: 'winding', amps: 5.47, windingC: 120, frameC: 84, switchC: 98 },
  lowest: 31.4,
  cold: { seconds: 757, ends: 'class', frameC: 49.9 },
  amps: 7.99,
  again: { rest: 60, seconds: 84 },
  next: { run: 300, standing: 441, free: 544 },
  work: 85,
  rest: 640,
  cut: 0.674,
  frameC: 78.6,
  ...changes,
})
export const study = (asGiven: Partial<Limits> = {}, careful: Partial<Limits> = asGiven): LimitsStudy => ({
  ok: true,
  phase: { name: 'milling', seconds: 300, speed: 36.65, cut: { kind: 'torque', torque: 5.8 }, surge: null },
  torque: 5.8,
  duty: { phases: [], seconds: 3600, startC: 20 },
  cycleRest: 60,
  slower: null,
  air: 20,
  asGiven: limits(asGiven),
  careful: limits(careful),
})
export const plain = (text: string) => text.replaceAll('\u00a0', ' ')
export const FOREVER: Partial<Limits> = {
  cold: null,
  again: null,
  next: null,
  work: 'any',
  rest: 'any',
  cut: 1.4,
}
