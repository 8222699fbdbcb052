// Every kind of cut: finite within the bounds of its inputs, growing where it must, refusing what it must.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { CutAnswer, Worked } from '../../../sim/cuts/answer.ts'
import { type CutName, CUTS } from '../../../sim/cuts/index.ts'
import { inputsOf, readCut } from '../../../sim/cuts/read.ts'
import { fieldOf } from '../../../sim/field.ts'
import { boundsOf } from '../../../sim/reading.ts'
import { unitsOf } from '../../../sim/quantity.ts'
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

describe('a load that can drive the motor is refused', () => {
  const BRAKE = 'Needs a brake; this drive cannot hold or lower.'
  const refusal = (name: CutName, texts: Texts) => {
    const worked = readCut(name, { ...EXAMPLES[name], ...texts })
    if (worked.ok) throw new Error(`answered ${worked.answer.torque} N·m`)
    return { ...worked.problems[0], asked: worked.asked }
  }

  it('lowering, whatever holds it, with the torque it would ask', () => {
    const up = ask('hoisting', EXAMPLES.hoisting)
    for (const holds of ['nothing', 'brake']) {
      const { path, wrong, asked } = refusal('hoisting', { way: 'down', holds })
      expect([path, wrong]).toEqual(['way', BRAKE])
      expect(asked?.torque).toBe(up.torque)
    }
  })

  it('raising with nothing that holds the load, and the answer with a brake says so', () => {
    const { path, wrong, asked } = refusal('hoisting', { holds: 'nothing' })
    expect([path, wrong]).toEqual(['holds', BRAKE])
    expect(asked?.caution).toMatch(/Up only, and never people/)
    expect(ask('hoisting', EXAMPLES.hoisting).caution).toMatch(/Up only, and never people/)
  })

  it('people, with no number at all', () => {
    const { path, wrong, asked } = refusal('hoisting', { lifts: 'people' })
    expect([path, wrong, asked]).toEqual(['lifts', 'This is no drive for lifting people.', null])
  })

  it('downhill as soon as the slope may beat the rolling drag', () => {
    // A worn road may roll with 1 % of the weight.
    expect(refusal('wheel', { slope: '-1.01 %' })).toMatchObject({ path: 'slope', wrong: BRAKE })
    expect(refusal('wheel', { slope: '-30 %' })).toMatchObject({ path: 'slope', wrong: BRAKE })
    expect(ask('wheel', { ...EXAMPLES.wheel, slope: '-0.99 %' }).low).toBeGreaterThan(0)
    expect(refusal('wheel', { rolling: '3 %', slope: '-3.01 %' })).toMatchObject({
      path: 'slope',
      wrong: BRAKE,
    })
  })

  it('uphill says it rolls back', () => {
    expect(ask('wheel', { ...EXAMPLES.wheel, slope: '1 %' }).caution).toMatch(/rolls back/)
    expect(ask('wheel', { ...EXAMPLES.wheel, slope: '0 %' }).caution).toBeNull()
  })

  it('torque and force below nothing', () => {
    expect(refusal('torque', { torque: '-1 N·m' }).wrong).toMatch(/needs a brake/)
    expect(refusal('force', { force: '-1 N' }).wrong).toMatch(/needs a brake/)
  })
})

describe('what does not fit together is refused where it stands', () => {
  const at = (name: CutName, texts: Record<string, unknown>) => {
    const worked = readCut(name, texts)
    return worked.ok ? null : worked.problems.map(({ path, wrong }) => `${path}: ${wrong}`)
  }
  const { turning, milling, wheelGrinding } = EXAMPLES
  const without = (texts: Texts, ...inputs: string[]) =>
    Object.fromEntries(Object.entries(texts).filter(([input]) => !inputs.includes(input)))

  it('speed: none, both, too fast', () => {
    expect(at('turning', without(turning, 'spindle'))).toEqual(['speed: The speed is missing.'])
    expect(at('turning', { ...turning, speed: '1 m/s' })).toEqual([
      'speed: Surface speed and spindle speed are both given.',
    ])
    expect(at('turning', { ...without(turning, 'spindle'), diameter: '3 mm', speed: '10 m/s' })).toEqual([
      'speed: At this diameter that is over 60 000 rpm.',
    ])
  })

  it('depth beyond the axis, feeds none and both, no load on a wheel', () => {
    expect(at('turning', { ...turning, depth: '26 mm' })).toEqual([
      'depth: The cut is deeper than half the diameter.',
    ])
    expect(at('milling', without(milling, 'tooth'))).toEqual(['feed: The feed is missing.'])
    expect(at('milling', { ...milling, feed: '0.01 m/s' })).toEqual([
      'feed: Table feed and feed for each tooth are both given.',
    ])
    expect(at('wheelGrinding', without(wheelGrinding, 'width'))).toEqual(['press: The load is missing.'])
  })

  it('names that are no input’s, and every problem at once', () => {
    const worked = readCut('turning', { ...turning, dept: '1 mm', feed: '0.1 V', material: 'cheese' })
    if (worked.ok) throw new Error('answered')
    expect(worked.problems.map(({ path }) => path)).toEqual(['dept', 'material', 'feed'])
    expect(worked.problems[0].wouldDo).toBe('Did you mean "depth"?')
  })

  it('a value written out with its source and bounds is read as in a job', () => {
    const detailed = readCut('turning', {
      ...turning,
      depth: { value: '1 mm', source: 'rule', low: '0.9 mm', high: '1.1 mm' },
    })
    expect(detailed).toEqual(readCut('turning', turning))
    expect(at('turning', { ...turning, depth: { value: '1 mm', low: '2 mm' } })).toEqual([
      'depth: The low bound beside it, 2 mm, is on the wrong side of the value.',
    ])
  })
})

describe('surface speed and spindle speed are one', () => {
  it.each(names.filter((name) => 'speed' in inputsOf(name)))('%s', (name) => {
    const byTurns = ask(name, { ...EXAMPLES[name] })
    const { spindle: _, ...rest } = EXAMPLES[name]
    const diameter = boundsFree(EXAMPLES[name].diameter)
    const bySurface = ask(name, { ...rest, speed: `${(byTurns.speed * diameter) / 2} m/s` })
    near(bySurface.torque, byTurns.torque, 1e-9)
    near(bySurface.speed, byTurns.speed, 1e-9)
  })
})

/** Metres of "14 in" or "50 mm". */
function boundsFree(text: string): number {
  const [number, unit] = text.split(' ')
  return Number(number) * (unit === 'in' ? 0.0254 : 0.001)
}
