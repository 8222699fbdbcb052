// Pulleys that are sold and do the job, each with its button: one stage, or two where one cannot.
import { html, nothing, type TemplateResult } from 'lit'
import { percent, ratioText, told } from '../../sim/say/number.ts'
import { whyWords } from '../../sim/say/ratio.ts'
import type { Units } from '../../sim/say/units.ts'
import type { RatioStudy } from '../../sim/studies/ratio.ts'
import type { Trial } from '../../sim/studies/ratio/trial.ts'
import type { Variant } from '../../sim/scenario.ts'
import { wish } from '../events.ts'

/** What pulleys come to: "6 : 1, hottest winding 96 °C, 4 % lost". */
const trialWords = ({ ratio, hottestWindingC, sag }: Trial, units: Units): string =>
  [
    ratioText(ratio),
    `winding ${told(hottestWindingC, 'temperature', units)}`,
    ...(sag === null ? [] : [`${percent(sag)} lost`]),
  ].join(', ')

const BUYS = [
  'nothing to buy',
  'one pulley to buy',
  'two pulleys to buy',
  'three pulleys to buy',
  'four pulleys to buy',
]

function offer(
  from: EventTarget,
  variant: Variant,
  trial: Trial,
  more: readonly string[],
  button: string,
  units: Units,
): TemplateResult {
  return html`<li>
    <div><strong>${variant.name}</strong>
      <div class="note">${[trialWords(trial, units), ...more].join('; ')}</div></div>
    <button class="act" aria-label="${button}: ${variant.name}"
      @click=${() => wish(from, { kind: 'try', name: variant.name, changes: variant.changes })}>${button}</button>
  </li>`
}

/** The proposals of a study. */
export function pairs(from: EventTarget, study: RatioStudy, units: Units): TemplateResult | typeof nothing {
  const { twoStages, toothed } = study
  // What is there already is no proposal.
  const news = study.pairs.filter(({ buys }) => buys > 0)
  const others = study.steps.filter(({ inUse }) => !inUse)
  if (news.length + twoStages.length + others.length === 0) return nothing
  const length = (size: number) => told(size, 'length', units)
  const steps = html`<h3>The other steps of its pulleys</h3>
    <ul>
      ${others.map((step) =>
        offer(
          from,
          step.variant,
          step.trial,
          [step.trial.faults[0] ? whyWords(step.trial.faults[0], study, units) : 'works'],
          'Use this step',
          units,
        ),
      )}
    </ul>`
  if (news.length + twoStages.length === 0) return html`<div class="pairs">${steps}</div>`
  return html`<div class="pairs">
    ${others.length > 0 ? steps : nothing}
    <h3>Pulleys that are sold</h3>
    <p class="note">Each tried on the whole job.${toothed ? ' Toothed pulleys come by teeth: take the nearest.' : ''}</p>
    <ul>
      ${news.map(({ variant, trial, length: belt, centres, buys }) =>
        offer(
          from,
          variant,
          trial,
          [
            BUYS[buys],
            ...(belt === null || centres === null
              ? []
              : [`a ${length(belt)} belt at ${length(centres)} between centres`]),
          ],
          'Use this pair',
          units,
        ),
      )}
      ${twoStages.map(({ variant, trial, buys }) =>
        offer(from, variant, trial, [BUYS[buys]], 'Use these pulleys', units),
      )}
    </ul>
  </div>`
}
