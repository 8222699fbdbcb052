// Doubts made up for tests of wording: a mill that mostly opens, to be changed in one thing at a time.
import type { Sure } from '../../../../sim/studies/sure.ts'
import type { Settling } from '../../../../sim/studies/sure/settle.ts'

const NEVER = { lasts: 0, opens: 0, hot: 0, stalls: 0, burns: 0, unfinished: 0 }
/** Shares by fate; those left out are none. */
export const fates = (shares: Partial<Sure['fates']>): Sure['fates'] => ({ ...NEVER, ...shares })

export const reading = (changes: Partial<Settling>): Settling => ({
  name: 'current 2',
  kind: 'current',
  phase: 2,
  known: false,
  reads: 9.3,
  low: 1200,
  high: 1980,
  gain: 0.24,
  ...changes,
})

const time = (n: number): number => 900 + (n * 1440) / 39
export const dots = (lasting: number, fate: Sure['given']['fate'] = 'opens'): Sure['dots'] =>
  Array.from({ length: 40 }, (_, n) =>
    n < 40 - lasting ? { t: time(n), fate } : { t: null, fate: 'lasts' as const },
  )

export const OPENS: Sure = {
  samples: 200,
  without: 0,
  fates: fates({ opens: 0.96, hot: 0.02, lasts: 0.02 }),
  fails: 'opens',
  given: { fate: 'opens', t: 1417 },
  t: { low: 900, mid: 1450, high: 2340 },
  windingC: { low: 118, mid: 140, high: 171 },
  switchC: { low: 119, mid: 120, high: 122 },
  dots: dots(1),
  of: 'time',
  settling: [
    reading({}),
    reading({ name: 'ohms', kind: 'ohms', phase: null, reads: 1.25, low: 1020, high: 2100, gain: 0.14 }),
    reading({ name: 'air', kind: 'air', phase: null, reads: 25, low: 900, high: 2280, gain: 0.02 }),
    reading({
      name: 'mass',
      kind: 'mass',
      phase: null,
      reads: 6,
      low: 900,
      high: 2340,
      gain: 0,
      known: true,
    }),
  ],
  estimated: 3,
  measurable: 4,
  effort: 1e6,
}

export const LASTS: Sure = {
  ...OPENS,
  fates: fates({ lasts: 0.96, opens: 0.04 }),
  given: { fate: 'lasts', t: null },
  t: { low: null, mid: null, high: null },
  windingC: { low: 86, mid: 101, high: 118 },
  switchC: { low: 78, mid: 90, high: 103 },
  dots: dots(38),
  of: 'winding',
  settling: [reading({ low: 92, high: 112 })],
  estimated: 1,
  measurable: 4,
}

export const CLOSE: Sure = {
  ...OPENS,
  fates: fates({ lasts: 0.6, opens: 0.35, hot: 0.05 }),
  t: { low: 1500, mid: null, high: null },
  dots: dots(24),
}
