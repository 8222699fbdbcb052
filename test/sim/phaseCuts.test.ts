// A step that names a cut: its torque at the step's speed, or the speed its surface wants; what is amiss, and where.
import { describe, expect, it } from 'vitest'
import { type CutName, CUTS } from '../../sim/cuts/index.ts'
import { namedInputs } from '../../sim/cuts/named.ts'
import { meanTorque } from '../../sim/duty.ts'
import { fromUnit, toUnit } from '../../sim/quantity.ts'
import { read } from '../../sim/read.ts'
import { inputAt, inputsOf, type Variant, withChange, withVariant } from '../../sim/scenario.ts'
import { type Changes, job, scenario } from '../jobs.ts'
import { ask, EXAMPLES } from './cuts/ask.ts'
import { near } from './physics/lab.ts'

const AT = 'duty.phases.1'
const TURNING = {
  kind: 'turning',
  material: 'plain carbon HB 160-180',
  depth: '1 mm',
  feed: '0.1 mm',
  diameter: '50 mm',
}
/** The first example job with a cut in its second step, which rests otherwise. */
const whole = (cut: unknown, changes: Changes = {}) =>
  scenario({ [AT]: { name: 'turning', lasts: '5 min', cut }, ...changes })
const readWith = (cut: unknown, changes: Changes = {}, variant?: Variant) => {
  const reading = read(whole(cut, changes), variant)
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems))
  return reading
}
const problemsWith = (cut: unknown, changes: Changes = {}, variant?: Variant) => {
  const reading = read(whole(cut, changes), variant)
  return reading.ok ? [] : reading.problems.map(({ path, wrong }) => `${path}: ${wrong}`)
}
const SPEED = { [`${AT}.speed`]: '191 rpm' }

describe('torque and speed', () => {
  it('by hand: 2.13 kJ/cm³ × 3^0.2 × 1.3 × 0.1 mm² at 24.5 mm, at the speed of the step', () => {
    const { job, cuts } = readWith(TURNING, SPEED)
    const force = 2.13e9 * 3 ** 0.2 * 1.3 * 1e-3 * 0.1e-3
    const { cut, speed } = job.duty.phases[1]
    if (cut.kind !== 'torque') throw new Error(cut.kind)
    near(force, 345, 1e-3)
    near(cut.torque, force * 24.5e-3, 1e-12)
    near(speed, fromUnit(191, 'rpm'), 1e-12)
    expect(cuts).toEqual([
      {
        ...ask('turning', { ...EXAMPLES.turning, material: TURNING.material, spindle: '191 rpm' }),
        phase: 1,
        kind: 'turning',
      },
    ])
    near(cuts[0].low / cut.torque, 0.75, 0.05)
    expect(cuts[0].high).toBeGreaterThan(cut.torque)
    expect(cuts[0].row).toContain('2.13 kJ/cm³')
  })

  it('the speed left out follows from the surface speed: 30 m/min on 50 mm is 191 rpm', () => {
    const { job } = readWith({ ...TURNING, speed: '30 m/min' })
    near(toUnit(job.duty.phases[1].speed, 'rpm'), 30_000 / (Math.PI * 50), 1e-12)
    near(meanTorque(job.duty.phases[1]), meanTorque(readWith(TURNING, SPEED).job.duty.phases[1]), 1e-12)
  })

  it('as the same torque written out: the same job', () => {
    const named = readWith(TURNING, SPEED).job
    const torque = `${meanTorque(named.duty.phases[1])} N·m`
    expect(job({ [AT]: { name: 'turning', lasts: '5 min', speed: '191 rpm', torque } })).toEqual(named)
  })

  it('a table goes on as fast, a stirred liquid grows with speed, a chip stays', () => {
    const kindOf = (kind: CutName) => {
      const { spindle, ...inputs } = EXAMPLES[kind]
      return readWith({ kind, ...inputs }, { [`${AT}.speed`]: spindle }).job.duty.phases[1]
    }
    for (const kind of Object.keys(CUTS) as CutName[]) {
      const phase = kindOf(kind)
      const answer = ask(kind, EXAMPLES[kind])
      const expected = {
        milling: 'power',
        sawingWood: 'power',
        wheelGrinding: 'power',
        stirring: 'fan',
      } as const
      expect(phase.cut.kind, kind).toBe(expected[kind as keyof typeof expected] ?? 'torque')
      near(meanTorque(phase), answer.torque, 1e-12)
      if (phase.cut.kind === 'power') near(phase.cut.power, answer.power, 1e-12)
      if (phase.cut.kind === 'fan') near(phase.cut.coefficient * phase.speed ** 2, answer.torque, 1e-12)
    }
  })

  it('a job without a named cut has none to tell', () => {
    const reading = read(scenario())
    expect(reading.ok && reading.cuts).toEqual([])
  })
})

describe('what is amiss, and where', () => {
  it.each<[string, unknown, Changes, string[]]>([
    ['no depth', { ...TURNING, depth: undefined }, SPEED, [`${AT}.cut.depth: Depth of cut is missing.`]],
    ['no such depth', { ...TURNING, depth: '1 V' }, SPEED, [expect.stringContaining(`${AT}.cut.depth: `)]],
    [
      'too deep',
      { ...TURNING, depth: '26 mm' },
      SPEED,
      [`${AT}.cut.depth: The cut is deeper than half the diameter.`],
    ],
    [
      'too deep a number',
      { ...TURNING, depth: '1 m' },
      SPEED,
      [`${AT}.cut.depth: 1 m is more than this can be.`],
    ],
    [
      'no such material',
      { ...TURNING, material: 'cheese' },
      SPEED,
      [`${AT}.cut.material: Material cannot be "cheese".`],
    ],
    ['no such input', { ...TURNING, dept: '1 mm' }, SPEED, [`${AT}.cut.dept: No input has this name.`]],
    [
      'an input of another kind',
      { ...TURNING, kerf: '1 mm' },
      SPEED,
      [`${AT}.cut.kerf: No input has this name.`],
    ],
    [
      'the spindle in it',
      { ...TURNING, spindle: '100 rpm' },
      SPEED,
      [`${AT}.cut.spindle: No input has this name.`],
    ],
    ['no speed', TURNING, {}, [`${AT}.cut.speed: The speed is missing.`]],
    [
      'two speeds',
      { ...TURNING, speed: '30 m/min' },
      SPEED,
      [`${AT}.cut.speed: Surface speed and spindle speed are both given.`],
    ],
    ['no turning', TURNING, { [`${AT}.speed`]: '0 rpm' }, [`${AT}.speed: 0 rpm is less than this can be.`]],
    ['no such speed', TURNING, { [`${AT}.speed`]: 'fast' }, [expect.stringContaining(`${AT}.speed: `)]],
    ['a speed that only the step can give', { kind: 'clay' }, {}, [`${AT}.speed: Spindle speed is missing.`]],
    [
      'no such kind',
      { ...TURNING, kind: 'turnin' },
      SPEED,
      [`${AT}.cut.kind: Kind of work cannot be "turnin".`],
    ],
    ['no kind', { depth: '1 mm' }, SPEED, [`${AT}.cut.kind: Kind of work is missing.`]],
    ['no group', 'turning', SPEED, [`${AT}.cut: This must be a group of inputs.`]],
    [
      'a list',
      [],
      SPEED,
      [`${AT}.cut: This must be a group of inputs.`, `${AT}.cut.kind: Kind of work is missing.`],
    ],
    ['nothing at all', null, SPEED, [`${AT}.cut: This must be a group of inputs.`]],
    [
      'a hoist without a brake',
      { kind: 'hoisting', mass: '100 kg', diameter: '50 mm' },
      SPEED,
      [`${AT}.cut.holds: Needs a brake; this drive cannot hold or lower.`],
    ],
    [
      'a torque too',
      TURNING,
      { ...SPEED, [`${AT}.torque`]: '1 N·m' },
      [`${AT}.cut: This step has more than one kind of cut.`],
    ],
    [
      'a fan too',
      TURNING,
      { ...SPEED, [`${AT}.fanTorque`]: '1 N·m' },
      [`${AT}.cut: This step has more than one kind of cut.`],
    ],
  ])('%s', (_, cut, changes, problems) => {
    expect(problemsWith(cut, changes)).toEqual(problems)
  })

  it('a slip of the pen is guessed', () => {
    const reading = read(whole({ ...TURNING, dept: '1 mm' }, SPEED))
    expect(reading.ok ? [] : reading.problems[0].wouldDo).toBe('Did you mean "depth"?')
  })
})

describe('variants', () => {
  const variant = (changes: Variant['changes']): Variant => ({ name: 'other', changes })
  const torqueOf = (changes: Variant['changes']) =>
    meanTorque(readWith(TURNING, SPEED, variant(changes)).job.duty.phases[1])
  const found = torqueOf({})

  it('change an input of the cut by its path', () => {
    near(torqueOf({ [`${AT}.cut.depth`]: '2 mm' }), (found * 2 * 24) / 24.5, 1e-12)
    expect(problemsWith(TURNING, SPEED, variant({ [`${AT}.cut.kerf`]: '2 mm' }))).toEqual([
      `${AT}.cut.kerf: No input has this name.`,
    ])
  })
  it('take a torque in its place, or put it in place of one', () => {
    expect(torqueOf({ [`${AT}.cut`]: null, [`${AT}.torque`]: '3 N·m' })).toBe(3)
    const reading = read(
      scenario({ [AT]: { name: 'x', lasts: '1 min', speed: '191 rpm', torque: '3 N·m' } }),
      // Whatever the order: what is taken out goes first, then the kind.
      variant({
        [`${AT}.cut.depth`]: '1 mm',
        [`${AT}.cut.feed`]: '0.1 mm',
        [`${AT}.cut.diameter`]: '50 mm',
        [`${AT}.cut.material`]: TURNING.material,
        [`${AT}.cut.kind`]: 'turning',
        [`${AT}.torque`]: null,
      }),
    )
    near(reading.ok ? meanTorque(reading.job.duty.phases[1]) : 0, found, 1e-12)
  })
  it('turn it into another kind', () => {
    near(
      torqueOf({
        [`${AT}.cut.radius`]: '100 mm',
        [`${AT}.cut.kind`]: 'force',
        [`${AT}.cut`]: null,
        [`${AT}.cut.force`]: '50 N',
      }),
      5,
      1e-12,
    )
    // Input by input, too.
    near(
      torqueOf({
        ...Object.fromEntries(
          ['material', 'depth', 'feed', 'diameter'].map((key) => [`${AT}.cut.${key}`, null]),
        ),
        [`${AT}.cut.radius`]: '100 mm',
        [`${AT}.cut.kind`]: 'force',
        [`${AT}.cut.force`]: '50 N',
      }),
      5,
      1e-12,
    )
  })
})

describe('paths', () => {
  it('inputs of a cut are those of its kind', () => {
    for (const [kind, { spindle: _, ...texts }] of Object.entries(EXAMPLES)) {
      const paths = inputsOf(whole({ kind, ...texts }), `${AT}.cut`).map(({ path }) =>
        path.slice(AT.length + 5),
      )
      expect(paths).toEqual(['kind', ...Object.keys(namedInputs(kind as CutName))])
    }
    expect(inputAt(whole(TURNING), `${AT}.cut.depth`)).toMatchObject({
      text: '1 mm',
      field: { label: 'Depth of cut' },
    })
    expect(inputAt(whole(TURNING), `${AT}.cut.kerf`)).toBeNull()
    expect(inputAt(whole(undefined), `${AT}.cut.depth`)).toBeNull()
  })
  it('a change meets the inputs of the kind and no others', () => {
    const now = whole(TURNING)
    expect(withChange(now, `${AT}.cut.kerf`, '1 mm')).toBe(now)
    expect(withChange(now, `${AT}.cut.depth`, '2 mm')).toEqual(whole({ ...TURNING, depth: '2 mm' }))
    expect(withVariant(now, { name: '', changes: { [`${AT}.cut`]: null } })).toEqual(whole(undefined))
  })
})
