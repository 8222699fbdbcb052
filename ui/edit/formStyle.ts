// How fields stand together in a form.
import { css } from 'lit'

export const formStyle = css`
  .fields {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(100%, calc(150px * var(--k))), 1fr));
    gap: 0 16px;
    align-items: start;
  }
  /* Choices are sentences: they get the room of two numbers. */
  .fields > choice-field,
  .fields > .cut {
    grid-column: span 2;
  }
  .groups .fields > choice-field {
    grid-column: span 3;
  }
  @media (max-width: 759.98px) {
    .groups .fields > choice-field,
    .fields > choice-field,
    .fields > .cut {
      grid-column: 1 / -1;
    }
  }
  .cut,
  .tick {
    display: grid;
    grid-row: span 3;
    grid-template-rows: subgrid;
    margin-bottom: 20px;
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
    margin: 0;
    grid-row: 2;
    font: var(--type-body);
    cursor: pointer;
  }
  .tick input {
    flex: none;
    width: 20px;
    height: 20px;
    min-height: 0;
    margin: 0;
    padding: 0;
    border: 1.25px solid var(--ink3);
    border-radius: 3px;
    background: var(--paper);
    appearance: none;
  }
  .tick input:checked {
    border-color: var(--act);
    background: linear-gradient(var(--act), var(--act)) center / 10px 10px no-repeat var(--paper);
  }
  .tick input:focus-visible {
    outline: var(--focus-ring);
    outline-offset: var(--focus-offset);
  }
`
