// How the dimensions stand in the drawing: tags to press, and the field that opens under one.
import { css } from 'lit'

export const tagStyle = css`
  :host {
    position: relative;
  }
  .ruler {
    position: absolute;
    width: calc(100px * var(--k));
    height: 0;
    visibility: hidden;
  }
  .head {
    min-height: calc(18px * var(--k));
    margin-bottom: 4px;
  }
  .head strong {
    font: var(--type-note-strong);
    color: var(--ink);
  }
  .drawing {
    position: relative;
  }
  .tag {
    position: absolute;
    min-height: 0;
    padding: 0;
    border: 0;
    background: none;
  }
  .tag:hover {
    background: none;
  }
  .tag span {
    display: flex;
    align-items: center;
    justify-content: center;
    width: 100%;
    height: min(100%, calc(28px * var(--k)));
    border: 1.25px solid var(--act);
    border-radius: var(--round-field);
    background: var(--paper);
    color: var(--act);
    font: var(--type-note-strong);
    font-stretch: var(--body-stretch);
    white-space: nowrap;
  }
  .tag:hover span {
    background: var(--act-soft);
  }
  .tag[aria-expanded='true'] span {
    background: var(--act);
    color: var(--act-ink);
  }
  .tag:focus-visible {
    outline: 0;
  }
  .tag:focus-visible span {
    outline: var(--focus-ring);
    outline-offset: var(--focus-offset);
  }
  .tag.wrong span {
    border-color: var(--bad);
    background: var(--bad-soft);
    color: var(--bad);
  }
  .panel {
    position: absolute;
    z-index: 1;
    padding: 10px 14px 12px;
    border: 1.5px solid var(--ink);
    border-radius: var(--round-panel);
    background: var(--raise);
  }
  .panel quantity-field {
    margin-bottom: 0;
  }
  /* On the page a button stands where the drawing has a tag. */
  @media screen {
    .tag-frame,
    .tag-text {
      display: none;
    }
  }
  /* On paper the drawing fits the sheet's width as a whole. */
  @media print {
    .drawing {
      height: auto !important;
    }
    .drawing ul {
      display: none;
    }
    .drawing svg {
      max-width: 100%;
      height: auto;
    }
  }
`
