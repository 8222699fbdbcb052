// What the ratio study says at any ratio: its points, straight between them on the logarithmic axis.
import { DESTROYED_C } from '../../sim/run.ts'
import type { RatioPoint, RatioStudy } from '../../sim/studies/ratio.ts'

/** A winding that has burnt out: how hot the rest would have got, nobody knows. */
export const isBurnt = ({ hottestWindingC }: Pick<RatioPoint, 'hottestWindingC'>): boolean =>
  hottestWindingC > DESTROYED_C - 1

/** What is read off at a ratio; null where the spindle never settles. */
export interface AtRatio {
  readonly topSpeed: number
  readonly sag: number | null
  readonly switchC: number
  readonly windingC: number
  /** The winding burns out here, or at the ratio tried next to it. */
  readonly burnt: boolean
}

const between = (a: number, b: number, share: number): number => a + (b - a) * share

/** The study at a ratio within what was tried. */
export function atRatio({ points }: Pick<RatioStudy, 'points'>, ratio: number): AtRatio {
  const after = points.findIndex((point) => point.ratio >= ratio)
  const b: RatioPoint = points[after < 0 ? points.length - 1 : after]
  const a: RatioPoint = points[Math.max(0, (after < 0 ? points.length : after) - 1)]
  const share = a.ratio < b.ratio ? Math.min(1, Math.log(ratio / a.ratio) / Math.log(b.ratio / a.ratio)) : 0
  return {
    topSpeed: between(a.topSpeed, b.topSpeed, share),
    sag: a.sag === null || b.sag === null ? null : between(a.sag, b.sag, share),
    switchC: between(a.hottestSwitchC, b.hottestSwitchC, share),
    windingC: between(a.hottestWindingC, b.hottestWindingC, share),
    burnt: share === 1 ? isBurnt(b) : isBurnt(a) || (share > 0 && isBurnt(b)),
  }
}

/** How far a key moves the cross-hair: to which ratio; undefined: none of its keys. */
export function ratioKey(
  key: string,
  shift: boolean,
  at: number,
  [low, high]: readonly [number, number],
  edges: readonly number[],
): number | undefined {
  const step = shift ? 1.1 : 1.01
  const kept = (ratio: number) => Math.min(high, Math.max(low, ratio))
  switch (key) {
    case 'ArrowRight':
    case 'ArrowUp':
      return kept(at * step)
    case 'ArrowLeft':
    case 'ArrowDown':
      return kept(at / step)
    case 'PageUp':
      return edges.find((edge) => edge > at * 1.0001) ?? high
    case 'PageDown':
      return edges.findLast((edge) => edge < at / 1.0001) ?? low
    case 'Home':
      return low
    case 'End':
      return high
    default:
      return undefined
  }
}
