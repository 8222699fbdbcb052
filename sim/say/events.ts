// What happened when, a line each.
import type { Job } from '../job.ts'
import { assemble } from '../plant.ts'
import type { Ending, Mark } from '../trace.ts'
import { clockTime, duration, percent, told } from './number.ts'
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
  const bare = job.parts.supply.kind === 'bare bridge'
  const name = (phase: number) => job.duty.phases[phase]?.name.trim() || `step ${phase + 1}`
  switch (mark.kind) {
    case 'opens':
      return `cutoff opens, during ${name(mark.phase)}`
    case 'recloses':
      return `cutoff recloses, during ${name(mark.phase)}`
    case 'limit reached':
      return bare
        ? `over ${told(job.parts.controller.currentLimit, 'current', units)}, which a bridge does not hold, for ${duration(mark.until - mark.t)}`
        : `current limit reached, for ${duration(mark.until - mark.t)}`
    case 'speed not reached':
      return `speed not held: down to ${told(mark.lowest / ratio, 'angular speed', units)} of ${told(mark.asked / ratio, 'angular speed', units)} ${bare ? 'that a knob would set' : 'asked'}`
    case 'belt slips':
      return `belt slips, ${percent(mark.worst)} at the worst, for ${duration(mark.until - mark.t)}`
    case 'stalled':
      return `spindle stalled, for ${duration(mark.until - mark.t)}`
    case 'class passed':
      return `winding passes its class limit of ${told(mark.limitC, 'temperature', units)}`
  }
}

/** Marks that come by the hundred are told once: when first, how often, and the worst of them with its own time. */
function gathered(
  marks: readonly Mark[],
): readonly { readonly mark: Mark; readonly t: number; readonly times: number }[] {
  const lines = new Map<string, { mark: Mark; t: number; times: number }>()
  for (const mark of marks) {
    const single = mark.kind === 'opens' || mark.kind === 'recloses' || mark.kind === 'class passed'
    const key = single ? `${mark.kind} ${mark.t}` : mark.kind
    const before = lines.get(key)
    lines.set(
      key,
      before
        ? { mark: worse(before.mark, mark), t: before.t, times: before.times + 1 }
        : { mark, t: mark.t, times: 1 },
    )
  }
  return [...lines.values()]
}

function worse(a: Mark, b: Mark): Mark {
  if (a.kind === 'speed not reached' && b.kind === 'speed not reached')
    return b.lowest / b.asked < a.lowest / a.asked ? b : a
  return 'until' in a && 'until' in b && b.until - b.t > a.until - a.t ? b : a
}

/** All that happens on AC, as far as it is worked out. */
const STANDS: readonly EventLine[] = [{ time: clockTime(0), words: 'it hums, and does not turn' }]

/** What happened and how the run ended, in order of time. */
export const eventLines = (
  job: Job,
  marks: readonly Mark[],
  ending: Ending,
  reached: number,
  units: Units,
): readonly EventLine[] =>
  job.parts.supply.kind === 'ac'
    ? STANDS
    : [
        ...gathered(marks).map(({ mark, t, times }) => ({
          time: clockTime(t),
          words:
            markWords(mark, job, units) +
            (times > 1 ? ` (the worst of ${times} times, at ${clockTime(mark.t)})` : ''),
        })),
        { time: clockTime(reached), words: endingWords[ending.kind] },
      ]
