// What a belt can carry before it slips, and the pull it puts on the shafts.

/** One stage of a drive at standstill: pulleys and centres in m, groove in rad, mass in kg/m of the whole belt. */
export interface Grip {
  /** Friction exponent of each pulley's wrap: exp(μθ/sin(β/2)), the lesser of both. */
  readonly capstan: number
  readonly mass: number
  /** Pull of each strand when fitted, N. */
  readonly installed: number
}

/** The lesser capstan factor of both pulleys: the small one wraps less. */
export const capstan = (friction: number, wrap: number, groove: number): number =>
  Math.exp((friction * wrap) / Math.sin(groove / 2))

/** Greatest difference of the strands' pulls at belt speed v (m/s), N: 2(F0 − Fc)(E − 1)/(E + 1), Fc = m v². */
export function greatestPull({ capstan: e, mass, installed }: Grip, v: number): number {
  const centrifugal = mass * v * v
  return Math.max(0, (2 * (installed - centrifugal) * (e - 1)) / (e + 1))
}

/** Installed pull of each strand that just carries a difference of pulls at belt speed v, N. */
export const installedFor = (pull: number, e: number, mass: number, v: number): number =>
  (pull * (e + 1)) / (2 * (e - 1)) + mass * v * v

/** Pull on the shafts with the belt standing still, N: both strands, drawn together by the wrap. */
export const shaftPull = (installed: number, wrap: number): number => 2 * installed * Math.sin(wrap / 2)

/**
 * Pull on the shafts at work, N: the strands pull with F0 − Fc ± half their difference, at the angle the wrap leaves
 * between them. Sum of two vectors; the whirling belt carries its own Fc = m v². Same at both ends of a stage.
 */
export function workingShaftPull(installed: number, centrifugal: number, pull: number, wrap: number): number {
  const middle = Math.max(0, installed - centrifugal)
  const tight = middle + pull / 2
  const slack = Math.max(0, middle - pull / 2)
  return Math.sqrt(tight * tight + slack * slack - 2 * tight * slack * Math.cos(wrap))
}
