// How the map looks: two panels side by side, bands on the heat scale, pills for labels on them.
import { css } from 'lit'

export const mapStyle = css`
  .panels {
    display: grid;
    gap: 24px 40px;
  }
  .panels.two {
    grid-template-columns: 1fr 1fr;
  }
  .panels > div {
    min-width: 0;
  }
  .under {
    min-height: calc(36px * var(--k));
    color: var(--ink2);
    font: var(--type-note);
    font-stretch: var(--body-stretch);
  }
  .handle {
    white-space: nowrap;
  }
  .contour {
    stroke: var(--ink);
    stroke-width: 1px;
    stroke-linejoin: round;
  }
  .never {
    fill: none;
    stroke: var(--ink);
    stroke-width: 3px;
    stroke-linejoin: round;
  }
  .over {
    fill: var(--raise);
  }
  .surging {
    stroke: var(--ink);
    stroke-width: 1.5px;
    stroke-dasharray: 2 3;
  }
  .pill {
    fill: var(--paper);
    stroke: var(--ink);
    stroke-width: 1px;
  }
  .pill.of-mark {
    stroke-width: 1.75px;
  }
  .label.pill {
    stroke: none;
    fill: var(--ink);
  }
  .label.region {
    font: var(--type-chart-title);
  }
`
