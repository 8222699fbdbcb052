// A job file made worse, by its bytes or by its inputs: refused with problems, or carried out to figures and a report.
import { carryOut } from '../../../sim/carryOut.ts'
import { boundsOf } from '../../../sim/reading.ts'
import { read, readFile } from '../../../sim/read.ts'
import { toUnit } from '../../../sim/quantity.ts'
import { jobReport } from '../../../sim/say/report.ts'
import { inputsOf, type Scenario, variantsOf, withChange } from '../../../sim/scenario.ts'
import { DEMOS, demo, demoText } from '../../jobs.ts'
import type { Chance } from '../../seeded.ts'
import type { Trial } from '../campaign.ts'
import { ABSURD, damaged, HOSTILE } from './damage.ts'
import { amissIn, nonsense, notNumber } from './said.ts'

/** A text for an input: at its bounds, between them, or none it could have. */
function textFor({ field, text }: ReturnType<typeof inputsOf>[number], chance: Chance): unknown {
  if (chance.happens(0.06)) return chance.pick([null, [], {}, 1, true, { value: text, low: '9', high: '1' }])
  if (field.kind === 'choice' && chance.happens(0.9)) return chance.pick(Object.keys(field.options))
  if (field.kind !== 'quantity')
    return chance.happens(0.5) ? chance.pick(HOSTILE) : 'x'.repeat(chance.size(1, 3e3))
  if (chance.happens(0.1)) return chance.pick(ABSURD)
  const { low, high, unit } = boundsOf(field)
  if (chance.happens(0.5)) return chance.happens(0.5) ? field.low : field.high
  const inside = low > 0 ? chance.size(low, high) : chance.even(low, high)
  return `${toUnit(inside, unit)} ${unit}`
}

/** A demonstration with up to four of its inputs replaced, at what their own tables allow more often than not. */
export function misfilled(chance: Chance): Scenario {
  const times = 1 + Math.floor(chance.uniform() * 4)
  let scenario = demo(chance.pick(DEMOS))
  for (let n = 0; n < times; n++) {
    const input = chance.pick(inputsOf(scenario))
    scenario = withChange(scenario, input.path, textFor(input, chance))
  }
  return scenario
}

/** The file of a chance. */
export const fileOf = (chance: Chance): string =>
  chance.happens(0.4) ? damaged(demoText(chance.pick(DEMOS)), chance) : JSON.stringify(misfilled(chance))

/** What becomes of a job file's text. */
export function tryFile(text: string): Trial {
  const opened = readFile(text)
  if (!opened.ok) return refusal(amissIn(opened.problems, text))
  // Any change of a variant is the stranger's too.
  const [variant] = variantsOf(opened.scenario)
  const changed = variant && read(opened.scenario, variant)
  const wrong = changed && !changed.ok ? amissIn(changed.problems, text) : null
  if (wrong) return refusal(wrong)
  const reading = read(opened.scenario)
  if (!reading.ok) return refusal(amissIn(reading.problems, text))
  const { job, cuts, notes } = reading
  const work = carryOut(job)
  let next = work.next()
  while (!next.done) next = work.next()
  const { trace, figures, skipping } = next.value
  const title = String(opened.scenario.name)
  const report = jobReport(title, { job, trace, figures, cuts, notes, skipping, check: null }, UNITS)
  const none = notNumber({ figures, trace })
  return {
    measures: { carried: 1, evaluations: trace.effort.rates, rows: trace.time.length },
    ...(none ? { wrong: `no number at ${none}` } : said(nonsense(report, text))),
  }
}

const UNITS = { system: 'us', temperature: '°F' } as const

const said = (wrong: string | null) => (wrong === null ? {} : { wrong })
const refusal = (wrong: string | null): Trial => ({ measures: { refused: 1 }, ...said(wrong) })
