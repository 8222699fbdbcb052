// The duty's clock: which phase it is and since when. It never drifts, however often the cycle repeats.
import { type Duty, type Phase, phaseSeconds, SHORTEST_PHASE } from './duty.ts'

export interface Clock {
  /** Number of the phase in the cycle, and when it began, s of the job. */
  phase: number
  phaseStart: number
  cycles: number
}

export const clock = (): Clock => ({ phase: 0, phaseStart: 0, cycles: 0 })

/** True where time t (s) lies at the phase's end, or so near it that no step could be taken. */
export const phaseOver = (duty: Duty, now: Clock, t: number): boolean => {
  const length = phaseSeconds(duty.phases[now.phase])
  return length - (t - now.phaseStart) <= SHORTEST_PHASE * Math.max(1, length)
}

/** Moves on to the next phase; `cycle` is the duty's length of one turn, s. */
export function nextPhase(duty: Duty, now: Clock, cycle: number): void {
  now.phaseStart += phaseSeconds(duty.phases[now.phase])
  now.phase++
  if (now.phase < duty.phases.length) return
  now.phase = 0
  now.cycles++
  now.phaseStart = now.cycles * cycle
}

/** The phase it is. */
export const phaseNow = (duty: Duty, now: Clock): Phase => duty.phases[now.phase]
