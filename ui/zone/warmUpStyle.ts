// How the warm-up looks: the place to drop a log, what came of it, the numbers beside the chart.
import { css } from 'lit'

export const warmUpStyle = css`
  :host {
    display: block;
    margin-bottom: 12px;
  }
  .ask {
    display: grid;
    grid-template-columns: minmax(0, 1.15fr) minmax(0, 2.35fr);
    gap: 12px 32px;
    align-items: start;
  }
  h3 {
    margin-bottom: 2px;
    font: var(--type-chart-title);
  }
  h4 {
    margin: 12px 0 2px;
    font: var(--type-note-strong);
  }
  .drop {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 8px 14px;
    min-height: 76px;
    padding: 12px 20px;
    border: 1.5px dashed var(--ink3);
    border-radius: var(--round-panel);
  }
  .button.file {
    border-color: var(--act);
    color: var(--act);
    font-weight: 600;
  }
  .button.file:hover {
    background: var(--act-soft);
  }
  .button.file:has(:focus-visible) {
    outline: var(--focus-ring);
    outline-offset: var(--focus-offset);
  }
  .refused {
    margin-top: 14px;
    padding: 10px 16px;
    border: 1px solid var(--bad);
    border-radius: var(--round-panel);
    background: var(--bad-soft);
  }
  .held {
    display: grid;
    width: min(100%, 220px);
    margin-top: 14px;
  }
  .fit {
    display: grid;
    grid-template-columns: minmax(0, 5fr) minmax(0, 7fr);
    gap: 16px 40px;
    margin-top: 18px;
  }
  table {
    width: 100%;
    margin: 12px 0 14px;
    border-collapse: collapse;
    font: var(--type-label);
    font-variant-numeric: inherit;
  }
  th,
  td {
    padding: 5px 0 6px 12px;
    border-bottom: 1px solid var(--rule);
    text-align: right;
    font-weight: 500;
    vertical-align: top;
  }
  th:first-child {
    padding-left: 0;
    text-align: left;
  }
  thead th {
    border-bottom: 1.5px solid var(--ink);
    color: var(--ink2);
    font: var(--type-note);
  }
  th .note {
    display: block;
    font-weight: 400;
  }
  .said > .note {
    margin-top: 6px;
  }
  .beside {
    min-width: 0;
  }
  .list li {
    padding: 2px 0 2px 14px;
    text-indent: -14px;
  }
  .list li::before {
    content: '– ';
  }
  @media (max-width: 1199.98px) {
    .fit,
    .ask {
      grid-template-columns: minmax(0, 1fr);
    }
  }
  @media print {
    .drop,
    button {
      display: none;
    }
  }
`
