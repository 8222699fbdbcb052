// The jobs the gallery's pictures are of: example jobs with changes, each chosen for a state it shows.
import type { Figures } from '../../sim/judge.ts'
import type { Scenario } from '../../sim/scenario.ts'
import type { Trace } from '../../sim/trace.ts'
import type { Fit } from '../../sim/identify/fit.ts'
import type { Advice } from '../../sim/advise.ts'
import type { AgainstOld } from '../../sim/rival/picture.ts'
import type { LimitsStudy } from '../../sim/studies/limits.ts'
import type { HeatMap } from '../../sim/studies/map.ts'
import type { RatioStudy } from '../../sim/studies/ratio.ts'
import type { Sure } from '../../sim/studies/sure.ts'
import type { GridShown } from '../study/work.ts'

export interface Made {
  /** Name of an example's file. */
  readonly demo: string
  readonly changes: Readonly<Record<string, string>>
  /** Whether its run is drawn, and those of its variants. */
  readonly runs: boolean
  readonly variants: boolean
}

/** Long enough for an opening and a reclosing, and small. */
const SHORT = { 'duty.repeatFor': '56 min' } as const

export const MADE = {
  /** Opens, stays off, recloses; its variants never open, or sag. */
  mill: {
    demo: 'appleMill',
    changes: { ...SHORT, 'duty.phases.2.torque': '4.4 lbf·ft' },
    runs: true,
    variants: true,
  },
  /** Two hours: the ribbons are full of stops. */
  saw: { demo: 'bandSaw', changes: {}, runs: true, variants: true },
  burnt: {
    demo: 'appleMill',
    changes: { ...SHORT, 'cutoff.fitted': 'none', 'duty.phases.2.torque': '9 lbf·ft' },
    runs: true,
    variants: false,
  },
  slipping: {
    demo: 'appleMill',
    changes: { ...SHORT, 'belt.section': 'A', 'belt.carries': '6 lbf·ft' },
    runs: true,
    variants: false,
  },
  /** No control, and the cutoff carries the motor's current: what is dangerous comes first. */
  deadly: {
    demo: 'appleMill',
    changes: { ...SHORT, 'supply.kind': 'bare bridge', 'cutoff.leads': 'motor lead' },
    runs: false,
    variants: false,
  },
  well: {
    demo: 'appleMill',
    changes: { ...SHORT, 'heat.cooling': 'shaft fan', 'duty.phases.2.torque': '1.2 lbf·ft' },
    runs: false,
    variants: false,
  },
} as const satisfies Readonly<Record<string, Made>>
export type MadeName = keyof typeof MADE

/** A job with its runs: as found, then with each of its variants. */
export interface FrozenJob {
  readonly scenario: Scenario
  readonly outcomes: readonly { readonly trace: Trace; readonly figures: Figures }[]
}

/** What the studies of some of the jobs came to. */
export interface FrozenStudies {
  readonly ratio: Readonly<Record<'mill' | 'saw', RatioStudy>>
  readonly map: Readonly<Record<'mill' | 'saw' | 'burnt', HeatMap>>
  readonly against: Readonly<Record<'alone' | 'old' | 'steps', AgainstOld>>
  readonly limits: Readonly<Record<'mill' | 'well', LimitsStudy>>
  readonly sure: Readonly<Record<'mill' | 'well', Sure>>
  readonly advice: Readonly<Record<'mill' | 'deadly' | 'well', Advice>>
  readonly grid: GridShown
  readonly fit: Fit
}
