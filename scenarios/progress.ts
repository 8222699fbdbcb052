// Progress of long work on a terminal: one line on stderr, only where a person is watching.
import type { Progress } from '../sim/run.ts'

/** Work shorter than this shows nothing, ms; then the line is renewed this often. */
const PATIENCE = 500
const RENEW = 200

export interface ProgressLine {
  show(progress: Progress): void
  clear(): void
}

/** What progress counts: seconds of a job, told in hours, or points of a study. */
export type Counts = 'seconds' | 'points'

/** A line that appears once the work has taken a while. */
export function progressLine(label: string, counts: Counts = 'seconds'): ProgressLine {
  const { stderr } = process
  const watching = stderr.isTTY === true
  const started = performance.now()
  let shown = 0
  return {
    show({ t, of }) {
      const now = performance.now()
      if (!watching || now - started < PATIENCE || now - shown < RENEW) return
      shown = now
      const left = t > 0 ? ((now - started) * (of - t)) / t / 1000 : Number.NaN
      const rest = Number.isFinite(left) ? `, about ${Math.max(1, Math.round(left))} s left` : ''
      const far =
        counts === 'points' ? `${t} of ${of}` : `${(t / 3600).toFixed(1)} of ${(of / 3600).toFixed(1)} h`
      stderr.write(`\r\x1b[K${label}: ${far}${rest}`)
    },
    clear() {
      if (watching && shown > 0) stderr.write('\r\x1b[K')
    },
  }
}
