// The thermal cutoff: what temperature it feels, how late, and when it opens and recloses.
import * as v from 'valibot'
import { choiceOr, quantity, quantityOr } from '../field.ts'

export const CutoffFields = v.object({
  fitted: choiceOr('self-reset', {
    label: 'Thermal cutoff',
    options: {
      'self-reset': 'Recloses by itself when cool',
      'manual reset': 'Stays open until its button is pressed',
      none: 'None, or its leads are not connected',
    },
  }),
  opensAt: quantityOr('120 °C', {
    label: 'Opens at',
    dimension: 'temperature',
    low: '40 °C',
    high: '200 °C',
    help: 'Printed on the switch.',
  }),
  reclosesAt: quantityOr('87 °C', {
    label: 'Recloses at',
    dimension: 'temperature',
    low: '0 °C',
    high: '195 °C',
    help: 'Usually 20 to 40 °C lower.',
  }),
  place: choiceOr('brush end', {
    label: 'Where it sits',
    options: {
      shell: 'On the shell',
      'brush end': 'Inside, at the brush end',
      magnet: 'Inside, beside a magnet',
    },
  }),
  windingShare: v.optional(
    quantity({
      label: 'Share of winding temperature it feels',
      dimension: 'share',
      low: '0 %',
      high: '100 %',
      help: 'Left open: by its place. Shell 10 %, beside a magnet 25 %, brush end 40 %.',
    }),
  ),
  lag: v.optional(
    quantity({
      label: 'Lag of the switch',
      dimension: 'time',
      low: '0.5 s',
      high: '1000 s',
      help: 'Left open: by its place. Shell 90 s, beside a magnet 60 s, brush end 45 s.',
    }),
  ),
})

export type Cutoff = v.InferOutput<typeof CutoffFields>

/** What a place feels: share of winding temperature, and lag in s (PHYSICS.md §1; lag 30–120 s on a shell is common practice). */
const PLACES = {
  shell: { windingShare: 0.1, lag: 90 },
  'brush end': { windingShare: 0.4, lag: 45 },
  magnet: { windingShare: 0.25, lag: 60 },
} as const

/** Least difference between opening and reclosing that the model can follow. K */
export const LEAST_HYSTERESIS = 5

/** Rate of the sense element's temperature: it follows a blend of winding and frame. K/s */
export function senseRate(cutoff: Cutoff, windingC: number, frameC: number, switchC: number): number {
  const place = PLACES[cutoff.place]
  const share = cutoff.windingShare ?? place.windingShare
  return (share * windingC + (1 - share) * frameC - switchC) / (cutoff.lag ?? place.lag)
}
