// The cut helper of a step: what kind of work, the few inputs it needs, and at once what the spindle is asked.
import { css, html, nothing, type TemplateResult } from 'lit'
import type { CutName } from '../../sim/cuts/index.ts'
import { surfaceSpeed } from '../../sim/cuts/spindle.ts'
import { type PhaseCut, phaseCut } from '../../sim/phaseCuts.ts'
import { parseQuantity } from '../../sim/quantity.ts'
import { type Input, inputAt, inputsOf } from '../../sim/scenario.ts'
import { NBSP, show } from '../../sim/say/number.ts'
import { cutWords } from '../../sim/say/phaseCuts.ts'
import { wish } from '../events.ts'
import { type FormState, field, type Said } from './field.ts'

export const cutHelperStyle = css`
  .asks {
    grid-column: 1 / -1;
    max-width: 80ch;
    margin-bottom: 20px;
    padding: 10px 14px;
    border: 1px solid var(--rule);
    border-left: 3px solid var(--act);
    border-radius: var(--round-panel);
    background: var(--paper);
  }
  .asks p + p {
    margin-top: 4px;
  }
`

/** The cut a step names, worked out; null where it names none or one that does not read. */
export function namedCut(form: FormState, index: number): PhaseCut | null {
  const found = phaseCut(form.asked, index)
  return found && 'kind' in found ? found : null
}

/** The speed of a step that names a cut: left open where the cut's surface gives it. */
export function stepSpeed(input: Input, form: FormState, cut: PhaseCut | null): TemplateResult {
  if (!input.usual) return field(input, form)
  const open = { ...input, text: '' }
  if (!cut) return field(open, form, { helper: 'Of the spindle in this cut.' })
  const { number, unit } = show(cut.speed, 'angular speed', form.units)
  const helper = `Left open: ${number}${NBSP}${unit}, from the surface speed.`
  return field(open, form, { placeholder: number, helper })
}

/** What to say of the surface speed: left open where the step gives the spindle's. */
function surfaceOf(input: Input, form: FormState, cut: PhaseCut | null): Said {
  if (!cut || input.text !== '') return {}
  const wide = inputAt(form.asked, input.path.replace(/speed$/, 'diameter'))?.text ?? ''
  const diameter = parseQuantity(wide, 'length')
  if (!diameter.ok) return {}
  const { number, unit } = show(surfaceSpeed(cut.speed, diameter.value), 'speed', form.units)
  return { placeholder: number, helper: `Left open: ${number}${NBSP}${unit}, from the speed of the spindle.` }
}

function answer(cut: PhaseCut | null, { units }: FormState): TemplateResult {
  if (!cut)
    return html`<div class="asks" role="status"><p class="note">What the spindle is asked stands here once every input reads.</p></div>`
  const { asks, spread, sum, row, caution } = cutWords(cut, units)
  return html`<div class="asks" role="status">
    <p><strong>${asks}</strong> ${spread}</p>
    <p class="note">${sum}</p>
    <p class="note">By the row ${row}</p>
    ${caution === null ? nothing : html`<p class="note">${caution}</p>`}
  </div>`
}

/** Kind and inputs of the cut that a step names, and its answer. */
export function cutHelper(from: EventTarget, form: FormState, index: number): TemplateResult {
  const path = `duty.phases.${index}.cut`
  const cut = namedCut(form, index)
  const [kind, ...inputs] = inputsOf(form.asked, path)
  if (kind?.field.kind !== 'choice') return html``
  const whole = form.problems.find((problem) => problem.path === path || problem.path === kind.path)
  const choose = (event: Event) => {
    const work = (event.currentTarget as HTMLSelectElement).value as CutName
    wish(from, { kind: 'work', index, work })
  }
  const own = (name: string) => (input: Input) => input.path === `${path}.${name}`
  const saidOf = (input: Input): Said =>
    own('speed')(input)
      ? surfaceOf(input, form, cut)
      : own('energy')(input)
        ? { unit: kind.text === 'sawingWood' ? 'J' : 'kJ' }
        : {}
  // An energy of one's own stands in for the handbook's row: few have one.
  const [last, first] = [inputs.filter(own('energy')), inputs.filter((input) => !own('energy')(input))]
  return html`<div class="cut">
      <label for="work${index}">${kind.field.label}</label>
      <div class="frame">
        <select id="work${index}" data-now=${kind.text} @change=${choose}>
          ${Object.entries(kind.field.options)
            // A torque that is known is asked for as such.
            .filter(([name]) => name !== 'torque' || kind.text === 'torque')
            .map(
              ([name, words]) =>
                html`<option value=${name} ?selected=${name === kind.text}>${words}</option>`,
            )}
        </select>
      </div>
      <p class="helper note">${whole ? html`<span class="bad">${whole.wrong} ${whole.wouldDo}</span>` : 'It begins with an example: put in your own numbers.'}</p>
    </div>
    ${[...first, ...last].map((input) => field(input, form, saidOf(input)))}
    ${answer(cut, form)}`
}
