// Times on the charts: clock form to the second for the scrubber, ticks of the time axis.
const pad = (value: number): string => String(value).padStart(2, '0')

/** Clock form, whole seconds: 23:35, from an hour 1:23:35. The scrubber moves by 5 s, so nothing is rounded to 10. */
export function exactClock(t: number): string {
  const s = Math.round(t)
  const minutes = Math.floor(s / 60)
  if (minutes < 60) return `${minutes}:${pad(s % 60)}`
  return `${Math.floor(minutes / 60)}:${pad(minutes % 60)}:${pad(s % 60)}`
}

/** Spoken: "23 min 35 s", "1 h 3 min 5 s", "42 s". */
export function exactWords(t: number): string {
  const s = Math.round(t)
  const parts = [
    [Math.floor(s / 3600), 'h'],
    [Math.floor(s / 60) % 60, 'min'],
    [s % 60, 's'],
  ] as const
  const words = parts.filter(([count]) => count > 0).map(([count, unit]) => `${count} ${unit}`)
  return words.length > 0 ? words.join(' ') : '0 s'
}

/** A tick of the time axis: where, s, and its text. */
export interface TimeTick {
  readonly t: number
  readonly text: string
}

const MINUTE = 60
const HOUR = 3600
const DAY = 24 * HOUR
const STEPS = [
  ...[5, 10, 15, 30],
  ...[1, 2, 5, 10, 15, 30].map((n) => n * MINUTE),
  ...[1, 2, 3, 6, 12].map((n) => n * HOUR),
  ...[1, 2, 5, 10, 20, 50, 100].map((n) => n * DAY),
]

/** Smallest round step (s), not under `least`, of which a window of `seconds` holds at most `most`. */
export const timeStep = (seconds: number, most: number, least = 0): number =>
  STEPS.find((step) => step >= least && seconds / step <= most) ??
  Math.ceil(seconds / most / (100 * DAY)) * 100 * DAY

/**
 * Ticks of a window: minutes from the job's start, the first with its unit; clock form below a minute, hours and
 * days above.
 */
export function timeTicks(from: number, to: number, most: number, least = 0): TimeTick[] {
  const step = timeStep(to - from, most, least)
  const ticks: TimeTick[] = []
  for (let n = Math.max(0, Math.ceil(from / step - 1e-9)); n * step <= to + 1e-6; n++) {
    const t = n * step
    const first = ticks.length === 0
    const text =
      step < MINUTE
        ? exactClock(t)
        : step < HOUR
          ? `${t / MINUTE}${first ? '\u00a0min' : ''}`
          : step < DAY
            ? `${t / HOUR}\u00a0h`
            : `${t / DAY}\u00a0d`
    ticks.push({ t, text })
  }
  return ticks
}
