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
  leads: choiceOr('control circuit', {
    label: 'Where its leads go',
    options: {
      'control circuit': 'Into the control circuit: they switch the controller off and on',
      'no-volt release': 'Into the coil of a no-volt release: off until start is pressed',
      'motor lead': 'Into a motor lead: it carries the motor’s current',
      'not connected': 'Nowhere: it can open nothing',
    },
    help: 'The two thin leads beside the two motor leads.',
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

type Read = v.InferOutput<typeof CutoffFields>
/** Leads that are not said are in the control circuit. */
export type Cutoff = Omit<Read, 'leads'> & Partial<Pick<Read, 'leads'>>

/** The cutoff as its leads leave it: with none connected there is none, and a release that drops wants a hand on start. */
export function wired(cutoff: Cutoff): Cutoff {
  if (cutoff.leads === 'not connected') return { ...cutoff, fitted: 'none' }
  if (cutoff.leads === 'no-volt release' && cutoff.fitted === 'self-reset')
    return { ...cutoff, fitted: 'manual reset' }
  return cutoff
}

/** What a place feels: share of winding temperature, and lag in s (PHYSICS.md §1; lag 30–120 s on a shell is common practice). */
export const PLACES = {
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
