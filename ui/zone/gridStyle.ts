// How a grid looks: three fields in a row, and shaded cells that are buttons.
import { css } from 'lit'

export const gridStyle = css`
  :host {
    margin-top: 28px;
  }
  h3 {
    font: var(--type-chart-title);
  }
  p.note {
    margin: 4px 0;
  }
  .fields {
    display: flex;
    flex-wrap: wrap;
    align-items: end;
    gap: 10px 16px;
    margin: 10px 0;
  }
  .fields label {
    display: grid;
    gap: 2px;
    font: var(--type-note);
    color: var(--ink2);
  }
  select,
  input {
    min-height: var(--control);
    max-width: 100%;
    padding: 2px 8px;
    border: 1px solid var(--ink3);
    border-radius: var(--round-field);
    background: var(--raise);
    color: var(--ink);
    font: var(--type-label);
  }
  input {
    width: calc(150px * var(--k));
  }
  select {
    width: calc(220px * var(--k));
  }
  .pair {
    display: flex;
    flex-wrap: wrap;
    align-items: end;
    gap: 6px;
  }
  .cells {
    overflow-x: auto;
  }
  table {
    border-collapse: collapse;
    font: var(--type-note);
    font-variant-numeric: tabular-nums lining-nums;
  }
  th {
    padding: 4px 8px 4px 0;
    font-weight: 400;
    color: var(--ink2);
    text-align: right;
  }
  thead th {
    padding: 4px 6px;
    vertical-align: bottom;
  }
  tbody th {
    max-width: 160px;
    text-align: left;
  }
  td {
    padding: 0;
    border: 1px solid var(--grid);
  }
  td.now {
    outline: 2px solid var(--ink);
    outline-offset: -2px;
  }
  td.corner {
    border: 0;
  }
  td button,
  td span {
    display: flex;
    align-items: center;
    justify-content: center;
    width: 100%;
    min-width: calc(72px * var(--k));
    min-height: calc(34px * var(--k));
    padding: 2px 6px;
  }
  td button {
    position: relative;
    border: 0;
    border-radius: 0;
    background: color-mix(in srgb, var(--act) var(--tint, 0%), var(--paper));
    font: var(--type-note-strong);
    font-variant-numeric: inherit;
    white-space: nowrap;
  }
  td button.none {
    font-weight: 400;
    color: var(--ink2);
  }
  td button:hover {
    background: var(--act-soft);
  }
  td button:focus-visible {
    outline: var(--focus-ring);
    outline-offset: -3px;
  }
  td span {
    color: var(--ink3);
  }
  @media (max-width: 759.98px) {
    select,
    input {
      width: 100%;
      min-height: 44px;
    }
    .pair,
    .fields label {
      width: 100%;
    }
    table {
      width: 100%;
    }
    td button,
    td span {
      min-width: 0;
      min-height: 44px;
      padding: 2px;
    }
    th,
    thead th {
      padding: 4px 2px;
    }
    tbody th {
      max-width: 76px;
    }
  }
  @media print {
    .fields {
      display: none;
    }
  }
`
