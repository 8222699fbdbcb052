// How the numbered steps of the bench look: number, what and how, fields, and what the reading is worth.
import { css } from 'lit'

export const stepStyle = css`
  .step {
    display: grid;
    grid-template-columns: 28px minmax(0, 1.15fr) minmax(0, 1.35fr) minmax(0, 1fr);
    gap: 4px 32px;
    align-items: start;
    padding: 16px 0 4px;
    border-top: 1px solid var(--rule);
  }
  .step.wide {
    grid-template-columns: 28px minmax(0, 1fr);
  }
  .nth {
    font: var(--type-station);
  }
  .how h3 {
    margin-bottom: 2px;
    font: var(--type-chart-title);
  }
  .how p {
    max-width: 48ch;
    margin-bottom: 12px;
  }
  .entry .fields {
    grid-template-columns: repeat(auto-fill, minmax(min(100%, calc(130px * var(--k))), 1fr));
  }
  .entry .fields > choice-field {
    grid-column: 1 / -1;
  }
  .gain {
    padding-bottom: 12px;
  }
  @media (max-width: 1199.98px) {
    .step {
      grid-template-columns: 24px minmax(0, 1fr) minmax(0, 1fr);
      grid-template-rows: auto 1fr;
    }
    .gain {
      grid-column: 2;
    }
    .entry {
      grid-column: 3;
      grid-row: 1 / span 2;
    }
  }
  @media (max-width: 759.98px) {
    .step,
    .step.wide {
      grid-template-columns: 20px minmax(0, 1fr);
      gap: 4px 8px;
    }
    .entry,
    .gain {
      grid-column: 1 / -1;
      grid-row: auto;
    }
  }
  @media print {
    .step {
      break-inside: avoid;
    }
  }
`
