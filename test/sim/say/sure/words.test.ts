// How sure, in words: shares, what to measure; and the report whole.
import { describe, expect, it } from 'vitest'
import { fateShares, ofTen, sureLines, sureWords, tenths } from '../../../../sim/say/sure.ts'
import { estimatedWords, firstToMeasure, measureWords } from '../../../../sim/say/sure/measuring.ts'
import type { Sure } from '../../../../sim/studies/sure.ts'
import type { Settling } from '../../../../sim/studies/sure/settle.ts'
import { type Changes, job } from '../../../jobs.ts'
import { FAHRENHEIT, METRIC, US, visible } from '../units.ts'
import { CLOSE, dots, fates, LASTS, OPENS, reading } from './sures.ts'

const mill = job()

it('shares', () => {
  expect([0.02, 0.1, 0.349, 0.95].map(tenths)).toEqual(['1 of 10', '1 of 10', '3 of 10', '9 of 10'])
  expect([0.02, 0.0999, 1 - 0.9, 0.135].map(ofTen)).toEqual([
    'fewer than 1 of 10',
    'fewer than 1 of 10',
    '1 of 10',
    '1 of 10',
  ])
  expect(fateShares(OPENS)).toMatchInlineSnapshot(
    `"the cutoff opens in 96 of 100; it lasts in 2 of 100; the winding gets too hot in 2 of 100"`,
  )
})

describe('the doubt in a sentence or two', () => {
  const words = (sure: Sure, units = US) => visible(sureWords(sure, mill, units))
  // Starts of milling, the third step, in the mill's eight-minute cycle.
  const milling = Array.from({ length: 40 }, (_, n) => ({ t: 480 * n + 300, fate: 'opens' as const }))
  it('of each kind', () => {
    expect([
      words(OPENS),
      words({ ...OPENS, fates: fates({ opens: 0.9, lasts: 0.1 }), dots: dots(4) }),
      words(CLOSE),
      words({ ...OPENS, dots: milling }),
      words(LASTS),
      words(LASTS, FAHRENHEIT),
      words({ ...LASTS, fates: fates({ lasts: 0.9, opens: 0.1 }) }),
      words({ ...LASTS, fates: fates({ lasts: 1 }) }),
      words({ ...LASTS, windingC: { low: 101, mid: 101, high: 101.2 } }),
      words({ ...OPENS, t: { low: 1417, mid: 1417, high: 1417 }, dots: milling }),
    ]).toMatchInlineSnapshot(`
      [
        "Between 15 and 39~min, eight times in ten.",
        "Between 15 and 39~min, eight times in ten.",
        "The cutoff opens in 4 of 10 likely cases, seldom before 25~min.",
        "Between 15 and 39~min, eight times in ten. It opens only during milling, hence the clusters.",
        "It lasts in at least 9 of 10 likely cases. The winding gets to between 86 and 118~°C, eight times in ten.",
        "It lasts in at least 9 of 10 likely cases. The winding gets to between 187 and 244~°F, eight times in ten.",
        "It lasts in at least 9 of 10 likely cases. The winding gets to between 86 and 118~°C, eight times in ten.",
        "It lasts in every likely case. The winding gets to between 86 and 118~°C, eight times in ten.",
        "It lasts in at least 9 of 10 likely cases. The winding gets to 101~°C, eight times in ten.",
        "At 23~min 40~s, eight times in ten.",
      ]
    `)
  })
})

describe('what to measure', () => {
  it('each in words, and where its reading goes', () => {
    const kinds: readonly (readonly [Settling['kind'], number])[] = [
      ['current', 9.3],
      ['warm-up', 2400],
      ['ohms', 1.25],
      ['held', 1.25],
      ['spin', 0.25],
      ['running', 0.8],
      ['coast', 0.0012],
      ['mass', 6],
      ['opens at', 120],
      ['air', 25],
    ]
    const told = kinds.map(([kind, reads]) => {
      const phase = kind === 'current' ? 2 : null
      const { title, what, how, bench, path } = measureWords(reading({ kind, reads, phase }), mill, US)
      return visible(`${title} | ${what} | ${how} | ${bench ? 'bench' : path}`)
    })
    expect(told.join('\n')).toMatchInlineSnapshot(`
      "Current during milling | the current during milling | Clamp on one motor lead, on DC, for a full minute. The torque as given makes about 9.3~A: change it in proportion. | duty.phases.2.torque
      Warm-up on the bench | a warm-up on the bench | Belt off, steady amps; log the frame until it settles, and as it cools. | bench
      Winding ohms | the winding’s ohms | Supply unplugged: ohmmeter across the motor leads, the lowest of ten. | bench
      Volts with the shaft held | volts with the shaft held | 2 to 5 A for a few seconds, volts at the leads. | bench
      Volts made by turning | the volts it makes by turning | Turn the shaft with a drill; read volts and rpm together. | bench
      Amps running free | the amps running free | Belt off, full voltage, after five minutes; clamp on one motor lead. | bench
      Coast-down | the coast-down | Belt off; switch off from speed with a stopwatch running. | bench
      Mass of the motor | the motor’s mass | Bathroom scales will do. | plate.mass
      Where the cutoff opens | where the cutoff opens | Warm it in an oven beside a thermometer until its contact opens. | cutoff.opensAt
      Air around the motor | the air around the motor | A thermometer beside the motor, while it works. | heat.air"
    `)
  })

  it('the current of a step: by its name or number, and the input that its reading corrects', () => {
    const said = (changes: Changes) => {
      const { title, what, how, path } = measureWords(reading({ phase: 1 }), job(changes), US)
      return `${title} | ${what} | ${/The \w+ as given/.exec(how)?.[0]} | ${path}`
    }
    const step = { lasts: '5 min', speed: '350 rpm' }
    expect(said({ 'duty.phases.1': { ...step, name: 'sawing', power: '300 W' } })).toBe(
      'Current during sawing | the current during sawing | The power as given | duty.phases.1.power',
    )
    expect(said({ 'duty.phases.1': { ...step, name: ' ', fanTorque: '2 N·m' } })).toBe(
      'Current during step 2 | the current during step 2 | The torque as given | duty.phases.1.fanTorque',
    )
  })

  it('first, what takes away most; nothing that is known or tells next to nothing', () => {
    expect(firstToMeasure(OPENS)?.name).toBe('current 2')
    const [best, ...rest] = OPENS.settling
    expect(firstToMeasure({ ...OPENS, settling: [{ ...best, known: true, gain: 0 }, ...rest] })?.name).toBe(
      'ohms',
    )
    expect(firstToMeasure({ ...OPENS, settling: [reading({ gain: 0.049 })] })).toBeNull()
    expect(firstToMeasure({ ...OPENS, settling: [reading({ gain: 0.05 })] })).not.toBeNull()
  })

  it('counted, with the first named', () => {
    const words = (changes: Partial<Sure>) => estimatedWords({ ...OPENS, ...changes }, mill, US)
    expect([
      words({}),
      words({ settling: [reading({ gain: 0.01 })] }),
      words({ estimated: 0, settling: [reading({ known: true, gain: 0 })] }),
    ]).toMatchInlineSnapshot(`
      [
        "3 of 4 inputs estimated: measure the current during milling first.",
        "3 of 4 inputs estimated; no single one would tell much more.",
        "Everything that bears on it has been measured.",
      ]
    `)
  })
})

describe('the report', () => {
  it('of a job that opens', () => {
    expect(visible(sureLines(OPENS, mill, US).join('\n'))).toMatchInlineSnapshot(`
      "Between 15 and 39~min, eight times in ten.
      200 samples: the cutoff opens in 96 of 100; it lasts in 2 of 100; the winding gets too hot in 2 of 100.

      Forty equally likely outcomes: 15~min, 16~min, 16~min, 17~min, 17~min, 18~min, 19~min, 19~min, 20~min, 21~min, 21~min, 22~min, 22~min, 23~min, 24~min, 24~min, 25~min, 25~min, 26~min, 27~min, 27~min, 28~min, 29~min, 29~min, 30~min, 30~min, 31~min, 32~min, 32~min, 33~min, 33~min, 34~min, 35~min, 35~min, 36~min, 37~min, 37~min, 38~min, 38~min, never.
      Hottest winding, eight times in ten: 118 to 171~°C.

      3 of 4 inputs estimated: measure the current during milling first.
        If measured             it would be               takes away of the doubt
        as known now            15 to 39~min
        Current during milling  20 to 33~min              24~%
        Winding ohms            17 to 35~min              14~%
        Air around the motor    15 to 38~min              2~%"
    `)
  })
  it('of one that lasts, in °F', () => {
    expect(visible(sureLines(LASTS, mill, FAHRENHEIT).join('\n'))).toMatchInlineSnapshot(`
      "It lasts in at least 9 of 10 likely cases. The winding gets to between 187 and 244~°F, eight times in ten.
      200 samples: it lasts in 96 of 100; the cutoff opens in 4 of 100.

      Forty equally likely outcomes: 15~min, 16~min, never, never, never, never, never, never, never, never, never, never, never, never, never, never, never, never, never, never, never, never, never, never, never, never, never, never, never, never, never, never, never, never, never, never, never, never, never, never.
      Hottest winding, eight times in ten: 187 to 244~°F.

      1 of 4 inputs estimated: measure the current during milling first.
        If measured             winding                   takes away of the doubt
        as known now            187 to 244~°F
        Current during milling  198 to 234~°F             24~%"
    `)
  })
  it('with everything measured: no table, and readings that made no motor told', () => {
    const all: Sure = {
      ...OPENS,
      settling: [reading({ known: true, gain: 0 })],
      estimated: 0,
      measurable: 1,
      without: 3,
    }
    const lines = sureLines(all, mill, METRIC)
    expect(lines).toContain('3 more had readings that make no motor.')
    expect(lines.at(-1)).toBe('Everything that bears on it has been measured.')
  })
})
