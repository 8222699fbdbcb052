// How wide an element is, and how much its text is enlarged: measured whenever either changes.
import type { LitElement, ReactiveController } from 'lit'

/** Keeps width (px) and enlargement of its host, which holds a `.ruler` of the frame's styles. */
export class Measured implements ReactiveController {
  width = 0
  k = 1
  private readonly host: LitElement
  private watcher: ResizeObserver | undefined

  constructor(host: LitElement) {
    this.host = host
    host.addController(this)
  }

  hostConnected(): void {
    this.watcher = new ResizeObserver(() => this.measure())
    this.watcher.observe(this.host)
  }

  hostUpdated(): void {
    const ruler = this.host.renderRoot.querySelector('.ruler')
    if (ruler) this.watcher?.observe(ruler)
  }

  hostDisconnected(): void {
    this.watcher?.disconnect()
  }

  private measure(): void {
    const width = Math.floor(this.host.clientWidth)
    const ruler = this.host.renderRoot.querySelector('.ruler')
    const k = (ruler?.getBoundingClientRect().width ?? 100) / 100
    if (width === this.width && k === this.k) return
    this.width = width
    this.k = k
    this.host.requestUpdate()
  }
}
