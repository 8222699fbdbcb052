// The answer once the doubt is known: the verdict follows the samples, the headline is rounded to the doubt.
import { describe, expect, it } from 'vitest'
import { answerOf } from '../../../../sim/say/answer.ts'
import type { Units } from '../../../../sim/say/units.ts'
import type { Sure } from '../../../../sim/studies/sure.ts'
import { job } from '../../../jobs.ts'
import { type Fate, figuresOf } from '../figures.ts'
import { FAHRENHEIT, METRIC, US, visible } from '../units.ts'
import { CLOSE, fates, LASTS, OPENS, reading } from './sures.ts'

const mill = job()
const say = (fate: Fate, sure: Sure, units: Units = US, given = mill) => {
  const { verdict, sentence, support } = answerOf(given, figuresOf(fate), units, sure)
  expect(sentence.startsWith(verdict)).toBe(true)
  return visible(`${sentence} | ${support}`)
}
const verdict = (lasts: number): string =>
  answerOf(mill, figuresOf('opens'), US, { ...OPENS, fates: fates({ lasts, opens: 1 - lasts }) }).verdict

it('the headline is rounded to the doubt', () => {
  // Word for word as the work order has it.
  expect(answerOf(mill, figuresOf('opens'), US, OPENS).sentence.replaceAll('\u00a0', ' ')).toBe(
    'No. The cutoff opens 24 min into the job, likely between 15 and 39.',
  )
  const at = (low: number, t: number, high: number) =>
    visible(
      answerOf(mill, figuresOf('opens'), US, {
        ...OPENS,
        given: { fate: 'opens', t },
        t: { low, mid: t, high },
      }).sentence,
    )
  expect([
    at(1415, 1417, 1419),
    at(1300, 1417, 1500),
    at(900, 1417, 4300),
    at(1429, 3250, 9596),
    at(4000, 9000, 30000),
  ]).toMatchInlineSnapshot(`
    [
      "No. The cutoff opens 23~min 40~s into the job.",
      "No. The cutoff opens 23~min 40~s into the job, likely between 21~min 40~s and 25~min.",
      "No. The cutoff opens 25~min into the job, likely between 15 and 70.",
      "No. The cutoff opens 50~min into the job, likely between 20~min and 2~h 40~min.",
      "No. The cutoff opens 2~h 30~min into the job, likely between 1~h and 8~h 30~min.",
    ]
  `)
})

describe('the verdict follows the samples, both edges within', () => {
  it.each([
    [0, 'No'],
    [0.1, 'No'],
    [20 / 200, 'No'],
    [21 / 200, 'Too close to call'],
    [1 - 0.9, 'No'],
    [0.5, 'Too close to call'],
    [179 / 200, 'Too close to call'],
    [180 / 200, 'Yes'],
    [0.9, 'Yes'],
    [1, 'Yes'],
  ])('%d lasting: %s', (lasts, expected) => {
    expect(verdict(lasts)).toBe(expected)
  })
})

it('where it fails', () => {
  const edge = { ...OPENS, fates: fates({ opens: 0.765, hot: 0.135, lasts: 0.1 }) }
  const mixed = { ...OPENS, fates: fates({ opens: 0.6, hot: 0.35, lasts: 0.05 }) }
  const hot: Sure = {
    ...OPENS,
    fates: fates({ hot: 0.97, lasts: 0.03 }),
    fails: 'hot',
    given: { fate: 'hot', t: 1770 },
    windingC: { low: 141, mid: 170, high: 214 },
  }
  const stalls: Sure = {
    ...OPENS,
    fates: fates({ stalls: 1 }),
    fails: 'stalls',
    given: { fate: 'stalls', t: 260 },
  }
  expect(
    [
      say('opens', OPENS),
      say('opens', edge),
      say('opens', mixed),
      say('fine', { ...edge, given: { fate: 'lasts', t: null } }),
      say('fine', { ...OPENS, given: { fate: 'lasts', t: null } }),
      say('too hot', { ...edge, given: { fate: 'hot', t: 1770 } }),
      say('too hot', hot),
      say('too hot', hot, FAHRENHEIT),
      say('opens', { ...hot, given: { fate: 'opens', t: 1417 } }),
      say('stalled', { ...stalls, t: { low: 250, mid: 260, high: 270 } }, METRIC),
    ].join('\n'),
  ).toMatchInlineSnapshot(`
    "No. The cutoff opens 24~min into the job, likely between 15 and 39. | It recloses by itself 16~min 50~s later, and the machine restarts. Over 3~h you get 39 of 111~min of milling.
    No. The cutoff opens 24~min into the job, likely between 15 and 39. | It recloses by itself 16~min 50~s later, and the machine restarts. Over 3~h you get 39 of 111~min of milling.
    No. The cutoff opens 24~min into the job, likely between 15 and 39. | It recloses by itself 16~min 50~s later, and the machine restarts. Over 3~h you get 39 of 111~min of milling. In some likely cases something else stops it first.
    No. The cutoff opens 24~min into the job, likely between 15 and 39. | As given: the cutoff gets to 90~°C and never opens. So it is in 1 of 10 likely cases.
    No. The cutoff opens 24~min into the job, likely between 15 and 39. | As given: the cutoff gets to 90~°C and never opens. So it is in fewer than 1 of 10 likely cases.
    No. The cutoff opens 24~min into the job, likely between 15 and 39. | As given: the winding gets 53~°C too hot, and the cutoff never opens. So it is in 1 of 10 likely cases.
    No. The winding gets to 173~°C, likely between 141 and 214, over its class limit of 120~°C. | It passes its class limit of 120~°C after 29~min 30~s and reaches 173~°C.
    No. The winding gets to 343~°F, likely between 286 and 417, over its class limit of 248~°F. | It passes its class limit of 248~°F after 29~min 30~s and reaches 343~°F.
    No. The winding gets to 170~°C, likely between 141 and 214, over its class limit of 120~°C. | As given: the cutoff opens 23~min 40~s into the job, during milling. So it is in fewer than 1 of 10 likely cases.
    No. The spindle stops 4~min 20~s into the job, likely between 4~min 10~s and 4~min 30~s. | A motor held still burns its commutator in seconds. More reduction gives more torque for the same current."
  `)
})

it('open from the start, in every likely case, is told as that; most too hot and the middle not, by when', () => {
  const atOnce: Sure = {
    ...OPENS,
    fates: fates({ opens: 1 }),
    given: { fate: 'opens', t: 0 },
    t: { low: 0, mid: 0, high: 0 },
  }
  expect(say('open from the start', atOnce)).toMatch(/^No\. The cutoff is open from the start\. \| /)
  const mixed: Sure = {
    ...OPENS,
    fates: fates({ hot: 0.55, opens: 0.4, lasts: 0.05 }),
    fails: 'hot',
    given: { fate: 'opens', t: 1417 },
    windingC: { low: 105, mid: 119, high: 150 },
  }
  expect(say('opens', mixed)).toMatch(
    /^No\. The winding gets too hot 24~min into the job, likely between 15 and 39\. \| /,
  )
})

it('where it lasts', () => {
  const edge = { ...LASTS, fates: fates({ lasts: 0.9, opens: 0.1 }) }
  const opened: Sure = { ...edge, given: { fate: 'opens', t: 9700 } }
  const without = job({ 'cutoff.fitted': 'none' })
  expect(
    [
      say('fine', LASTS),
      say('fine', LASTS, METRIC),
      say('fine', LASTS, FAHRENHEIT),
      say('fine', edge),
      say('opens once and stays', opened),
      say('fine, no cutoff', { ...LASTS, fates: fates({ lasts: 1 }) }, US, without),
      say('slow', LASTS),
    ].join('\n'),
  ).toMatchInlineSnapshot(`
    "Yes. The cutoff gets to 90~°C, likely between 78 and 103, and never opens. | It lasts in at least 9 of 10 likely cases. The winding gets to 101~°C, likely between 86 and 118; its class limit is 120~°C.
    Yes. The cutoff gets to 90~°C, likely between 78 and 103, and never opens. | It lasts in at least 9 of 10 likely cases. The winding gets to 101~°C, likely between 86 and 118; its class limit is 120~°C.
    Yes. The cutoff gets to 194~°F, likely between 172 and 217, and never opens. | It lasts in at least 9 of 10 likely cases. The winding gets to 214~°F, likely between 187 and 244; its class limit is 248~°F.
    Yes. The cutoff gets to 90~°C, likely between 78 and 103, and never opens. | It lasts in at least 9 of 10 likely cases. The winding gets to 101~°C, likely between 86 and 118; its class limit is 120~°C.
    Yes. The cutoff gets to 90~°C, likely between 78 and 103, and never opens. | It lasts in at least 9 of 10 likely cases. As given: the cutoff opens 2~h 42~min into the job, during loading. So it is in 1 of 10 likely cases. The winding gets to 101~°C, likely between 86 and 118; its class limit is 120~°C.
    Yes. The winding gets to 101~°C, likely between 86 and 118, and no further. | It lasts in every likely case. No cutoff guards the winding; its class limit is 120~°C.
    Barely. It stays cool enough, but the spindle gets down to 261~rpm. | 26~% under the 350~rpm asked, more than you accept. It lasts in at least 9 of 10 likely cases."
  `)
})

it('too close to call, with what would settle it', () => {
  const lasting: Sure = { ...CLOSE, given: { fate: 'lasts', t: null } }
  expect(
    [
      say('opens', CLOSE),
      say('fine', lasting),
      say('fine', { ...lasting, settling: [reading({ gain: 0.01 })] }, METRIC),
      say('fine', { ...lasting, fates: fates({ lasts: 0.6, opens: 0.2, hot: 0.2 }) }),
    ].join('\n'),
  ).toMatchInlineSnapshot(`
    "Too close to call: the cutoff opens in 4 of 10 likely cases. | Measure the current during milling: that would tell most. As given: the cutoff opens 23~min 40~s into the job, during milling.
    Too close to call: the cutoff opens in 4 of 10 likely cases. | Measure the current during milling: that would tell most. As given: the cutoff gets to 90~°C and never opens.
    Too close to call: the cutoff opens in 4 of 10 likely cases. | No single measurement would settle it. As given: the cutoff gets to 90~°C and never opens.
    Too close to call: it fails in 4 of 10 likely cases. | Measure the current during milling: that would tell most. As given: the cutoff gets to 90~°C and never opens."
  `)
})

it('no doubt left: the sentence no longer rests on the values as given, and has no band', () => {
  const certain: Sure = {
    ...OPENS,
    fates: fates({ opens: 1 }),
    t: { low: 1417, mid: 1417, high: 1417 },
    settling: [],
    estimated: 0,
  }
  const cool: Sure = {
    ...LASTS,
    fates: fates({ lasts: 1 }),
    windingC: { low: 101.2, mid: 101.2, high: 101.2 },
    switchC: { low: 90, mid: 90, high: 90 },
    settling: [],
    estimated: 0,
  }
  expect(
    [say('opens', certain), say('fine', cool), say('fine', cool, FAHRENHEIT)].join('\n'),
  ).toMatchInlineSnapshot(`
    "No. The cutoff opens 23~min 40~s into the job. | It recloses by itself 16~min 50~s later, and the machine restarts. Over 3~h you get 39 of 111~min of milling.
    Yes. The cutoff gets to 90~°C, and never opens. | It lasts in every likely case. The winding gets to 101~°C; its class limit is 120~°C.
    Yes. The cutoff gets to 194~°F, and never opens. | It lasts in every likely case. The winding gets to 214~°F; its class limit is 248~°F."
  `)
})

it('a run that came to no end says so, doubt or none', () => {
  for (const fate of ['too many steps', 'abandoned'] as const)
    expect(answerOf(mill, figuresOf(fate), US, OPENS)).toEqual(answerOf(mill, figuresOf(fate), US))
})
