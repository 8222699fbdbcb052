// A problem with an input, as data: where it is, what is wrong, what would do.

export interface Problem {
  /** Where in the scenario: dot-separated, phases by number from 0; '' for the file as a whole. */
  readonly path: string
  /** One sentence saying what is wrong. */
  readonly wrong: string
  /** One sentence saying what would do. */
  readonly wouldDo: string
  /** Ready texts that would do, for a button each. */
  readonly offers?: readonly string[]
}
