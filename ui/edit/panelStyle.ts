// How a station's panel looks: groups flowing in columns, or laid out in three, folds across.
import { css } from 'lit'

export const panelStyle = css`
  :host {
    padding: 20px 24px 24px;
    border: 1.5px solid var(--ink);
    border-radius: var(--round-panel);
    background: var(--raise);
    overflow-wrap: anywhere;
  }
  .where {
    margin-bottom: 16px;
    padding-bottom: 12px;
    border-bottom: 1px solid var(--rule);
  }
  .columns {
    display: grid;
    grid-template-columns: minmax(0, 1.1fr) minmax(0, 1.1fr) minmax(0, 1fr);
    gap: 0 40px;
    align-items: start;
  }
  .columns + section {
    padding-top: 12px;
    border-top: 1px solid var(--rule);
  }
  .columns + section .fields {
    grid-template-columns: repeat(auto-fill, minmax(min(100%, calc(190px * var(--k))), 1fr));
    gap: 0 24px;
  }
  .columns .fields > choice-field {
    grid-column: 1 / -1;
  }
  .groups + section {
    margin-top: 8px;
  }
  section {
    margin-bottom: 12px;
    break-inside: avoid;
  }
  section:last-child {
    margin-bottom: 0;
  }
  summary {
    width: fit-content;
    min-height: 32px;
    font: var(--type-station);
    cursor: pointer;
  }
  .columns summary {
    font: var(--type-chart-title);
  }
  @media (max-width: 1199.98px) {
    .columns {
      grid-template-columns: repeat(2, minmax(0, 1fr));
    }
  }
  @media (max-width: 759.98px) {
    :host {
      padding: 16px 14px 20px;
    }
    .columns {
      display: block;
    }
    summary {
      min-height: 44px;
      padding-top: 10px;
    }
  }
`
