// Events of the charts: the moment looked at, the part of the job shown, a step made longer; in seconds.

/** The scrubber moved to t, s. */
export interface Moment {
  readonly t: number
}

/** The part of the job shown below the ribbons, s. */
export interface Part {
  readonly from: number
  readonly to: number
}

/** A step of the duty was made so long, s; `during` names the drag it is part of. */
export interface StepLength {
  readonly index: number
  readonly seconds: number
  readonly during: string
}

interface PlotEvents {
  moment: Moment
  window: Part
  step: StepLength
}

declare global {
  interface HTMLElementEventMap {
    moment: CustomEvent<Moment>
    window: CustomEvent<Part>
    step: CustomEvent<StepLength>
  }
}

/** Sends an event that bubbles and leaves shadow trees. */
export function tell<K extends keyof PlotEvents>(from: EventTarget, kind: K, detail: PlotEvents[K]): void {
  from.dispatchEvent(new CustomEvent(kind, { detail, bubbles: true, composed: true }))
}
