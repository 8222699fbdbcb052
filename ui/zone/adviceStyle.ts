// How findings and symptoms look: a row each, kind, what and why, the number, the buttons.
import { css } from 'lit'

export const adviceStyle = css`
  .findings > li {
    display: grid;
    grid-template-columns: calc(88px * var(--k)) minmax(0, 72ch) minmax(calc(150px * var(--k)), 1fr) calc(
        190px * var(--k)
      );
    gap: 0 32px;
    padding: 16px 0;
    border-top: 1px solid var(--rule);
  }
  .findings > li:first-child {
    border-top: 0;
    padding-top: 8px;
  }
  .kind,
  .what h3 {
    font: var(--type-button);
  }
  [data-severity='danger'] .kind,
  [data-severity='unknown'] .kind,
  [data-severity='damage'] .kind {
    color: var(--bad);
  }
  .what p {
    margin-top: 2px;
    color: var(--ink2);
  }
  .figure strong {
    display: block;
    font: var(--type-value);
  }
  .figure {
    font: var(--type-label);
    color: var(--ink2);
  }
  .figure strong {
    color: var(--ink);
  }
  .tries {
    display: grid;
    gap: 8px;
    align-content: start;
  }
  a.button {
    border-color: var(--act);
    color: var(--act);
    font-weight: 600;
  }
  a.button:hover {
    background: var(--act-soft);
  }
  .symptoms {
    display: grid;
    grid-template-columns: auto minmax(0, 1fr);
    gap: 10px 16px;
    align-items: center;
    padding-top: 16px;
    border-top: 1px solid var(--rule);
  }
  .symptoms label {
    font: var(--type-button);
  }
  .symptoms select {
    justify-self: start;
    max-width: 100%;
    min-height: var(--control-alone);
    padding: 0 10px;
    border: 1px solid var(--ink3);
    border-radius: var(--round-field);
    background: var(--paper);
    color: var(--ink);
    font: var(--type-label);
  }
  .symptoms > div {
    grid-column: 1 / -1;
    max-width: 80ch;
  }
  .verdict {
    font-weight: 600;
  }
  .symptoms ol {
    margin-top: 8px;
    padding-left: 20px;
    list-style: decimal;
  }
  .symptoms li {
    padding: 4px 0;
  }
  @media (max-width: 1199.98px) {
    .findings > li {
      grid-template-columns: minmax(0, 1fr) calc(190px * var(--k));
      gap: 4px 24px;
    }
    .kind,
    .what,
    .figure {
      grid-column: 1;
    }
    .tries {
      grid-column: 2;
      grid-row: 1 / span 3;
    }
    .figure strong {
      display: inline;
    }
  }
  @media (max-width: 759.98px) {
    .findings > li {
      grid-template-columns: minmax(0, 1fr);
    }
    .tries {
      display: flex;
      flex-wrap: wrap;
      grid-column: 1;
      grid-row: auto;
      margin-top: 6px;
    }
    button.main {
      width: auto;
    }
    .symptoms {
      grid-template-columns: minmax(0, 1fr);
    }
  }
  @media print {
    .tries,
    .symptoms {
      display: none;
    }
  }
`
