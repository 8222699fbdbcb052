// Lines and texts of the drawing, by the sheet's line table.
import { css } from 'lit'

export const drawingStyle = css`
  svg {
    display: block;
    overflow: visible;
  }
  .unit * {
    vector-effect: non-scaling-stroke;
  }
  .part {
    fill: var(--raise);
    stroke: var(--ink);
    stroke-width: var(--line-part);
    stroke-linejoin: round;
  }
  .light {
    stroke-width: 1.25px;
  }
  .bare {
    fill: none;
  }
  .inner {
    fill: none;
    stroke: var(--ink);
    stroke-width: var(--line-inner);
  }
  .wheel {
    fill: var(--paper);
  }
  .winding {
    fill: var(--winding);
  }
  .frame {
    fill: var(--frame);
  }
  .switch {
    fill: var(--switch);
  }
  .brush {
    fill: var(--ink2);
  }
  .window {
    fill: var(--raise);
    stroke: var(--ink);
    stroke-width: var(--line-inner);
  }
  .absent {
    fill: none;
    stroke: var(--ink);
    stroke-width: var(--line-absent);
    stroke-dasharray: var(--dash-absent);
  }
  .centre {
    fill: none;
    stroke: var(--ink2);
    stroke-width: var(--line-centre);
    stroke-dasharray: var(--dash-centre);
  }
  .dimension {
    fill: none;
    stroke: var(--ink2);
    stroke-width: var(--line-dimension);
  }
  .arrow,
  .dot {
    fill: var(--ink);
  }
  .hatch {
    fill: none;
    stroke: var(--hatch);
    stroke-width: var(--line-inner);
  }
  .dotted {
    fill: none;
    stroke: var(--ink3);
    stroke-width: var(--line-inner);
    stroke-dasharray: 2 4;
  }
  .ground,
  .post {
    stroke: var(--ink);
    stroke-width: var(--line-part);
  }
  .post,
  .wire {
    stroke-width: 2.75px;
  }
  .wire {
    fill: none;
    stroke: var(--ink);
    stroke-linecap: round;
  }
  .belt {
    fill: none;
    stroke: var(--ink);
    stroke-linejoin: round;
  }
  .gap {
    fill: var(--paper);
  }
  .air {
    fill: none;
    stroke: var(--series-b);
    stroke-width: 2px;
    stroke-linecap: round;
    stroke-linejoin: round;
  }
  text {
    font: var(--type-note);
    font-stretch: var(--body-stretch);
    fill: var(--ink);
  }
  .quiet {
    fill: var(--ink2);
  }
  .middle {
    text-anchor: middle;
  }
  .end {
    text-anchor: end;
  }
  .tag-frame {
    fill: var(--paper);
    stroke: var(--ink);
    stroke-width: var(--line-inner);
  }
  .tag-text {
    font: var(--type-note-strong);
    font-stretch: var(--body-stretch);
  }
  .title {
    font: var(--type-chart-title);
  }
  .reading,
  .number {
    font: var(--type-chart-title);
  }
  .number {
    font: var(--type-value);
    paint-order: stroke;
    stroke: var(--paper);
    stroke-width: 4px;
    stroke-linejoin: round;
  }
`
