// The right kind of field for an input.
import { html, type TemplateResult } from 'lit'
import type { Problem } from '../../sim/problem.ts'
import { type Input, inputAt, type Scenario } from '../../sim/scenario.ts'
import type { Units } from '../../sim/say/units.ts'
import './choiceField.ts'
import './quantityField.ts'
import './wordsField.ts'

/** What a form stands on: the texts asked, those of the job as found, and what is wrong with them. */
export interface FormState {
  readonly asked: Scenario
  readonly found: Scenario
  /** Name of the variant that edits go to; null: the job as found. */
  readonly variant: string | null
  readonly problems: readonly Problem[]
  readonly units: Units
}

/** Choices that decide the most are laid out as cards. */
const CARDS: readonly string[] = ['heat.cooling']

/** A field for an input, marked with its path so that it can be found. */
export function field(input: Input, { found, variant, problems, units }: FormState): TemplateResult {
  const problem = problems.find(({ path }) => path === input.path) ?? null
  const before = variant === null ? null : inputAt(found, input.path)
  const asFound = before === null || before.text === input.text ? null : before.text || 'left open'
  if (input.field.kind === 'quantity')
    return html`<quantity-field data-path=${input.path} .input=${input} .units=${units} .problem=${problem}
      .asFound=${asFound}></quantity-field>`
  if (input.field.kind === 'choice')
    return html`<choice-field data-path=${input.path} .input=${input} .problem=${problem} .asFound=${asFound}
      ?cards=${CARDS.includes(input.path)}></choice-field>`
  return html`<words-field data-path=${input.path} .input=${input} .problem=${problem}
    .asFound=${asFound}></words-field>`
}
