// The reference runs at the "precise" tolerance: how far off the worst event and temperature of all of them are.
import { compareRun, type ReferenceFile } from '../../scenarios/referenceRuns.ts'

/** Largest relative error of an event's time, and largest of a temperature, K. */
export function worstOf(file: ReferenceFile): { event: number; temperature: number } {
  const all = file.runs.map((reference) => compareRun(file.base, reference, 'precise'))
  return {
    event: Math.max(...all.map(({ eventError }) => eventError)),
    temperature: Math.max(...all.map(({ temperatureError }) => temperatureError)),
  }
}
