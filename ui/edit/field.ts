// The right kind of field for an input.
import { html, type TemplateResult } from 'lit'
import type { MotorReadings } from '../../sim/identify/motor.ts'
import type { Problem } from '../../sim/problem.ts'
import { type Input, inputAt, type Scenario } from '../../sim/scenario.ts'
import { NBSP, show } from '../../sim/say/number.ts'
import type { Units } from '../../sim/say/units.ts'
import { beltWords } from './beltWords.ts'
import { knownOf, motorNumberAt, numberText, openWords } from './known.ts'
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
  /** Paths of what nobody has written yet, in a job never answered. */
  readonly lacking?: readonly string[] | null
  /** What is worth a look, and no error. */
  readonly notes: readonly Problem[]
  /** What the motor is identified from; null where the job does not read. */
  readonly motor: MotorReadings | null
  readonly units: Units
}

/** Choices that decide the most are laid out as cards. */
const CARDS: readonly string[] = ['heat.cooling']

/** What a plate prints in one unit only is read and shown in it. */
const ALWAYS: Readonly<Record<string, string>> = { 'plate.printedWatts': 'W', 'plate.continuousFor': 'min' }

/** What a plate says of its running point. */
const PLATE_POINT = ['volts', 'amps', 'power', 'speed'] as const
const DIMENSIONS = { volts: 'voltage', amps: 'current', power: 'power', speed: 'angular speed' } as const

/** A label, a helper or a placeholder in place of the input's own. */
export interface Said {
  readonly label?: string
  readonly helper?: string | null
  /** In an empty box. */
  readonly placeholder?: string
  /** The unit it is always shown in. */
  readonly unit?: string
}

/** What an empty field of the plate is taken for, once enough of the rest is there to tell. */
function plateWords(
  { path, text }: Input,
  motor: MotorReadings | null,
  units: Units,
): { placeholder: string; helper: string | null } {
  const name = PLATE_POINT.find((each) => path === `plate.${each}`)
  const knowledge = name && text === '' && motor ? knownOf(motor) : null
  if (!name || !knowledge) return { placeholder: '', helper: null }
  const { number, unit } = show(knowledge.motor.point[name], DIMENSIONS[name], units)
  return { placeholder: number, helper: `Left open: ${number}${NBSP}${unit} is taken.` }
}

/** What an open motor number is taken for; what to know of one that was typed over it. */
function motorWords(input: Input, form: FormState): { placeholder: string; helper: string | null } {
  const { motor, units } = form
  const name = motorNumberAt(input.path)
  if (input.path.startsWith('belt.')) return beltWords(input, form)
  if (name === null) return plateWords(input, motor, units)
  if (input.text !== '')
    return { placeholder: '', helper: 'Typed in. Empty it to return to what plate and bench say.' }
  const knowledge = motor && knownOf(motor)
  if (!knowledge) return { placeholder: '', helper: null }
  return {
    placeholder: numberText(knowledge.known[name].value, name, units),
    helper: openWords(knowledge, name, units),
  }
}

/** A field for an input, marked with its path so that it can be found. */
export function field(input: Input, form: FormState, said: Said = {}): TemplateResult {
  const { found, variant, problems, notes, units } = form
  const problem = problems.find(({ path }) => path === input.path) ?? null
  const before = variant === null ? null : inputAt(found, input.path)
  const asFound = before === null || before.text === input.text ? null : before.text || 'left open'
  const worth = notes.filter(({ path }) => path === input.path)
  if (input.field.kind === 'quantity') {
    const { placeholder, helper } = motorWords(input, form)
    return html`<quantity-field data-path=${input.path} .input=${input} .units=${units} .problem=${problem}
      .asFound=${asFound} .label=${said.label ?? ''} .placeholder=${said.placeholder ?? placeholder} .worth=${worth}
      .helper=${said.helper ?? helper} .unit=${said.unit ?? ALWAYS[input.path] ?? ''}></quantity-field>`
  }
  if (input.field.kind === 'choice')
    return html`<choice-field data-path=${input.path} .input=${input} .problem=${problem} .asFound=${asFound}
      .worth=${worth} ?cards=${CARDS.includes(input.path)}></choice-field>`
  return html`<words-field data-path=${input.path} .input=${input} .problem=${problem}
    .asFound=${asFound}></words-field>`
}
