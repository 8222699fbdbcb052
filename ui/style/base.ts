// What every zone and field shares: type, buttons, links, focus, notes.
import { css } from 'lit'

export const base = css`
  :host {
    display: block;
    font: var(--type-body);
    font-stretch: var(--body-stretch);
    font-variant-numeric: tabular-nums lining-nums;
    color: var(--ink);
  }
  :host([hidden]),
  [hidden] {
    display: none !important;
  }
  *,
  *::before,
  *::after {
    box-sizing: border-box;
  }
  h2,
  h3,
  h4,
  p,
  dl,
  dd,
  ol,
  ul,
  fieldset,
  figure {
    margin: 0;
    padding: 0;
    border: 0;
  }
  ol,
  ul {
    list-style: none;
  }
  h2 {
    font: var(--type-zone);
  }
  h3 {
    font: var(--type-station);
  }
  .note {
    font: var(--type-note);
    font-stretch: var(--body-stretch);
    color: var(--ink2);
  }
  .bad {
    color: var(--bad);
  }
  :focus-visible {
    outline: var(--focus-ring);
    outline-offset: var(--focus-offset);
  }
  .unseen {
    position: absolute;
    width: 1px;
    height: 1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }
`

/** A list to choose from that stands in a line of text. */
export const selects = css`
  select {
    min-height: var(--control);
    max-width: 100%;
    padding: 0 8px;
    border: 1px solid var(--ink3);
    border-radius: var(--round-field);
    background: var(--raise);
    color: var(--ink);
    font: var(--type-label);
  }
`

export const buttons = css`
  button,
  .button {
    display: inline-flex;
    align-items: center;
    justify-content: center;
    min-height: var(--control);
    padding: 4px 14px;
    border: 1px solid var(--rule);
    border-radius: var(--round-field);
    background: transparent;
    color: var(--ink);
    font: var(--type-button);
    font-weight: 500;
    text-align: center;
    text-decoration: none;
    cursor: pointer;
    transition:
      background-color var(--quick),
      border-color var(--quick),
      color var(--quick);
  }
  button:hover {
    border-color: var(--ink2);
    background: var(--raise);
  }
  button:disabled {
    cursor: default;
    color: var(--ink3);
    border-style: dashed;
    background: none;
  }
  button.main {
    width: 100%;
    min-height: var(--control-alone);
    border-color: var(--act);
    background: var(--act);
    color: var(--act-ink);
    font-weight: 600;
  }
  button.main:hover {
    background: color-mix(in srgb, var(--act) 86%, var(--ink));
  }
  button.act {
    border-color: var(--act);
    color: var(--act);
    font-weight: 600;
  }
  button.act:hover {
    background: var(--act-soft);
  }
  button.link {
    min-height: 24px;
    padding: 0 2px;
    border: 0;
    background: none;
    color: var(--act);
    font: inherit;
    text-decoration: underline;
    text-underline-offset: 3px;
  }
  @media (max-width: 759.98px) {
    button.link {
      min-height: 44px;
    }
  }
`
