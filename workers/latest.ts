// The latest request of a channel wins: asking again takes the older one back.

/** One place of a page that shows one answer. */
export interface Channel {
  /** The signal of a new request; that of the older one is aborted. */
  next(): AbortSignal
  /** Takes the request back without a new one. */
  cancel(): void
}

export function latest(): Channel {
  let control = new AbortController()
  return {
    next() {
      control.abort()
      control = new AbortController()
      return control.signal
    },
    cancel: () => control.abort(),
  }
}
