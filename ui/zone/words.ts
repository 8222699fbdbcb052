// The answer in words: which variant, the sentence, what it means; then its numbers and what limits.
import { css, html, nothing, type TemplateResult } from 'lit'
import { answerOf, inShort } from '../../sim/say/answer.ts'
import { keyNumbers, limitsOf } from '../../sim/say/keyNumbers.ts'
import { restartWords } from '../../sim/say/safety.ts'
import type { Units } from '../../sim/say/units.ts'
import { cross, tick } from '../style/marks.ts'
import type { ShownJob } from './shownJob.ts'

export const wordStyle = css`
  .variant {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 6px 10px;
    margin-bottom: 8px;
  }
  .tag {
    padding: 1px 8px;
    border: 1px solid var(--ink);
    border-radius: var(--round-panel);
    font: var(--type-note);
  }
  .sentence {
    max-width: 24ch;
    margin-bottom: 12px;
    font: var(--type-answer);
  }
  .support {
    max-width: 60ch;
  }
  .restarts {
    margin-top: 10px;
    padding-left: 12px;
    border-left: 3px solid var(--bad);
    color: var(--bad);
    font-weight: 600;
  }
  .numbers {
    border-top: 1.5px solid var(--ink);
  }
  .numbers > div {
    display: flex;
    flex-wrap: wrap;
    justify-content: space-between;
    gap: 0 16px;
    align-items: baseline;
    padding: 8px 0 9px;
    border-bottom: 1px solid var(--rule);
  }
  dt {
    flex: 1 1 calc(110px * var(--k));
    font: var(--type-body);
  }
  dd.number {
    margin-left: auto;
    font: var(--type-key-number);
    text-align: right;
    white-space: nowrap;
  }
  .number span {
    font: var(--type-body);
    color: var(--ink2);
  }
  dd.note {
    flex-basis: 100%;
  }
  .limits {
    display: flex;
    flex-wrap: wrap;
    gap: 4px 18px;
    padding-top: 14px;
    font: var(--type-label);
  }
  .limits li {
    display: inline-flex;
    align-items: center;
    gap: 7px;
  }
  .limits strong {
    font-weight: 700;
  }
`

/** Variant line, sentence and support. */
export function sentence({ name, result, previous, sure }: ShownJob, units: Units): TemplateResult {
  const { job, figures } = result
  const answer = answerOf(job, figures, units, sure)
  const restarts = restartWords(figures)
  return html`<p class="variant">
      ${previous ? html`<span class="tag">Previous result</span>` : nothing}
      <span><strong>${name}</strong>: ${inShort(job)}</span>
    </p>
    <h2 class="sentence">${answer.sentence}</h2>
    <p class="support">${answer.support}</p>
    ${restarts === null ? nothing : html`<p class="restarts">${restarts}</p>`}`
}

/** The five numbers with their limits. */
export const numbers = ({ result }: ShownJob, units: Units): TemplateResult =>
  html`<dl class="numbers">
    ${keyNumbers(result.job, result.figures, units).map(
      ({ label, number, unit, note, bad }) => html`<div>
        <dt>${label}</dt>
        <dd class="number ${bad ? 'bad' : ''}">${number} <span>${unit}</span></dd>
        <dd class="note">${note}</dd>
      </div>`,
    )}
  </dl>`

/** What limits and what does not, and why. */
export function limits({ result }: ShownJob, units: Units): TemplateResult {
  const all = limitsOf(result.job, result.figures, units)
  const why = all.filter((limit) => limit.limits).map((limit) => `${limit.name}: ${limit.why}`)
  return html`<ul class="limits" aria-label="What limits">
      <li aria-hidden="true">What limits:</li>
      ${all.map((limit) =>
        limit.limits
          ? html`<li>${cross}<strong>${limit.name}</strong><span class="unseen">limits</span></li>`
          : html`<li>${tick}${limit.name}<span class="unseen">does not limit</span></li>`,
      )}
    </ul>
    <p class="note why">${why.length > 0 ? `${why.join('; ')}.` : 'Nothing limits it.'}</p>`
}
