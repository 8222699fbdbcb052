// What may be behind each symptom, with how often it is (common practice, no source), and the findings that speak for it.
import type { FindingName } from '../finding.ts'
import type { Symptom } from './names.ts'

/** Causes: in the job's numbers, or in a part. */
export type Cause =
  | 'air'
  | 'gearing'
  | 'work'
  | 'lumpy'
  | 'volts'
  | 'limit'
  | 'slip'
  | 'wrap'
  | 'outlet'
  | 'highLimit'
  | 'ac'
  | 'sag'
  | 'dust'
  | 'switch'
  | 'brushes'
  | 'bearings'
  | 'shorted'
  | 'magnets'
  | 'control'
  | 'alignment'
  | 'jam'
  | 'inrush'
  | 'device'
  | 'tension'
  | 'breaker'
  | 'earth'
  | 'chafed'
  | 'carbon'
  | 'static'

export interface Candidate {
  readonly cause: Cause
  readonly weight: number
  readonly findings: readonly FindingName[]
  readonly fault: boolean
}

const load = (cause: Cause, weight: number, ...findings: FindingName[]): Candidate => ({
  cause,
  weight,
  findings,
  fault: false,
})
const fault = (cause: Cause, weight: number): Candidate => ({ cause, weight, findings: [], fault: true })

export const CANDIDATES: Readonly<Record<Symptom, readonly Candidate[]>> = {
  trips: [
    load('air', 5, 'fanMissing', 'dirty', 'enclosed', 'fanUseless'),
    load('gearing', 4, 'horsepower', 'range'),
    load('lumpy', 5.5, 'lumpy', 'bareBridge'),
    load('work', 3, 'peak', 'tooHot', 'tooSmall'),
    fault('dust', 3),
    fault('switch', 2),
    fault('bearings', 1.5),
    fault('shorted', 1),
  ],
  shocks: [
    load('earth', 5, 'noEarth', 'earthUnknown'),
    fault('chafed', 4),
    fault('carbon', 3),
    fault('static', 1),
  ],
  stalls: [
    load('gearing', 6, 'horsepower', 'range', 'stalls'),
    load('limit', 3, 'limited', 'weakSupply'),
    load('sag', 4, 'sags'),
    load('volts', 3, 'underVolts'),
    fault('brushes', 3),
    fault('control', 2),
    fault('magnets', 1),
    fault('jam', 1.5),
  ],
  bogs: [
    load('volts', 6, 'underVolts', 'reach'),
    load('slip', 5.5, 'slips'),
    load('limit', 5, 'limited', 'weakSupply'),
    load('gearing', 4, 'horsepower', 'range', 'stalls'),
    load('sag', 4.5, 'sags'),
    fault('tension', 3),
    fault('magnets', 2),
    fault('brushes', 2),
  ],
  fuse: [
    load('outlet', 6, 'socket', 'weakSupply'),
    load('highLimit', 5, 'limitHigh'),
    load('gearing', 3, 'stalls', 'limited'),
    load('ac', 7, 'ac'),
    fault('device', 3),
    fault('inrush', 3),
    fault('shorted', 2),
    fault('jam', 1),
  ],
  squeals: [
    load('slip', 6, 'slips'),
    load('wrap', 4, 'beltLimit'),
    fault('alignment', 4),
    fault('tension', 3),
    fault('bearings', 2),
  ],
  burns: [
    load('work', 5, 'stalls', 'limited', 'tooSmall', 'peak'),
    load('air', 1, 'fanMissing', 'dirty', 'enclosed'),
    load('ac', 7, 'ac'),
    fault('shorted', 4),
    fault('bearings', 3),
    fault('brushes', 3),
    fault('jam', 1.5),
  ],
  hums: [
    load('ac', 9, 'ac'),
    load('gearing', 4, 'stalls', 'horsepower'),
    load('limit', 3, 'limited'),
    fault('jam', 4),
    fault('control', 3),
    fault('brushes', 2),
    fault('bearings', 1.5),
  ],
}

/** What trips where no cutoff can: something else does. */
const UNGUARDED: readonly Candidate[] = [
  load('outlet', 5, 'socket', 'weakSupply'),
  load('limit', 3, 'limited', 'stalls'),
  load('highLimit', 3, 'limitHigh'),
  fault('breaker', 4),
  fault('control', 3),
  fault('device', 2),
  fault('shorted', 2),
]

/** What may be behind a symptom of a job whose cutoff can, or can not, stop it. */
export const candidatesFor = (symptom: Symptom, guarded: boolean): readonly Candidate[] =>
  symptom === 'trips' && !guarded ? UNGUARDED : CANDIDATES[symptom]
