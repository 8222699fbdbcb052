// How the drive line in words looks: parts strung on one line, heat as swatches, the key beneath.
import { css } from 'lit'

export const driveStyle = css`
  :host {
    display: flex;
    flex-direction: column;
    min-height: 100%;
    padding: 16px 24px 20px;
    border: 1px dotted var(--ink3);
  }
  .head {
    margin-bottom: 6px;
  }
  .head strong {
    font: var(--type-note-strong);
  }
  ol {
    flex: 1;
    display: flex;
    flex-direction: column;
    justify-content: space-between;
  }
  li {
    position: relative;
    display: grid;
    grid-template-columns: 56px 1fr auto;
    gap: 4px 20px;
    align-items: start;
    padding: 12px 0;
  }
  /* The line that strings the parts together: wire, shaft, belt. */
  ol {
    position: relative;
  }
  ol::before {
    content: '';
    position: absolute;
    inset: 40px auto 60px 27px;
    border-left: 1.75px solid var(--ink);
  }
  .glyph {
    position: relative;
    display: block;
    align-self: start;
    height: 64px;
    padding: 4px 0;
    background: var(--paper);
  }
  /* Dots lead the eye from a part to what it does. */
  h3 {
    display: flex;
    align-items: baseline;
    gap: 10px;
  }
  h3::after {
    content: '';
    flex: 1;
    border-bottom: 1.5px dotted var(--rule);
  }
  .is p {
    max-width: 44ch;
  }
  .does {
    display: grid;
    justify-items: end;
    font: var(--type-key-number);
    text-align: right;
    white-space: nowrap;
  }
  .does b {
    font-weight: 600;
  }
  .heat {
    grid-column: 2 / -1;
    display: grid;
    grid-template-columns: repeat(3, minmax(0, 1fr));
    gap: 16px;
    margin-top: 6px;
  }
  .heat dd {
    display: flex;
    align-items: center;
    gap: 10px;
    font: var(--type-value);
    white-space: nowrap;
  }
  .heat i {
    width: 36px;
    height: 22px;
    border: 1.25px solid var(--ink);
    border-radius: 2px;
  }
  .key {
    width: min(100%, 340px);
    margin: 12px 0 0 76px;
  }
  .bar {
    height: 12px;
    margin-top: 4px;
    border: 1px solid var(--ink);
  }
  .stops {
    position: relative;
    height: calc(22px * var(--k));
  }
  .stops span {
    position: absolute;
    padding-top: 3px;
    transform: translateX(-50%);
    white-space: nowrap;
  }
  .stops span:first-child {
    transform: none;
  }
  .stops span:last-child {
    transform: translateX(-100%);
  }
  @media (max-width: 759.98px) {
    :host {
      padding: 12px 0;
      border-width: 1px 0;
    }
    li {
      grid-template-columns: 44px 1fr auto;
      gap: 4px 12px;
    }
    .glyph {
      height: 52px;
    }
    .glyph svg {
      width: 44px;
      height: 44px;
    }
    ol::before {
      left: 21px;
    }
    /* On its own ground: the line that strings the parts does not run through its words. */
    .heat {
      position: relative;
      grid-column: 1 / -1;
      gap: 8px;
      background: var(--paper);
    }
    .heat i {
      width: 24px;
    }
    .key {
      margin-left: 0;
    }
  }
`
