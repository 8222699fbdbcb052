// What we use of odex 2.0.4: E. Hairer's ODEX, explicit extrapolation with dense output.

/** The value of one component at a time within the step; good after the solve that gave it has stopped. */
export type Dense = (component: number, t: number) => number

export class Solver {
  constructor(size: number)
  relativeTolerance: number | number[]
  absoluteTolerance: number | number[]
  denseOutput: boolean
  /** Also the floor of the first step; never below 1e-4 unless half the span is. */
  initialStepSize: number
  /**
   * Integrates from t to tEnd. `accepted` is called once at the start (dense missing or false) and after
   * every accepted step; returning false stops. Arrays must be plain ones.
   */
  solve(
    rates: (t: number, y: number[]) => number[],
    t: number,
    y: number[],
    tEnd: number,
    accepted: (count: number, tOld: number, t: number, y: number[], dense?: Dense | false) => boolean,
  ): unknown
}
