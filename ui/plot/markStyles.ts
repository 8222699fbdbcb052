// Looks of what is drawn in charts: lines, bands, marks and their texts, from the tokens of the sheet.
import { css } from 'lit'

/** Styles inside the charts' svg. */
export const markStyles = css`
  svg {
    display: block;
    overflow: visible;
  }
  text {
    font: var(--type-note);
    font-stretch: var(--body-stretch);
    fill: var(--ink);
  }
  .tick {
    fill: var(--ink2);
  }
  .label {
    paint-order: stroke;
    stroke: var(--paper);
    stroke-width: 4px;
    stroke-linejoin: round;
  }
  .label.quiet {
    fill: var(--ink2);
  }
  .label.strong {
    font: var(--type-note-strong);
    font-stretch: var(--body-stretch);
  }
  .label.bad {
    fill: var(--bad);
  }
  .grid line {
    stroke: var(--grid);
    stroke-width: var(--line-inner);
  }
  .base,
  .frame {
    fill: none;
    stroke: var(--ink);
    stroke-width: var(--line-inner);
  }
  .A {
    --series: var(--series-a);
  }
  .B {
    --series: var(--series-b);
  }
  .C {
    --series: var(--series-c);
  }
  .D {
    --series: var(--series-d);
  }
  .label.A,
  .label.B,
  .label.C,
  .label.D {
    fill: var(--series);
  }
  .line {
    fill: none;
    stroke: var(--series);
    stroke-width: var(--line-series);
    stroke-linejoin: round;
  }
  .line.C {
    stroke-dasharray: var(--dash-series-c);
  }
  .line.D {
    stroke-dasharray: var(--dash-series-d);
    stroke-width: var(--line-dots);
  }
  .line.heavy {
    stroke-width: var(--line-active);
  }
  .line.thin {
    stroke-width: var(--line-inner);
    stroke-dasharray: none;
  }
  .line.dots {
    stroke-width: 1.5px;
    stroke-dasharray: 1.5 3;
  }
  .line.asked {
    stroke-width: var(--line-asked);
    stroke-dasharray: var(--dash-asked);
  }
  .band {
    fill: var(--series);
    fill-opacity: 0.24;
    stroke: none;
  }
  .limit {
    stroke: var(--ink2);
    stroke-width: var(--line-other-limit);
    stroke-dasharray: var(--dash-other-limit);
  }
  .limit.warning {
    stroke: var(--bad);
  }
  .limit.hard {
    stroke: var(--bad);
    stroke-width: var(--line-hard-limit);
    stroke-dasharray: none;
  }
  .hatch-line {
    stroke: var(--hatch);
    stroke-width: 1px;
    stroke-opacity: 0.75;
  }
  .hatched {
    fill: url(#hatch);
  }
  .hatched.framed {
    stroke: var(--ink);
    stroke-width: 1px;
  }
  .stop {
    fill: var(--paper);
  }
  .trip .ring {
    fill: var(--paper);
    stroke: var(--series);
    stroke-width: 1.25px;
  }
  .trip path {
    fill: none;
    stroke: var(--series);
    stroke-width: 1.25px;
    stroke-linecap: round;
  }
  .trip .dot {
    fill: var(--series);
  }
  .trip.active {
    --series: var(--ink);
  }
  .trip.active.open {
    --series: var(--bad);
  }
  .trip.active .ring,
  .trip.active path {
    stroke-width: 2px;
  }
  .duty.cut {
    fill: var(--hatch);
    fill-opacity: 0.45;
    stroke: var(--ink2);
    stroke-width: 1px;
  }
  .duty.surge {
    fill: var(--hatch);
    fill-opacity: 0.55;
    stroke: none;
  }
  .logged circle,
  .logged rect {
    fill: var(--paper);
    stroke: var(--series-d);
    stroke-width: 1.5px;
  }
  .label.logged-name {
    fill: var(--series-d);
  }
  .slips {
    fill: var(--bad);
  }
  .scrubber {
    stroke: var(--act);
    stroke-width: 2px;
  }
  .window {
    fill: none;
    stroke: var(--act);
    stroke-width: 2px;
  }
`
