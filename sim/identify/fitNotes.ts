// What to know about a fit: what was taken for granted, and readings that do not go with the rest.
import { type Found, missesAt, type Question } from './heatSearch.ts'
import { startOf } from './heatStart.ts'

/** Readings that count less than this lie far off the curve. */
const HARDLY = 0.5
/** Scatter that no thermometer has: the curve does not follow. K, and as a share of the rise */
const POOR = { kelvin: 2, share: 0.08 }
const MOST_ROWS = 5

/** Notes on a fit, a sentence each. */
export function notesOn(question: Question, { solution, channels }: Found, jobAirC: number): string[] {
  const { log, drive } = question
  const notes: string[] = []
  const start = startOf(log, jobAirC)
  const round = (value: number) => `${Math.round(value)} °C`
  if (start.airFrom === 'cold motor')
    notes.push(`No air temperature is logged: taken from the cold motor, ${round(start.airC[0])}.`)
  if (start.airFrom === 'job')
    notes.push(
      start.warm
        ? `It starts at ${round(start.frameC)}, and the job’s air is ${round(jobAirC)}: taken as a motor still warm. Was it in °F, or the room hotter?`
        : `No air temperature is logged: the job’s is taken, ${round(jobAirC)}.`,
    )
  if (log.ohms.some((value, row) => !Number.isNaN(value) && drive.running[row]))
    notes.push('Ohms read while running are left aside: a meter shows the supply then.')
  for (const { of, rows, weights } of channels) {
    const far = rows.filter((_, n) => weights[n] < HARDLY)
    if (far.length === 0) continue
    const shown = far.slice(0, MOST_ROWS).map((row) => Math.round(log.time[row] / 6) / 10)
    notes.push(
      `${far.length === 1 ? 'A reading' : `${far.length} readings`} of the ${of === 'frame' ? 'can' : 'winding'} ${far.length === 1 ? 'lies' : 'lie'} far off the curve and ${far.length === 1 ? 'counts' : 'count'} little: at ${shown.join(', ')}${far.length > MOST_ROWS ? ' …' : ''} min.`,
    )
  }
  const { frameC } = missesAt(question, solution.p)
  const rise = frameC.reduce((top, value) => Math.max(top, value), -Infinity) - frameC[0]
  for (const { of, sigma } of channels)
    if (of === 'frame' && sigma > Math.max(POOR.kelvin, POOR.share * rise))
      notes.push(
        'The curve does not follow the can well: amps or rpm may have changed between readings, or a fan ran that the job does not know.',
      )
  return notes
}
