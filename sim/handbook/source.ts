// Where a handbook number comes from, and how well it is known.

/** 'read': the source was read. 'memory': nobody has the page. 'practice': a fact of the trade without a source. */
export interface Sourced {
  readonly source: string
  readonly standing: 'read' | 'memory' | 'practice'
}
