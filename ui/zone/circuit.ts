// The circuit in principle with its words under it: an element of its own, for the page and for the gallery.
import { css, html, LitElement } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import type { Job } from '../../sim/job.ts'
import type { Units } from '../../sim/say/units.ts'
import { circuitDrawing } from '../drawing/circuit.ts'
import { Measured } from '../plot/measured.ts'
import { base } from '../style/base.ts'

@customElement('circuit-figure')
export class CircuitFigure extends LitElement {
  static styles = [
    base,
    css`
      .ruler {
        position: absolute;
        width: calc(100px * var(--k));
        height: 0;
        visibility: hidden;
      }
      figcaption {
        padding-top: 8px;
      }
      text {
        font: 400 13px / 18px var(--body-face);
        font-stretch: var(--body-stretch);
        fill: var(--ink);
      }
      .strong,
      .named {
        font-weight: 600;
      }
      .named {
        fill: var(--act);
      }
      .green {
        font-weight: 600;
        fill: var(--ok);
      }
      .wire,
      .link,
      .earth,
      .part,
      .frame {
        fill: none;
        stroke: var(--ink);
        stroke-width: var(--line-part);
        stroke-linejoin: round;
      }
      .part {
        fill: var(--raise);
      }
      .frame {
        stroke-width: 1px;
      }
      .control {
        stroke: var(--act);
      }
      .link {
        stroke-width: 1px;
        stroke-dasharray: 4 3;
      }
      .earth {
        stroke: var(--ok);
        stroke-width: 2px;
        stroke-dasharray: 7 4;
      }
      .node {
        fill: var(--ink);
      }
    `,
  ]

  @property({ attribute: false }) job!: Job
  @property({ attribute: false }) units!: Units

  private readonly measured = new Measured(this)

  render() {
    const { k } = this.measured
    const { width, height, words, drawn } = circuitDrawing(this.job, this.units)
    return html`<div class="ruler"></div>
      <figure>
        <svg role="img" aria-label=${words} width="100%" style="max-width: ${width * k}px" viewBox="0 0 ${width} ${height}">${drawn}</svg>
        <figcaption class="note">In principle, for this kind of supply; no part of it is a recipe. ${words}</figcaption>
      </figure>`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'circuit-figure': CircuitFigure
  }
}
