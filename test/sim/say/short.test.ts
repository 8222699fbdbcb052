// The answer in short, for the foot of a phone: to each fate, as given and with its doubt, and at one with the whole answer.
import { expect, it } from 'vitest'
import { answerOf } from '../../../sim/say/answer.ts'
import type { Units } from '../../../sim/say/units.ts'
import type { Sure } from '../../../sim/studies/sure.ts'
import { job } from '../../jobs.ts'
import { FATES, type Fate, figuresOf } from './figures.ts'
import { agrees } from './short.ts'
import { CLOSE, fates, LASTS, OPENS } from './sure/sures.ts'
import { FAHRENHEIT, METRIC, US, visible } from './units.ts'

const mill = job()
const without = job({ 'cutoff.fitted': 'none' })
const short = (fate: Fate, units: Units, sure: Sure | null = null, given = mill): string => {
  const answer = answerOf(given, figuresOf(fate), units, sure)
  agrees(answer.short, `${answer.sentence} ${answer.support}`)
  return visible(`${answer.short.words} | ${answer.short.doubt}`)
}
const ALL = Object.keys(FATES) as Fate[]

it('to each fate, as given', () => {
  expect(ALL.map((fate) => `${fate}: ${short(fate, US)}`).join('\n')).toMatchInlineSnapshot(`
    "fine: Yes · cutoff gets to 90~°C | with the values as given
    fine, no cutoff: Yes · winding gets to 101~°C | with the values as given
    close to the cutoff: Barely · cutoff 2~°C from opening | with the values as given
    slow: Barely · down to 261~rpm | with the values as given
    too hot: No · winding 53~°C too hot | with the values as given
    a hair too hot: No · winding 1~°C too hot | with the values as given
    stalled: No · stops after 4~min 20~s | with the values as given
    stalled at the limit: No · stops after 4~min 20~s | with the values as given
    opens: No · opens after 23~min 40~s | with the values as given
    opens once and stays: No · opens after 2~h 42~min | with the values as given
    open from the start: No · cutoff open from the start | with the values as given
    destroyed: No · burns out after 20~min 30~s | with the values as given
    too many steps: No answer beyond 20~min 30~s | it would take too many steps
    not finite: No answer beyond 0.2~s | the numbers ran away
    step too small: No answer beyond 20~min 30~s | the numbers ran away
    abandoned: No answer beyond 20~min 30~s | it was stopped"
  `)
})

it('in metric units and in °F', () => {
  const some: Fate[] = ['fine', 'fine, no cutoff', 'close to the cutoff', 'slow', 'too hot']
  expect(
    [METRIC, FAHRENHEIT].flatMap((units) => some.map((fate) => short(fate, units))).join('\n'),
  ).toMatchInlineSnapshot(`
    "Yes · cutoff gets to 90~°C | with the values as given
    Yes · winding gets to 101~°C | with the values as given
    Barely · cutoff 2~°C from opening | with the values as given
    Barely · down to 261~rpm | with the values as given
    No · winding 53~°C too hot | with the values as given
    Yes · cutoff gets to 194~°F | with the values as given
    Yes · winding gets to 214~°F | with the values as given
    Barely · cutoff 4~°F from opening | with the values as given
    Barely · down to 261~rpm | with the values as given
    No · winding 95~°F too hot | with the values as given"
  `)
})

it('a winding close to its limit, and a spindle that hardly turns', () => {
  const close = { ...figuresOf('fine'), classMargin: 2.6 }
  const hopeless = { ...figuresOf('slow'), slowest: { value: 10, t: 200, sag: 0.73, asked: 36.65 } }
  const said = [close, hopeless].map((figures) => answerOf(mill, figures, US).short.words)
  expect(said.map(visible)).toMatchInlineSnapshot(`
    [
      "Barely · winding 3~°C from its limit",
      "No · down to 95~rpm",
    ]
  `)
})

it('once it is known how sure', () => {
  const hot: Sure = {
    ...OPENS,
    fails: 'hot',
    fates: fates({ hot: 0.97, lasts: 0.03 }),
    given: { fate: 'hot', t: 1770 },
  }
  const of = (fails: NonNullable<Sure['fails']>, fate: Fate, t: number): readonly [Fate, Sure] => [
    fate,
    { ...OPENS, fails, fates: fates({ [fails]: 1 }), given: { fate: fails, t } },
  ]
  const cases: readonly (readonly [string, Fate, Sure])[] = [
    ['opens', 'opens', OPENS],
    ['opens, mixed', 'opens', { ...OPENS, fates: fates({ opens: 0.6, hot: 0.35, lasts: 0.05 }) }],
    ['too hot', 'too hot', hot],
    ['stops', ...of('stalls', 'stalled', 1400)],
    ['burns out', ...of('burns', 'destroyed', 1234)],
    ['no answer', ...of('unfinished', 'destroyed', 1234)],
    ['nothing fails it', 'opens', { ...OPENS, fails: null, fates: fates({}) }],
    ['lasts', 'fine', LASTS],
    [
      'lasts, always',
      'fine',
      { ...LASTS, fates: fates({ lasts: 1 }), switchC: { low: 90, mid: 90, high: 90 } },
    ],
    ['lasts, slow', 'slow', LASTS],
    ['too close', 'opens', CLOSE],
    ['too close, mixed', 'opens', { ...CLOSE, fates: fates({ lasts: 0.6, opens: 0.2, hot: 0.2 }) }],
    ['too close, too hot', 'opens', { ...CLOSE, fails: 'hot', fates: fates({ lasts: 0.6, hot: 0.4 }) }],
  ]
  expect(
    cases.map(([name, fate, sure]) => `${name}: ${short(fate, US, sure)}`).join('\n'),
  ).toMatchInlineSnapshot(`
    "opens: No · opens after 24~min | likely 15 to 39
    opens, mixed: No · opens after 24~min | likely 15 to 39
    too hot: No · winding too hot, 173~°C | likely 118 to 171
    stops: No · stops after 23~min | likely 15 to 39
    burns out: No · burns out after 21~min | likely 15 to 39
    no answer: No · no answer after 21~min | likely 15 to 39
    nothing fails it: No · opens after 23~min 40~s | 
    lasts: Yes · cutoff gets to 90~°C | likely 78 to 103
    lasts, always: Yes · cutoff gets to 90~°C | in every likely case
    lasts, slow: Barely · down to 261~rpm | cool enough in at least 9 of 10 likely cases
    too close: Too close to call | opens in 4 of 10 likely cases
    too close, mixed: Too close to call | fails in 4 of 10 likely cases
    too close, too hot: Too close to call | too hot in 4 of 10 likely cases"
  `)
  expect([
    short('fine, no cutoff', US, LASTS, without),
    short('fine', FAHRENHEIT, LASTS),
    short('fine', METRIC, LASTS),
  ]).toMatchInlineSnapshot(`
    [
      "Yes · winding gets to 101~°C | likely 86 to 118",
      "Yes · cutoff gets to 194~°F | likely 172 to 217",
      "Yes · cutoff gets to 90~°C | likely 78 to 103",
    ]
  `)
})
