// What happened when, a line each.
import type { Job } from '../job.ts'
import { assemble } from '../plant.ts'
import type { Ending, Mark } from '../trace.ts'
import { clockTime, duration, told } from './number.ts'
import type { Units } from './units.ts'

export interface EventLine {
  readonly time: string
  readonly words: string
}

const endingWords: Record<Ending['kind'], string> = {
  finished: 'end of the job',
  destroyed: 'the winding burns out',
  'too many steps': 'stopped: too many steps',
  'not finite': 'stopped: the numbers ran away',
  'step too small': 'stopped: no step was small enough',
  abandoned: 'stopped when asked',
}

/** Words for a mark. */
export function markWords(mark: Mark, job: Job, units: Units): string {
  const ratio = assemble(job.parts).ratio
  const name = (phase: number) => job.duty.phases[phase]?.name.trim() || `step ${phase + 1}`
  switch (mark.kind) {
    case 'opens':
      return `cutoff opens, during ${name(mark.phase)}`
    case 'recloses':
      return `cutoff recloses, during ${name(mark.phase)}`
    case 'limit reached':
      return `current limit reached, for ${duration(mark.until - mark.t)}`
    case 'speed not reached':
      return `speed not held: down to ${told(mark.lowest / ratio, 'angular speed', units)} of ${told(mark.asked / ratio, 'angular speed', units)} asked`
    case 'stalled':
      return `spindle stalled, for ${duration(mark.until - mark.t)}`
    case 'class passed':
      return `winding passes its class limit of ${told(mark.limitC, 'temperature', units)}`
  }
}

/** Every mark and how the run ended, in order of time. */
export const eventLines = (
  job: Job,
  marks: readonly Mark[],
  ending: Ending,
  reached: number,
  units: Units,
): readonly EventLine[] => [
  ...marks.map((mark) => ({ time: clockTime(mark.t), words: markWords(mark, job, units) })),
  { time: clockTime(reached), words: endingWords[ending.kind] },
]
