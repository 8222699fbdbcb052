// Looks of what stands around the charts: headings, handles, tables, buttons, from the tokens of the sheet.
import { css } from 'lit'

/** Styles of the page around the charts. */
export const frameStyles = css`
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
  .note,
  small {
    color: var(--ink2);
  }
  small {
    font: var(--type-note);
    font-stretch: var(--body-stretch);
  }
  .key {
    margin-left: 12px;
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
  .cycle {
    position: absolute;
    border: 2px solid var(--act);
    border-radius: 2px;
    pointer-events: none;
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
    .head .note {
      order: 1;
      width: 100%;
    }
    .key.note {
      margin-left: 0;
    }
    button {
      min-height: 44px;
      margin-block: -10px;
    }
  }
  @media print {
    /* All of a table or none of it: paper does not scroll. */
    .table {
      max-height: none;
      overflow: visible;
    }
    thead th {
      position: static;
    }
    tr {
      break-inside: avoid;
    }
    button,
    .handle,
    .edge {
      display: none;
    }
  }
`
