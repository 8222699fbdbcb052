// The answer to each fate of a job, word for word.
import { describe, expect, it } from 'vitest'
import { answerOf, inShort } from '../../../sim/say/answer.ts'
import type { Units } from '../../../sim/say/units.ts'
import { job } from '../../jobs.ts'
import { FATES, type Fate, figuresOf } from './figures.ts'
import { FAHRENHEIT, METRIC, US, visible } from './units.ts'

const mill = job()
const without = job({ 'cutoff.fitted': 'none' })
const manual = job({ 'cutoff.fitted': 'manual reset' })
const say = (fate: Fate, units: Units, given = mill) => {
  const { verdict, sentence, support } = answerOf(given, figuresOf(fate), units)
  return visible(`${verdict} | ${sentence} | ${support}`)
}

it('to each fate', () => {
  const all = Object.keys(FATES).map((fate) => `${fate}: ${say(fate as Fate, US)}`)
  expect(all.join('\n')).toMatchInlineSnapshot(`
    "fine: Yes | Yes. The cutoff gets to 90~°C and never opens, with the values as given. | The winding stays 19~°C under its class limit, at 101~°C at most.
    fine, no cutoff: Yes | Yes. The winding gets to 101~°C and no further, with the values as given. | The winding stays 19~°C under its class limit, at 101~°C at most. No cutoff guards it.
    close to the cutoff: Barely | Barely. It lasts the 3~h, but the cutoff comes within 2~°C of opening, with the values as given. | Cutoffs open up to 5~°C early. The winding stays 19~°C under its class limit, at 101~°C at most.
    slow: Barely | Barely. It stays cool enough, but the spindle gets down to 261~rpm, with the values as given. | 26~% under the 350~rpm asked, more than you accept.
    too hot: No | No. The winding gets 53~°C too hot, and the cutoff never opens, with the values as given. | It passes its class limit of 120~°C after 29~min 30~s and reaches 173~°C.
    a hair too hot: No | No. The winding gets 1~°C too hot, and the cutoff never opens, with the values as given. | It passes its class limit of 120~°C after 2~h 58~min and reaches 120~°C.
    stalled: No | No. The spindle stops 4~min 20~s into the job, short of torque, with the values as given. | A motor held still burns its commutator in seconds. More reduction gives more torque for the same current.
    stalled at the limit: No | No. The spindle stops 4~min 20~s into the job, held at the current limit of 18.0~A, with the values as given. | A motor held still burns its commutator in seconds. More reduction gives more torque for the same current.
    opens: No | No. The cutoff opens 23~min 40~s into the job, during milling, with the values as given. | It recloses by itself 16~min 50~s later, and the machine restarts. Over 3~h you get 39 of 111~min of milling.
    opens once and stays: No | No. The cutoff opens 2~h 42~min into the job, during loading, with the values as given. | It does not reclose within the job. Over 3~h you get 100 of 111~min of milling.
    open from the start: No | No. The cutoff is open from the start, with the values as given. | It recloses by itself 5~min later, and the machine restarts. Over 3~h you get 111 of 111~min of milling.
    destroyed: No | No. The winding burns out 20~min 30~s into the job, with the values as given. | It passes 300~°C, where varnish, solder and magnets are long gone. Over 3~h you get 10 of 111~min of milling.
    too many steps: No | No answer beyond 20~min 30~s: it would take too many steps. | What is shown holds up to there. Shorten the job, or look for an input that is far out.
    not finite: No | No answer beyond 0.2~s: the numbers ran away. | What is shown holds up to there. Shorten the job, or look for an input that is far out.
    step too small: No | No answer beyond 20~min 30~s: the numbers ran away. | What is shown holds up to there. Shorten the job, or look for an input that is far out.
    abandoned: No | No answer beyond 20~min 30~s: it was stopped. | What is shown holds up to there. Shorten the job, or look for an input that is far out."
  `)
})

it('in metric units', () => {
  expect(
    ['slow', 'stalled at the limit', 'too hot'].map((fate) => say(fate as Fate, METRIC)).join('\n'),
  ).toMatchInlineSnapshot(`
    "Barely | Barely. It stays cool enough, but the spindle gets down to 261~rpm, with the values as given. | 26~% under the 350~rpm asked, more than you accept.
    No | No. The spindle stops 4~min 20~s into the job, held at the current limit of 18.0~A, with the values as given. | A motor held still burns its commutator in seconds. More reduction gives more torque for the same current.
    No | No. The winding gets 53~°C too hot, and the cutoff never opens, with the values as given. | It passes its class limit of 120~°C after 29~min 30~s and reaches 173~°C."
  `)
})

it('in °F', () => {
  expect(
    ['fine', 'close to the cutoff', 'too hot', 'destroyed']
      .map((fate) => say(fate as Fate, FAHRENHEIT))
      .join('\n'),
  ).toMatchInlineSnapshot(`
    "Yes | Yes. The cutoff gets to 194~°F and never opens, with the values as given. | The winding stays 34~°F under its class limit, at 214~°F at most.
    Barely | Barely. It lasts the 3~h, but the cutoff comes within 4~°F of opening, with the values as given. | Cutoffs open up to 9~°F early. The winding stays 34~°F under its class limit, at 214~°F at most.
    No | No. The winding gets 95~°F too hot, and the cutoff never opens, with the values as given. | It passes its class limit of 248~°F after 29~min 30~s and reaches 343~°F.
    No | No. The winding burns out 20~min 30~s into the job, with the values as given. | It passes 572~°F, where varnish, solder and magnets are long gone. Over 3~h you get 10 of 111~min of milling."
  `)
})

it('without a cutoff, and with one that must be reset', () => {
  expect(
    [
      say('too hot', US, without),
      say('fine, no cutoff', US, without),
      say('opens once and stays', US, manual),
    ].join('\n'),
  ).toMatchInlineSnapshot(`
    "No | No. The winding gets 53~°C too hot, and no cutoff stops it, with the values as given. | It passes its class limit of 120~°C after 29~min 30~s and reaches 173~°C.
    Yes | Yes. The winding gets to 101~°C and no further, with the values as given. | The winding stays 19~°C under its class limit, at 101~°C at most. No cutoff guards it.
    No | No. The cutoff opens 2~h 42~min into the job, during loading, with the values as given. | It stays open until somebody starts it again. Over 3~h you get 100 of 111~min of milling."
  `)
})

describe('a step without a name', () => {
  it('is told by its number', () => {
    const nameless = job({ 'duty.phases.2.name': '  ' })
    expect(answerOf(nameless, figuresOf('opens'), US).sentence).toContain(', in step 3, ')
    expect(answerOf(nameless, figuresOf('opens'), US).support).toContain('of step 3.')
  })
})

it('worse news goes before better', () => {
  const worst = { ...figuresOf('stalled'), ...FATES['too hot'], ...FATES.opens }
  expect(answerOf(mill, worst, US).sentence).toContain('cutoff opens')
  expect(answerOf(mill, { ...worst, ...FATES.destroyed }, US).sentence).toContain('burns out')
  expect(answerOf(mill, { ...figuresOf('slow'), ...FATES['too hot'] }, US).sentence).toContain('too hot')
})

it('a job in short', () => {
  expect(visible(inShort(mill))).toBe('no fan, ratio 4~:~1')
  expect(visible(inShort(job({ 'heat.cooling': 'blower', 'belt.machinePulley': '14 in' })))).toBe(
    'blower, ratio 5.6~:~1',
  )
})
