// How the four stations look: a strip of columns, two by two on a tablet, one line each on a phone.
import { css } from 'lit'

export const stationStyle = css`
  .strip {
    display: grid;
    grid-template-columns: repeat(4, minmax(0, 1fr));
    /* The panel stands right behind its station; the stations after it close up before it. */
    grid-auto-flow: row dense;
    border-top: 1.5px solid var(--ink);
  }
  .station {
    padding: 12px 20px 14px;
  }
  .station:first-child {
    padding-left: 0;
  }
  .station + .station,
  station-panel + .station,
  .station ~ .station {
    border-left: 1px solid var(--rule);
  }
  header {
    display: flex;
    align-items: center;
    justify-content: space-between;
    gap: 12px;
    margin-bottom: 6px;
  }
  dl > div {
    display: flex;
    justify-content: space-between;
    gap: 12px;
    padding: 1px 0;
    font: var(--type-label);
  }
  dt {
    flex: none;
    color: var(--ink2);
  }
  dd {
    text-align: right;
    font-weight: 500;
  }
  .look {
    margin-top: 6px;
  }
  .open {
    position: relative;
    grid-column: 1 / -1;
    margin-top: 14px;
  }
  .open::before {
    content: '';
    position: absolute;
    bottom: 100%;
    left: calc(var(--at) * 25% + 48px);
    border: 14px solid transparent;
    border-top-width: 0;
    border-bottom: 11px solid var(--ink);
  }
  @media (max-width: 1199.98px) {
    .strip {
      grid-template-columns: repeat(2, minmax(0, 1fr));
    }
    .station:nth-of-type(odd) {
      padding-left: 0;
      border-left: 0;
    }
    .open::before {
      left: calc(var(--at2) * 50% + 48px);
    }
  }
  @media (max-width: 759.98px) {
    .strip {
      grid-template-columns: minmax(0, 1fr);
    }
    .station,
    .station ~ .station {
      padding: 12px 0 16px;
      border-left: 0;
    }
    .station + .station,
    .open + .station {
      border-top: 1px solid var(--rule);
    }
    dl > div {
      display: inline;
    }
    dl > div:not(:last-child)::after {
      content: ' · ';
    }
    dt {
      display: inline;
    }
    dd {
      display: inline;
      font-weight: 400;
    }
    .open {
      margin: 0 0 16px;
    }
    .open::before {
      left: 24px;
    }
  }
  @media print {
    button,
    .open {
      display: none;
    }
  }
`
