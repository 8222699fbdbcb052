// Looks of the charts, all from the tokens of the sheet.
import { css } from 'lit'

const marks = css`
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
    fill-opacity: 0.8;
    stroke: none;
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

const controls = css`
  :host {
    display: block;
    position: relative;
    color: var(--ink);
    font: var(--type-note);
    font-stretch: var(--body-stretch);
    font-variant-numeric: tabular-nums lining-nums;
  }
  .ruler {
    position: absolute;
    visibility: hidden;
    width: calc(100px * var(--k));
    height: 0;
  }
  .head {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0 12px;
    margin-top: 6px;
  }
  h3 {
    font: var(--type-chart-title);
    margin: 0;
  }
  .note {
    color: var(--ink2);
  }
  .key {
    display: inline-flex;
    align-items: center;
    gap: 6px;
  }
  .key i {
    width: 130px;
    height: 11px;
    border: 1px solid var(--ink);
  }
  .now {
    display: inline-flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0 12px;
    width: 100%;
  }
  .now svg {
    display: inline-block;
    vertical-align: middle;
    margin-right: 5px;
  }
  .now b {
    font-weight: 600;
    color: var(--series);
  }
  button {
    font: var(--type-note);
    font-stretch: var(--body-stretch);
    color: var(--act);
    background: none;
    border: 0;
    border-radius: var(--round-field);
    margin-left: auto;
    padding: 2px 6px;
    min-height: 24px;
    text-decoration: underline;
    text-underline-offset: 3px;
    cursor: pointer;
  }
  .chart {
    position: relative;
    touch-action: pan-y;
    user-select: none;
    cursor: ew-resize;
  }
  [role='slider']:focus-visible,
  .table:focus-visible,
  button:focus-visible {
    outline: var(--focus-ring);
    outline-offset: var(--focus-offset);
  }
  .handle {
    position: absolute;
    display: flex;
    align-items: center;
    justify-content: center;
    gap: 4px;
    transform: translateX(-50%);
    padding: 0 8px;
    height: calc(22px * var(--k));
    border-radius: var(--round-pill);
    background: var(--act);
    color: var(--act-ink);
    font: var(--type-note-strong);
    font-stretch: var(--body-stretch);
    touch-action: none;
    cursor: ew-resize;
  }
  .handle svg {
    fill: currentColor;
  }
  .edge {
    position: absolute;
    width: 8px;
    height: 26px;
    border-radius: 4px;
    background: var(--act);
    transform: translate(-50%, -50%);
    touch-action: none;
    cursor: ew-resize;
  }
  .edge::before {
    content: '';
    position: absolute;
    inset: -9px -12px;
  }
  .table {
    max-height: 320px;
    overflow: auto;
    border: 1px solid var(--rule);
    margin: 4px 0 8px;
  }
  table {
    border-collapse: collapse;
    width: 100%;
  }
  th,
  td {
    text-align: right;
    font-weight: 400;
    padding: 3px 12px;
    border-bottom: 1px solid var(--grid);
  }
  thead th {
    position: sticky;
    top: 0;
    background: var(--paper);
    color: var(--ink2);
    border-bottom-color: var(--ink);
  }
  th:first-child {
    text-align: left;
  }
  @media (max-width: 759.98px) {
    button {
      min-height: 44px;
    }
  }
  @media print {
    button,
    .handle,
    .edge {
      display: none;
    }
  }
`

/** Styles of every chart element. */
export const plotStyles = [marks, controls]
