// A step that names a cut: its torque at the step's speed, or the speed its surface wants; variants and paths of its inputs.
import { describe, expect, it } from 'vitest'
import { type CutName, CUTS } from '../../sim/cuts/index.ts'
import { namedInputs } from '../../sim/cuts/named.ts'
import { meanTorque } from '../../sim/duty.ts'
import { fromUnit, toUnit } from '../../sim/quantity.ts'
import { read } from '../../sim/read.ts'
import { inputAt, inputsOf, type Variant, withChange, withVariant } from '../../sim/scenario.ts'
import { job, scenario } from '../jobs.ts'
import { ask, EXAMPLES } from './cuts/ask.ts'
import { near } from './physics/lab.ts'

import { AT, problemsWith, readWith, SPEED, TURNING, whole } from './namedCut.ts'

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
