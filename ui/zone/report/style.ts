// Looks of zone L on the screen: the title block, the table of inputs, what can be saved.
import { css } from 'lit'

export const reportStyle = css`
  .do,
  .ask {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 8px 12px;
    margin-bottom: 14px;
  }
  progress {
    width: 160px;
    accent-color: var(--act);
  }
  .title {
    display: grid;
    grid-template-columns: repeat(4, minmax(0, 1fr));
    border: solid var(--ink);
    border-width: 1.5px 1px 1px 1.5px;
  }
  .title > div {
    padding: 8px 12px;
    border: solid var(--ink);
    border-width: 0 1px 1px 0;
  }
  .title dt {
    font: var(--type-note);
    color: var(--ink2);
  }
  .title dd {
    font-weight: 600;
    overflow-wrap: anywhere;
  }
  summary {
    display: flex;
    align-items: center;
    min-height: 44px;
    margin-top: 12px;
    color: var(--act);
    font: var(--type-button);
    cursor: pointer;
  }
  summary::before {
    content: '+';
    width: 1.2em;
  }
  [open] > summary::before {
    content: '–';
  }
  .table {
    overflow-x: auto;
  }
  .screen table {
    width: 100%;
    border-collapse: collapse;
    font: var(--type-label);
  }
  .screen th,
  .screen td {
    padding: 4px 12px 4px 0;
    border-bottom: 1px solid var(--rule);
    font-weight: 400;
    text-align: left;
    vertical-align: baseline;
  }
  .screen thead th {
    color: var(--ink2);
  }
  .screen th[colspan] {
    padding-top: 14px;
    border-bottom-color: var(--ink);
    font: var(--type-chart-title);
  }
  .files,
  .shelf {
    max-width: calc(720px * var(--k));
  }
  .files li,
  .shelf li {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 6px 10px;
    padding: 5px 0;
    border-bottom: 1px solid var(--rule);
  }
  .files li > span,
  .shelf li > span:first-child {
    flex: 1 1 auto;
    overflow-wrap: anywhere;
  }
  .sure {
    display: inline-flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 6px 10px;
    color: var(--bad);
  }
  button.bad {
    border-color: var(--bad);
  }
  @media (max-width: 1199.98px) {
    .title {
      grid-template-columns: repeat(3, minmax(0, 1fr));
    }
  }
  @media (max-width: 759.98px) {
    .title {
      grid-template-columns: repeat(2, minmax(0, 1fr));
    }
  }
`
