// How the variants look: a table on wide sheets, two-column cards on a phone.
import { css } from 'lit'

export const variantStyle = css`
  .head {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    justify-content: space-between;
    gap: 8px 16px;
    margin-bottom: 14px;
  }
  .head p {
    color: var(--ink2);
  }
  .head div {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    gap: 2px 16px;
  }
  table {
    width: 100%;
    border-collapse: collapse;
    font: var(--type-label);
    font-variant-numeric: inherit;
  }
  th,
  td {
    padding: 10px 8px;
    text-align: right;
    vertical-align: top;
    font-weight: 500;
  }
  thead th {
    padding-bottom: 8px;
    border-bottom: 1.5px solid var(--ink);
    font: var(--type-note);
    color: var(--ink2);
    vertical-align: bottom;
  }
  thead th span {
    display: block;
  }
  th:first-child {
    padding-left: 10px;
    text-align: left;
  }
  tbody tr {
    border-bottom: 1px solid var(--rule);
    cursor: pointer;
  }
  tbody tr:hover {
    background: color-mix(in srgb, var(--act-soft) 45%, transparent);
  }
  tbody tr.chosen {
    background: var(--act-soft);
  }
  td.bad {
    font-weight: 600;
  }
  .pending td {
    color: var(--ink3);
  }
  th button.pick {
    justify-content: flex-start;
    gap: 10px;
    min-height: 28px;
    padding: 0;
    border: 0;
    background: none;
    color: var(--ink);
    font: var(--type-label);
    font-weight: 600;
    text-align: left;
  }
  .sample {
    flex: none;
  }
  th .note {
    display: block;
    margin-left: 42px;
    font-weight: 400;
  }
  .name {
    width: min(100%, 220px);
    min-height: 32px;
    padding: 2px 8px;
    border: 1px solid var(--ink3);
    border-radius: var(--round-field);
    background: var(--paper);
    color: var(--ink);
    font: var(--type-label);
  }
  .acts {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    margin: 6px 0 0 42px;
  }
  .acts button {
    min-height: 28px;
    padding: 0 10px;
    font: var(--type-note);
    font-weight: 500;
  }
  .try {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 10px 12px;
    margin-top: 20px;
  }
  .try h3 {
    margin-right: 4px;
    font: var(--type-chart-title);
  }
  @media (max-width: 1023.98px) {
    th,
    td {
      padding-inline: 5px;
    }
  }
  @media (max-width: 759.98px) {
    table,
    tbody {
      display: block;
    }
    thead {
      position: absolute;
      width: 1px;
      height: 1px;
      overflow: hidden;
      clip-path: inset(50%);
    }
    tbody tr {
      display: grid;
      grid-template-columns: repeat(auto-fit, minmax(min(100%, calc(140px * var(--k))), 1fr));
      gap: 2px 20px;
      margin-bottom: 12px;
      padding: 10px 12px 12px;
      border: 1px solid var(--rule);
      border-radius: var(--round-panel);
    }
    tbody tr.chosen {
      border-color: var(--act);
    }
    tbody th {
      grid-column: 1 / -1;
      padding: 0 0 6px;
    }
    tbody th:first-child {
      padding-left: 0;
    }
    td {
      display: flex;
      justify-content: space-between;
      gap: 8px;
      padding: 3px 0;
    }
    td::before {
      content: attr(data-label);
      color: var(--ink2);
      font: var(--type-note);
    }
    th button.pick,
    .acts button {
      min-height: 44px;
    }
    .name {
      min-height: 44px;
    }
  }
  @media print {
    button:not(.pick),
    .try {
      display: none;
    }
  }
`
