// How the studies of the lower sheet look: the ratio study and the old motor.
import { css } from 'lit'

export const studyStyle = css`
  p {
    margin: 0;
  }
  .said {
    max-width: 80ch;
    margin: 10px 0 0;
    font: var(--type-body);
    font-stretch: var(--body-stretch);
  }
  .ask {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 8px 16px;
    margin-bottom: 8px;
    font: var(--type-body);
  }
  .ask progress {
    flex: 0 1 260px;
  }
  .chart {
    cursor: crosshair;
  }
  .chart.still {
    cursor: default;
    user-select: auto;
    touch-action: auto;
  }
  .row {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 6px 16px;
    margin-top: 6px;
    font: var(--type-label);
  }
  button.act,
  button.plain {
    min-height: var(--control);
    margin: 0;
    padding: 4px 14px;
    border: 1px solid var(--act);
    font: var(--type-button);
    text-decoration: none;
  }
  button.act:hover {
    background: var(--act-soft);
  }
  .pairs {
    margin-top: 18px;
  }
  .pairs ul {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, calc(270px * var(--k))), 1fr));
    gap: 4px 32px;
    margin: 6px 0 0;
    padding: 0;
    list-style: none;
  }
  .pairs li {
    display: grid;
    grid-template-columns: 1fr auto;
    gap: 0 12px;
    align-items: center;
    padding: 8px 0;
    border-top: 1px solid var(--rule);
  }
  .pairs strong {
    font: var(--type-button);
  }
  .title {
    font: var(--type-chart-title);
  }
  .title .unit {
    font: var(--type-note);
    fill: var(--ink2);
  }
  .works {
    fill: var(--act-soft);
  }
  .edges {
    fill: none;
    stroke: var(--act);
    stroke-width: 1.5px;
  }
  .bar {
    fill: none;
    stroke: var(--act);
    stroke-width: 5px;
  }
  .works-name {
    fill: var(--act);
    font: var(--type-chart-title);
  }
  .works-range {
    fill: var(--act);
    font: var(--type-note-strong);
  }
  .now {
    fill: var(--paper);
    stroke: var(--series);
    stroke-width: 2.25px;
  }
  .crossing {
    fill: var(--act);
  }
  .point {
    fill: var(--paper);
    stroke: var(--ink);
    stroke-width: 2.25px;
  }
  .line.seconds {
    stroke: var(--ink2);
    stroke-width: 1.5px;
    stroke-dasharray: var(--dash-other-limit);
  }
  .under {
    fill: var(--series);
    fill-opacity: 0.13;
    stroke: none;
  }
  @media print {
    .ask,
    .row,
    .cross {
      display: none;
    }
  }
`
