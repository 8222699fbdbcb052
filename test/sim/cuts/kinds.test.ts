// Every kind of cut: finite within the bounds of its inputs, growing where it must.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { CutAnswer, Worked } from '../../../sim/cuts/answer.ts'
import { type CutName, CUTS } from '../../../sim/cuts/index.ts'
import { inputsOf, readCut } from '../../../sim/cuts/read.ts'
import { fieldOf } from '../../../sim/field.ts'
import { boundsOf } from '../../../sim/reading.ts'
import { fromUnit, unitsOf } from '../../../sim/quantity.ts'
import { near } from '../physics/lab.ts'
import { ask, EXAMPLES, type Texts } from './ask.ts'

const names = Object.keys(CUTS) as CutName[]

/** The texts worth trying for an input: both bounds, or every word. */
function ends(name: CutName, input: string): string[] {
  const field = fieldOf(inputsOf(name)[input])
  if (field?.kind === 'quantity') return [field.low, field.high]
  if (field?.kind === 'choice') return Object.keys(field.options)
  throw new Error(`${input} is no input`)
}

function sound(answer: CutAnswer): void {
  const { torque, power, speed, low, high } = answer
  for (const value of [torque, power, speed, low, high]) expect(Number.isFinite(value)).toBe(true)
  expect(torque).toBeGreaterThanOrEqual(0)
  expect(speed).toBeGreaterThan(0)
  expect(low).toBeLessThanOrEqual(torque)
  expect(high).toBeGreaterThanOrEqual(torque)
  expect(power).toBeCloseTo(torque * speed, 6)
  expect(answer.row).not.toMatch(/NaN|undefined|Infinity/)
  for (const text of [answer.row, answer.source]) expect(text.length).toBeGreaterThan(4)
  if (answer.standing !== 'given' && torque > 0) expect(high).toBeGreaterThan(low)
}

function soundOrRefused(worked: Worked): boolean {
  if (worked.ok) {
    sound(worked.answer)
    return true
  }
  expect(worked.problems.length).toBeGreaterThan(0)
  for (const { path, wrong, wouldDo } of worked.problems)
    for (const text of [path, wrong, wouldDo]) expect(text).not.toBe('')
  if (worked.asked) sound(worked.asked)
  return false
}

describe.each(names)('%s', (name) => {
  it('has a working example', () => {
    sound(ask(name, EXAMPLES[name]))
  })

  it('answers or refuses in words at each end of every input', () => {
    let answers = 0
    for (const input of Object.keys(inputsOf(name)))
      for (const text of ends(name, input))
        if (soundOrRefused(readCut(name, { ...EXAMPLES[name], [input]: text }))) answers++
    expect(answers).toBeGreaterThan(0)
  })

  it('and wherever several inputs are at an end', () => {
    const inputs = Object.keys(inputsOf(name))
    const atEnds = fc.tuple(
      ...inputs.map((input) =>
        fc.option(fc.constantFrom(...ends(name, input)), { nil: EXAMPLES[name][input] }),
      ),
    )
    fc.assert(
      fc.property(atEnds, (texts) => {
        const given = inputs.map((input, n) => [input, texts[n]]).filter(([, text]) => text !== undefined)
        soundOrRefused(readCut(name, Object.fromEntries(given)))
      }),
      { seed: 4, numRuns: 300 },
    )
  })

  it('says what is missing', () => {
    const worked = readCut(name, {})
    if (worked.ok) throw new Error('answered nothing')
    expect(worked.problems[0].wrong).toMatch(/missing/)
  })
})

/** Inputs along which the torque grows, all else as in the example. */
const GROWING: readonly (readonly [CutName, string, Texts?])[] = [
  ['turning', 'depth'],
  ['turning', 'feed'],
  ['turning', 'diameter'],
  ['drilling', 'diameter'],
  ['drilling', 'feed'],
  ['milling', 'width'],
  ['milling', 'depth'],
  ['milling', 'tooth'],
  ['milling', 'teeth'],
  ['sawingWood', 'kerf'],
  ['sawingWood', 'height'],
  ['sawingWood', 'feed'],
  ['sawingMetal', 'kerf'],
  ['sawingMetal', 'width'],
  ['sawingMetal', 'height'],
  ['beltGrinding', 'width'],
  ['beltGrinding', 'press'],
  ['beltGrinding', 'diameter', { press: '50 N' }],
  ['wheelGrinding', 'press'],
  ['wheelGrinding', 'depth'],
  ['wheelGrinding', 'feed'],
  ['crushing', 'mass'],
  ['hoisting', 'mass'],
  ['hoisting', 'diameter'],
  ['wheel', 'mass'],
  ['wheel', 'diameter'],
  ['wheel', 'rolling'],
  ['stirring', 'diameter'],
  ['stirring', 'spindle'],
  ['stirring', 'weight'],
  ['kneading', 'mass'],
  ['torque', 'torque'],
  ['force', 'force'],
  ['force', 'radius'],
]

describe('more work takes more torque', () => {
  it.each(GROWING.map(([name, input, also = {}]) => ({ name, input, also })))(
    '$name along $input',
    ({ name, input, also }) => {
      const field = fieldOf(inputsOf(name)[input])
      if (field?.kind !== 'quantity') throw new Error(`${input} is no quantity`)
      const { low, high } = boundsOf(field)
      const [unit] = unitsOf(field.dimension)
      // A deeper cut than half the diameter is refused; a diameter must leave room for the depth.
      const [from, to] =
        name === 'turning' && input === 'depth'
          ? [low, 0.024]
          : name === 'turning' && input === 'diameter'
            ? [0.003, high]
            : [low, high]
      let before = -1
      for (let n = 0; n <= 40; n++) {
        const value = from === 0 ? (to * n) / 40 : from * (to / from) ** (n / 40)
        const { torque } = ask(name, { ...EXAMPLES[name], ...also, [input]: `${value} ${unit}`.trim() })
        expect(torque).toBeGreaterThan(before)
        before = torque
      }
    },
  )

  it('a duller edge takes more', () => {
    for (const name of ['turning', 'drilling', 'milling', 'sawingMetal'] as const) {
      const [sharp, used, dull] = ['sharp', 'used', 'dull'].map(
        (edge) => ask(name, { ...EXAMPLES[name], edge }).torque,
      )
      near(used / sharp, 1.3, 1e-12)
      near(dull / sharp, 1.8, 1e-12)
    }
  })

  it('a time half as long takes twice the torque of a mill', () => {
    const slow = ask('crushing', EXAMPLES.crushing)
    const fast = ask('crushing', { ...EXAMPLES.crushing, lasts: '15 min' })
    near(fast.torque / slow.torque, 2, 1e-12)
  })

  it('the same power at twice the spindle speed is half the torque', () => {
    const { power, torque } = ask('sawingWood', EXAMPLES.sawingWood)
    const fast = ask('sawingWood', { ...EXAMPLES.sawingWood, spindle: '1400 rpm' })
    near(fast.power / power, 1, 1e-12)
    near(fast.torque / torque, 0.5, 1e-12)
  })
})

describe('surface speed and spindle speed are one', () => {
  it.each(names.filter((name) => 'speed' in inputsOf(name)))('%s', (name) => {
    const byTurns = ask(name, { ...EXAMPLES[name] })
    const { spindle: _, ...rest } = EXAMPLES[name]
    const [number, unit] = EXAMPLES[name].diameter.split(' ')
    const diameter = fromUnit(Number(number), unit)
    const bySurface = ask(name, { ...rest, speed: `${(byTurns.speed * diameter) / 2} m/s` })
    near(bySurface.torque, byTurns.torque, 1e-9)
    near(bySurface.speed, byTurns.speed, 1e-9)
  })
})
