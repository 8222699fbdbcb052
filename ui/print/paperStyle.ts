// The report on paper: sizes in points, light whatever the screen shows, each sheet on a page of its own.
import { css } from 'lit'

export const paperStyle = css`
  .paper {
    display: none;
    --k: 1;
    --small: 400 7.5pt / 9.4pt var(--body-face);
    --type-body: 400 8pt / 10.4pt var(--body-face);
    --type-label: var(--type-body);
    --type-note: var(--small);
    --type-note-strong: 600 7.5pt / 9.4pt var(--body-face);
    --type-station: 600 10pt / 13pt var(--heading-face);
    --type-value: 600 9pt / 11pt var(--heading-face);
    --type-answer: 600 17pt / 20pt var(--heading-face);
    --type-zone: 600 15pt / 19pt var(--heading-face);
    font: var(--type-body);
    font-stretch: var(--body-stretch);
  }
  @media print {
    .screen {
      display: none;
    }
    .paper {
      display: block;
    }
  }
  /* Laid out where nobody sees it, to learn how high it gets: as narrow and as low as A4 and Letter both are. */
  .paper.measured {
    position: absolute;
    top: 0;
    left: 0;
    display: block;
    width: 190mm;
    visibility: hidden;
  }
  .sheet {
    overflow: hidden;
  }
  .fits {
    zoom: var(--fit, 1);
  }
  .sheet + .sheet {
    break-before: page;
  }
  .paper h3 {
    font: var(--type-station);
  }
  .paper h4 {
    margin: 0;
    font: 600 8pt / 10.4pt var(--body-face);
  }
  .paper .note {
    color: var(--ink2);
  }
  .paper .title {
    grid-template-columns: repeat(4, 1fr);
  }
  .paper .title > div {
    padding: 0.7mm 2mm;
  }
  .running {
    display: flex;
    gap: 6mm;
    padding-bottom: 1mm;
    margin-bottom: 2mm;
    border-bottom: 1.5px solid var(--ink);
  }
  .running span:last-child {
    margin-left: auto;
  }
  .answer {
    display: grid;
    grid-template-columns: 1fr 1fr;
    gap: 0 8mm;
    padding: 3mm 0 2mm;
  }
  .answer h2 {
    margin-bottom: 1.5mm;
    font: var(--type-answer);
  }
  .answer p + p {
    margin-top: 1.2mm;
  }
  .numbers {
    border-top: 1px solid var(--ink);
  }
  .numbers > div {
    display: grid;
    grid-template-columns: 1fr auto;
    gap: 0 3mm;
    padding: 0.9mm 0;
    border-bottom: 1px solid var(--rule);
  }
  .numbers .note {
    grid-column: 1 / -1;
    font: var(--small);
  }
  .numbers strong {
    font: var(--type-value);
  }
  figcaption {
    margin-top: 1.5mm;
  }
  figcaption h3 {
    display: inline;
  }
  figcaption span {
    color: var(--ink2);
  }
  .paper svg {
    --type-note: 400 13px / 18px var(--body-face);
    --type-note-strong: 600 13px / 18px var(--body-face);
    --type-chart-title: 600 16px / 22px var(--heading-face);
    --type-value: 600 18px / 24px var(--heading-face);
    --type-key-number: 600 20px / 26px var(--heading-face);
    --type-label: 400 14px / 20px var(--body-face);
    --type-station: 600 18px / 24px var(--heading-face);
  }
  .pair {
    display: grid;
    grid-template-columns: 104mm minmax(0, 1fr);
    gap: 6mm;
    align-items: start;
  }
  .findings {
    padding-top: 2mm;
  }
  .findings ol {
    columns: 2;
    column-gap: 6mm;
  }
  .findings li {
    padding: 0.6mm 0;
    border-top: 1px solid var(--rule);
    font: 400 7pt / 8.6pt var(--body-face);
  }
  .findings li .kind {
    margin-right: 1mm;
    color: var(--ink2);
    font-weight: 600;
  }
  .cautions {
    margin-top: 2.5mm;
    padding-top: 1.5mm;
    border-top: 1.5px solid var(--ink);
  }
  .cautions ul {
    columns: 2;
    column-gap: 8mm;
    font: var(--small);
  }
  .cautions li {
    break-inside: avoid;
    padding-bottom: 0.6mm;
  }
  .variants {
    width: 100%;
    margin: 2mm 0;
    border-collapse: collapse;
    font: var(--small);
  }
  .variants th,
  .variants td {
    padding: 0.5mm 2mm 0.5mm 0;
    border-bottom: 1px solid var(--rule);
    font-weight: 400;
    text-align: right;
  }
  .variants th:first-child {
    text-align: left;
  }
  .variants thead th {
    color: var(--ink2);
    vertical-align: bottom;
  }
  .assumed > h3 {
    display: inline;
  }
  .inputs {
    columns: 3;
    column-gap: 5mm;
    margin-top: 1mm;
    font: 400 7pt / 8.4pt var(--body-face);
  }
  .inputs section {
    padding-bottom: 1mm;
  }
  .inputs h4 {
    break-after: avoid;
    border-top: 1px solid var(--ink);
    font: 600 7.5pt / 9.4pt var(--body-face);
  }
  .inputs p {
    break-inside: avoid;
    padding-left: 2mm;
    text-indent: -2mm;
  }
  .inputs .note {
    font: inherit;
    color: var(--ink2);
  }
  .lists {
    columns: 2;
    column-gap: 7mm;
    margin-top: 2mm;
  }
  .lists section {
    padding-bottom: 2mm;
  }
  .lists h3 {
    break-after: avoid;
    border-top: 1px solid var(--ink);
  }
  .lists li {
    display: grid;
    grid-template-columns: 4.5mm 1fr;
    padding: 0.8mm 0;
    break-inside: avoid;
    font: 400 8.5pt / 11pt var(--body-face);
  }
  .lists .note {
    font: var(--small);
  }
  .box {
    margin-top: 0.4mm;
    fill: none;
    stroke: var(--ink);
    stroke-width: 1px;
  }
  .box path {
    stroke-width: 1.75px;
  }
`
