// What a cut refuses: loads that can drive the motor, and inputs that do not fit together.
import { describe, expect, it } from 'vitest'
import type { CutName } from '../../../sim/cuts/index.ts'
import { readCut } from '../../../sim/cuts/read.ts'
import { ask, EXAMPLES, type Texts } from './ask.ts'

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
