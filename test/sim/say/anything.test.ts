// Two hundred jobs drawn at random: each is run, judged and told, and no sentence holds what is no word or number.
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { fieldOf } from '../../../sim/field.ts'
import { judge } from '../../../sim/judge.ts'
import { read } from '../../../sim/read.ts'
import { boundsOf } from '../../../sim/reading.ts'
import { finish, run } from '../../../sim/run.ts'
import { answerOf, inShort } from '../../../sim/say/answer.ts'
import { csvLines } from '../../../sim/say/csv.ts'
import { jobReport } from '../../../sim/say/report.ts'
import { STATIONS, type Station, stationRows } from '../../../sim/say/stations.ts'
import { inputsOf, schemaAt, withChange } from '../../../sim/scenario.ts'
import { parseQuantity, toUnit } from '../../../sim/quantity.ts'
import { DEMOS, scenario } from '../../jobs.ts'
import { agrees } from './short.ts'
import { FAHRENHEIT, METRIC, US } from './units.ts'

/** A demonstration with a dozen of its inputs moved: quantities up to five times either way, choices at will. */
const drawn = fc.constantFrom(...DEMOS).chain((name) => {
  const whole = scenario({}, name)
  const inputs = inputsOf(whole).filter(
    ({ path, text }) =>
      text !== '' && !/^(plate|bench|variants|name|about|duty.repeatFor)|\.name$/.test(path),
  )
  const move = fc.constantFrom(...inputs).chain((input) => {
    const field = fieldOf(schemaAt(input.path)!)!
    if (field.kind === 'choice')
      return fc.constantFrom(...Object.keys(field.options)).map((word) => [input.path, word] as const)
    if (field.kind === 'text') return fc.constant([input.path, input.text] as const)
    const { low, high, unit } = boundsOf(field)
    const now = parseQuantity(input.text, field.dimension)
    const from = now.ok ? now.value : high
    const value = fc.oneof(
      {
        weight: 9,
        arbitrary: fc.double({ min: -1.6, max: 1.6, noNaN: true }).map((power) => from * Math.exp(power)),
      },
      { weight: 1, arbitrary: fc.constantFrom(low, high) },
    )
    return value.map(
      (v) => [input.path, `${toUnit(Math.min(high, Math.max(low, v)), unit)} ${unit}`] as const,
    )
  })
  // Short, and warm from the start: in a few minutes something comes of it.
  const minutes = fc.integer({ min: 1, max: 5 })
  const start = fc.integer({ min: 20, max: 125 })
  return fc
    .tuple(fc.array(move, { minLength: 6, maxLength: 16 }), minutes, start)
    .map(([moves, length, warm]) =>
      moves.reduce(
        (before, [path, text]) => withChange(before, path, text),
        withChange(withChange(whole, 'duty.repeatFor', `${length} min`), 'duty.start', `${warm} °C`),
      ),
    )
})

/** Significant digits of a number as written: zeros at the end of a whole one say only how large it is. */
const digitsOf = (number: string): number => {
  const plain = number.replaceAll('\u202f', '')
  const digits = plain.replace('.', '').replace(/^0+/, '')
  return plain.includes('.') ? digits.length : digits.replace(/0+$/, '').length
}

it('no sentence of any of them holds NaN, undefined or Infinity', () => {
  const seen = new Map<string, number>()
  const count = (what: string) => seen.set(what, (seen.get(what) ?? 0) + 1)
  fc.assert(
    fc.property(drawn, (given) => {
      const reading = read(given)
      if (!reading.ok) return void count('refused')
      const { job, notes } = reading
      const { trace } = finish(run(job))
      const figures = judge(job, trace)
      for (const units of [US, METRIC, FAHRENHEIT]) {
        const told = [
          jobReport(inShort(job), { job, trace, figures, notes, check: null }, units),
          ...(Object.keys(STATIONS) as Station[]).flatMap((station) =>
            stationRows(station, job, units).map(({ label, value }) => `${label}: ${value}`),
          ),
        ].join('\n')
        expect(told).not.toMatch(/NaN|undefined|Infinity|null|\[object/)
        const { sentence, support, short } = answerOf(job, figures, units)
        agrees(short, `${sentence} ${support}`)
        expect(sentence).toMatch(/^(Yes|No|Barely)\b.+\.$/)
        expect(support).toMatch(/\.$/)
        // Never more than three significant digits in an answer.
        for (const number of `${sentence} ${support}`.match(/\d[\d\u202f]*(\.\d+)?/g) ?? [])
          expect(digitsOf(number), number).toBeLessThanOrEqual(3)
      }
      const [, first] = csvLines(job, trace)
      expect(first).not.toMatch(/[a-z]{2}/i)
      count(answerOf(job, figures, US).verdict)
      count(trace.ending.kind)
      if (figures.stalled !== null) count('stalled')
      if (figures.firstOpening !== null) count('opens')
    }),
    { seed: 41, numRuns: 212 },
  )
  // Two hundred were told, of every kind.
  expect((seen.get('Yes') ?? 0) + (seen.get('Barely') ?? 0) + (seen.get('No') ?? 0)).toBeGreaterThanOrEqual(
    200,
  )
  for (const kind of ['Yes', 'Barely', 'No', 'stalled', 'opens', 'finished', 'refused'])
    expect(seen.get(kind), kind).toBeGreaterThan(2)
})
