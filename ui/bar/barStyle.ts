// How the bar looks, wide and on a phone.
import { css } from 'lit'

export const barStyle = css`
  :host {
    background: var(--bench);
  }
  .bar {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 8px 24px;
    max-width: 1440px;
    margin: 0 auto;
    padding: 9px 40px;
  }
  .name {
    display: flex;
    align-items: center;
    gap: 12px;
    font: 700 calc(20px * var(--k)) / calc(26px * var(--k)) var(--heading-face);
  }
  .job {
    flex: 1;
    display: flex;
    align-items: center;
    gap: 8px;
    min-width: 0;
  }
  select {
    min-width: 0;
    max-width: 100%;
    min-height: var(--control);
    padding: 0 6px;
    border: 1px solid transparent;
    border-radius: var(--round-field);
    background: transparent;
    color: var(--ink);
    font: var(--type-body);
    font-weight: 600;
    text-overflow: ellipsis;
    cursor: pointer;
  }
  select:hover {
    border-color: var(--ink3);
  }
  option {
    background: var(--paper);
    color: var(--ink);
  }
  .set {
    display: flex;
    flex-wrap: wrap;
    gap: 8px 16px;
  }
  button,
  .button {
    background: var(--paper);
    white-space: nowrap;
  }
  .job button,
  .job .button {
    padding-inline: 10px;
    background: none;
  }
  .steps {
    display: flex;
  }
  button:disabled {
    border-color: transparent;
    color: var(--ink3);
    cursor: default;
  }
  .menu {
    display: none;
  }
  .file {
    position: relative;
  }
  .file:focus-within {
    outline: var(--focus-ring);
    outline-offset: var(--focus-offset);
  }
  .pair {
    display: flex;
  }
  .pair button {
    border-radius: 0;
  }
  .pair button:first-child {
    border-radius: var(--round-field) 0 0 var(--round-field);
  }
  .pair button:last-child {
    border-left: 0;
    border-radius: 0 var(--round-field) var(--round-field) 0;
  }
  button[aria-pressed='true'] {
    border-color: var(--ink);
    background: var(--ink);
    color: var(--paper);
    font-weight: 600;
  }
  button:focus-visible {
    z-index: 1;
  }
  @media (max-width: 1199.98px) {
    .job {
      flex-basis: 34%;
    }
    .bar {
      gap: 8px 16px;
    }
  }
  @media (max-width: 759.98px) {
    .bar {
      gap: 8px;
      padding: 8px 16px;
    }
    .name {
      flex: 1;
    }
    .menu {
      display: inline-flex;
    }
    .theme {
      order: 0;
    }
    .folds {
      display: none;
    }
    .open .folds {
      display: flex;
      order: 1;
    }
    zone-letters.open {
      display: block;
      padding: 0 16px 8px;
    }
    .job,
    .set {
      flex-basis: 100%;
    }
    .job {
      flex-wrap: wrap;
    }
    .job select {
      flex: 1 1 100%;
    }
  }
  @media (max-width: 359.98px) {
    .name {
      gap: 8px;
    }
    .menu,
    .theme {
      padding-inline: 9px;
    }
  }
  @media print {
    .job .button,
    .bar button,
    .set {
      display: none;
    }
  }
`
