// How fields stand together in a form.
import { css } from 'lit'

export const formStyle = css`
  .fields {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(100%, calc(184px * var(--k))), 1fr));
    gap: 20px 16px;
    align-items: start;
  }
  .fields.last {
    margin-top: 20px;
  }
  .about {
    margin: 2px 0 14px;
    max-width: 70ch;
  }
  .tick label {
    display: flex;
    align-items: center;
    gap: 10px;
    min-height: var(--field);
    margin-top: calc(24px * var(--k));
    font: var(--type-body);
    cursor: pointer;
  }
  .tick input {
    flex: none;
    width: 20px;
    height: 20px;
    min-height: 0;
    margin: 0;
    accent-color: var(--act);
  }
  .tick input:focus-visible {
    outline: var(--focus-ring);
    outline-offset: var(--focus-offset);
  }
`
