// Belt length and centres, steps of a pulley, and what is told of a drive that does not fit or pulls too hard.
import { describe, expect, it } from 'vitest'
import { shaftPull, workingShaftPull } from '../../../sim/belting/grip.ts'
import { beltLength, smallWrap } from '../../../sim/belting/geometry.ts'
import { stockBelt } from '../../../sim/belting/stock.ts'
import { shaftPulls } from '../../../sim/drive/pull.ts'
import { stepFits } from '../../../sim/drive/steps.ts'
import { greatestShaftPull, USUAL_BEARING } from '../../../sim/handbook/bearing.ts'
import { ratio, stagesOf } from '../../../sim/parts/belt.ts'
import { fromUnit } from '../../../sim/quantity.ts'
import { read } from '../../../sim/read.ts'
import { oracle } from '../../checks/files.ts'
import { type Changes, job, scenario } from '../../jobs.ts'

const inch = (size: number) => fromUnit(size, 'in')
const reading = (changes: Changes) => read(scenario(changes))
const notes = (changes: Changes, path: string) => {
  const found = reading(changes)
  if (!found.ok) throw new Error(JSON.stringify(found.problems))
  return found.notes.filter((note) => note.path === path).map(({ wrong }) => wrong)
}
const problems = (changes: Changes) => {
  const found = reading(changes)
  return found.ok ? [] : found.problems
}

const PULLEYS = { 'belt.motorPulley': '3 in', 'belt.machinePulley': '9 in', 'belt.centreDistance': null }
const STEPS = {
  ...PULLEYS,
  'belt.length': '60 in',
  'belt.steps': [
    { driving: '4 in', driven: '8 in' },
    { driving: '5 in', driven: '6 in' },
  ],
}

describe('length and centres', () => {
  const centres = (changes: Changes) => stagesOf(job({ ...PULLEYS, ...changes }).parts.belt)[0].centres
  it('centres follow from the length: C = (B + √(B² − 8 (D − d)²))/8 with B = 2L − π(D + d), handbook approximation', () => {
    const b = 2 * 60 - Math.PI * 12
    const handbook = (b + Math.sqrt(b * b - 8 * 6 ** 2)) / 8
    expect(Math.abs(centres({ 'belt.length': '60 in' }) / inch(handbook) - 1)).toBeLessThan(2e-4)
  })
  it('the length goes back to the same centres; shafts that were measured stay where they are', () => {
    const found = centres({ 'belt.length': '60 in' })
    expect(beltLength(inch(3), inch(9), found)).toBeCloseTo(inch(60), 10)
    expect(centres({ 'belt.length': '60 in', 'belt.centreDistance': '12 in' })).toBeCloseTo(inch(12), 12)
    expect(centres({})).toBeCloseTo(inch(12), 12)
  })
  it('a first stage has a length of its own', () => {
    const two = {
      'belt.jackshaftLarge': '6 in',
      'belt.jackshaftSmall': '2 in',
      'belt.jackshaftLength': '40 in',
    }
    const [first, last] = stagesOf(job({ ...PULLEYS, ...two }).parts.belt)
    expect(beltLength(inch(3), inch(6), first.centres)).toBeCloseTo(inch(40), 10)
    expect(last.centres).toBeCloseTo(inch(11), 12)
  })
  it('a belt too short for its pulleys is a problem that says what would do', () => {
    // Rims touching: 6 in apart, sin γ = 6/12, so 12 cos 30° + 6π + 6 (π/6) = 32.4 in.
    const [{ path, wrong, wouldDo, offers }] = problems({ ...PULLEYS, 'belt.length': '32 in' })
    expect(path).toBe('belt.length')
    expect(wrong).toContain('(32.4 in)')
    expect(wouldDo).toContain('sold')
    expect(problems({ ...PULLEYS, 'belt.length': offers![0] })).toEqual([])
    expect(problems({ ...PULLEYS, 'belt.length': '32.5 in' })).toEqual([])
  })
  it('both given and at odds is told, within a take-up of 2 % is not', () => {
    const both = (size: string) =>
      notes({ ...PULLEYS, 'belt.centreDistance': size, 'belt.length': '60 in' }, 'belt.length')
    expect(both('20.1 in')).toEqual([])
    expect(both('12 in')[0]).toContain('(43.6 in)')
  })
  it('the nearest that is sold is the nearest of them all', () => {
    const { length, centres: there } = stockBelt(inch(3), inch(9), inch(19))!
    const off = (size: number) => Math.abs(beltLength(inch(3), inch(9), inch(19)) - inch(size))
    expect(length).toBeCloseTo(inch(57), 10)
    expect(off(57)).toBeLessThan(Math.min(off(56), off(58)))
    expect(beltLength(inch(3), inch(9), there)).toBeCloseTo(inch(57), 10)
  })
})

describe('steps', () => {
  it('the step in use is the drive; without one it is the first', () => {
    const ratios = [undefined, '1', '2', '3'].map((step) =>
      ratio(job({ ...STEPS, ...(step ? { 'belt.step': step } : {}) }).parts.belt),
    )
    expect(ratios.map((each) => Number(each.toFixed(9)))).toEqual([3, 3, 2, 1.2])
  })
  it('a variant takes another by its path', () => {
    const found = read(scenario(STEPS), { name: 'other', changes: { 'belt.step': '3' } })
    expect(found.ok && ratio(found.job.parts.belt)).toBeCloseTo(1.2, 12)
  })
  it('with a jackshaft the steps are the last stage’s', () => {
    const two = { 'belt.jackshaftLarge': '6 in', 'belt.jackshaftSmall': '2 in', 'belt.step': '2' }
    expect(ratio(job({ ...STEPS, ...two }).parts.belt)).toBeCloseTo((6 / 3) * (8 / 4), 12)
  })
  it('one belt: what each step wants at the shafts as they stand', () => {
    const fits = stepFits(job({ ...STEPS, 'belt.step': '2' }).parts.belt)
    const { centres } = stagesOf(job({ ...STEPS, 'belt.step': '2' }).parts.belt)[0]
    expect(fits.map(({ inUse }) => inUse)).toEqual([false, true, false])
    expect(fits[1].longer).toBeCloseTo(0, 12)
    expect(fits[2].longer).toBeCloseTo(beltLength(inch(5), inch(6), centres) / inch(60) - 1, 10)
    expect(notes({ ...STEPS, 'belt.step': '2' }, 'belt.steps')[0]).toContain('step 3')
    const even = { ...STEPS, 'belt.steps': [{ driving: '4 in', driven: '8 in' }] }
    expect(notes(even, 'belt.steps')).toEqual([])
  })
  it('a step that is not there is a problem', () => {
    expect(problems({ ...STEPS, 'belt.step': '4' })).toMatchObject([
      { path: 'belt.step', offers: ['1', '2', '3'] },
    ])
    expect(problems({ ...PULLEYS, 'belt.step': '2' })).toMatchObject([{ path: 'belt.step' }])
    expect(problems({ ...STEPS, 'belt.step': '1.5' })).toMatchObject([{ path: 'belt.step' }])
    expect(problems({ ...STEPS, 'belt.steps': [{ driving: '4 in' }] })).toMatchObject([
      { path: 'belt.steps.0.driven' },
    ])
  })
  it('is refused with its belt where that does not go round the step in use', () => {
    const short = { ...STEPS, 'belt.length': '31 in', 'belt.step': '2' }
    expect(problems(short)).toMatchObject([{ path: 'belt.length' }])
    expect(problems({ ...short, 'belt.step': '3' })).toEqual([])
  })
})

describe('pull on the shafts', () => {
  const { inputs, answers } = oracle<Record<string, number>, Record<string, number>>('O09')
  const wrap = smallWrap(inputs.d_mm, inputs.D_mm, inputs.C_mm)
  const { T1_N: tight, T2_N: slack } = answers
  it('is the sum of both strands’ pulls as vectors: along the shafts’ line and across it', () => {
    const lean = (Math.PI - wrap) / 2
    const along = (tight + slack) * Math.cos(lean)
    const across = (tight - slack) * Math.sin(lean)
    const found = workingShaftPull((tight + slack) / 2, 0, tight - slack, wrap)
    expect(found).toBeCloseTo(Math.hypot(along, across), 9)
    expect(workingShaftPull((tight + slack) / 2, 0, 0, wrap)).toBeCloseTo(
      shaftPull((tight + slack) / 2, wrap),
      9,
    )
  })
  it('half wrapped round, at rest: twice the pull of a strand; whirling takes its share away', () => {
    expect(shaftPull(100, Math.PI)).toBeCloseTo(200, 9)
    expect(workingShaftPull(100, 30, 0, Math.PI)).toBeCloseTo(140, 9)
  })
  it('of a job: strands as fitted, greater at work where the wrap is short, none where no belt is said', () => {
    const belted = job({
      ...PULLEYS,
      'belt.centreDistance': '8 in',
      'belt.section': 'A',
      'belt.carries': '20 N·m',
    })
    const [{ rest, working, strand }] = shaftPulls(belted)!
    const stage = stagesOf(belted.parts.belt)[0]
    expect(rest).toBeCloseTo(
      2 * strand * Math.sin(smallWrap(stage.driving, stage.driven, stage.centres) / 2),
      9,
    )
    expect(working).not.toBe(rest)
    expect(shaftPulls(job(PULLEYS))).toBeNull()
    expect(shaftPulls(job({ ...PULLEYS, 'belt.section': 'timing' }))).toBeNull()
  })
  it('a belt nobody has seen slip is fitted to carry what it has to at the plate’s speed', () => {
    const left = job({ ...PULLEYS, 'belt.section': 'A' })
    const [{ strand }] = shaftPulls(left)!
    // 0.105 kg/m at 4000 rpm on 3 in: 16 m/s, 27 N of every strand is its own whirling.
    const v = fromUnit(4000, 'rpm') * inch(1.5)
    const [{ strand: still }] = shaftPulls(
      job({ ...PULLEYS, 'belt.section': 'A', 'belt.carries': `${left.parts.belt.carries} N·m` }),
    )!
    expect(strand - still).toBeCloseTo(0.105 * v * v, 6)
  })
  it('bearing: 9.56 kN stands for a million turns; ten thousand hours at 3000 rpm are 1800 million', () => {
    expect(greatestShaftPull(USUAL_BEARING, fromUnit(3000, 'rpm'))).toBeCloseTo(
      9560 / Math.cbrt(1800) / 1.3,
      6,
    )
    expect(notes({ ...PULLEYS, 'belt.section': 'A' }, 'belt.motorPulley')).toEqual([])
    const tight = { ...PULLEYS, 'belt.section': 'A', 'belt.carries': '200 N·m' }
    expect(notes(tight, 'belt.motorPulley')[0]).toContain('bearing')
  })
})

describe('limits are told by the reader', () => {
  const A = { ...PULLEYS, 'belt.section': 'A' }
  it.each<[string, Changes, string, string]>([
    ['smallest pulley', { ...A, 'belt.motorPulley': '2 in' }, 'belt.motorPulley', 'bends round'],
    [
      'wrap',
      { ...A, 'belt.machinePulley': '15 in', 'belt.centreDistance': '10 in' },
      'belt.centreDistance',
      'wraps only',
    ],
    ['room', { ...A, 'belt.centreDistance': '5 in' }, 'belt.centreDistance', 'between centres'],
    ['belt speed', { ...A, 'duty.phases.2.speed': '2580 rpm' }, 'belt.motorPulley', 'need balancing'],
    ['rim speed', { ...A, 'duty.phases.2.speed': '3000 rpm' }, 'belt.motorPulley', 'burst'],
    [
      'a belt too light for its pull',
      { ...PULLEYS, 'belt.section': 'PH', 'belt.ribs': '1' },
      'belt.section',
      'tight strand',
    ],
    ['steepness', { ...A, 'belt.machinePulley': '19 in' }, 'belt.machinePulley', 'steep'],
  ])('%s', (_, changes, path, words) => {
    expect(notes(changes, path).some((each) => each.includes(words))).toBe(true)
    expect(notes(A, path).some((each) => each.includes(words))).toBe(false)
  })
  it('at the step in use', () => {
    const step = {
      ...STEPS,
      'belt.section': 'A',
      'belt.step': '2',
      'belt.steps': [{ driving: '2 in', driven: '10 in' }],
    }
    expect(notes(step, 'belt.steps.0.driving')[0]).toContain('bends round')
  })
  it('six to one exactly is not steep, however its inches come out', () => {
    expect(notes({ ...PULLEYS, 'belt.motorPulley': '1.5 in' }, 'belt.machinePulley')).toEqual([])
  })
})
