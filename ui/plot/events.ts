// Events of the charts: the moment looked at and the part of the job shown, in seconds of the job.

/** The scrubber moved to t, s. */
export interface Moment {
  readonly t: number
}

/** The part of the job shown below the ribbons, s. */
export interface Part {
  readonly from: number
  readonly to: number
}

interface PlotEvents {
  moment: Moment
  window: Part
}

declare global {
  interface HTMLElementEventMap {
    moment: CustomEvent<Moment>
    window: CustomEvent<Part>
  }
}

/** Sends an event that bubbles and leaves shadow trees. */
export function tell<K extends keyof PlotEvents>(from: EventTarget, kind: K, detail: PlotEvents[K]): void {
  from.dispatchEvent(new CustomEvent(kind, { detail, bubbles: true, composed: true }))
}
