// What to measure, in words: what it is called, how it is done, and where the reading goes.
import type { Job } from '../../job.ts'
import type { Sure } from '../../studies/sure.ts'
import type { Settling } from '../../studies/sure/settle.ts'
import { told } from '../number.ts'
import type { Units } from '../units.ts'

interface Measuring {
  /** "Current during milling". */
  readonly title: string
  /** To finish "Measure …". */
  readonly what: string
  readonly how: string
  /** Zone J holds its step and field. */
  readonly bench: boolean
  /** The input whose field takes it, where it is not a bench reading. */
  readonly path: string | null
}

const BENCH: Readonly<
  Record<
    Exclude<Settling['kind'], 'current' | 'air' | 'opens at' | 'mass'>,
    readonly [string, string, string]
  >
> = {
  'warm-up': [
    'Warm-up on the bench',
    'a warm-up on the bench',
    'Belt off, steady amps; log the frame until it settles, and as it cools.',
  ],
  ohms: [
    'Winding ohms',
    'the winding’s ohms',
    'Supply unplugged: ohmmeter across the motor leads, the lowest of ten.',
  ],
  held: [
    'Volts with the shaft held',
    'volts with the shaft held',
    '2 to 5 A for a few seconds, volts at the leads.',
  ],
  spin: [
    'Volts made by turning',
    'the volts it makes by turning',
    'Turn the shaft with a drill; read volts and rpm together.',
  ],
  running: [
    'Amps running free',
    'the amps running free',
    'Belt off, full voltage, after five minutes; clamp on one motor lead.',
  ],
  coast: ['Coast-down', 'the coast-down', 'Belt off; switch off from speed with a stopwatch running.'],
}

/** A measurement in words. `settling.reads`: what it would show if all were as given. */
export function measureWords({ kind, phase, reads }: Settling, job: Job, units: Units): Measuring {
  if (kind === 'current') {
    // A current is of a step.
    const index = Number(phase)
    const { cut, ...step } = job.duty.phases[index]
    const name = step.name.trim() || `step ${index + 1}`
    const input = cut.kind === 'power' ? 'power' : cut.kind === 'fan' ? 'fanTorque' : 'torque'
    return {
      title: `Current during ${name}`,
      what: `the current during ${name}`,
      how: `Clamp on one motor lead, on DC, for a full minute. The ${input === 'power' ? 'power' : 'torque'} as given makes about ${told(reads, 'current', units)}: change it in proportion.`,
      bench: false,
      path: `duty.phases.${index}.${input}`,
    }
  }
  if (kind === 'air')
    return {
      title: 'Air around the motor',
      what: 'the air around the motor',
      how: 'A thermometer beside the motor, while it works.',
      bench: false,
      path: 'heat.air',
    }
  if (kind === 'opens at')
    return {
      title: 'Where the cutoff opens',
      what: 'where the cutoff opens',
      how: 'Warm it in an oven beside a thermometer until its contact opens.',
      bench: false,
      path: 'cutoff.opensAt',
    }
  if (kind === 'mass')
    return {
      title: 'Mass of the motor',
      what: 'the motor’s mass',
      how: 'Bathroom scales will do.',
      bench: false,
      path: 'plate.mass',
    }
  const [title, what, how] = BENCH[kind]
  return { title, what, how, bench: true, path: null }
}

/** A gain worth a sentence. */
const WORTH = 0.05

/** What to measure first; null where nothing would tell much. */
export const firstToMeasure = ({ settling }: Sure): Settling | null =>
  settling.find(({ known, gain }) => !known && gain >= WORTH) ?? null

/** "9 of 9 things that could be measured are estimated: measure the current during milling first." */
export function estimatedWords(sure: Sure, job: Job, units: Units): string {
  const { estimated, measurable } = sure
  if (estimated === 0) return 'Everything that bears on it has been measured.'
  const first = firstToMeasure(sure)
  const count = `${estimated} of ${measurable} inputs estimated`
  return first
    ? `${count}: measure ${measureWords(first, job, units).what} first.`
    : `${count}; no single one would tell much more.`
}
