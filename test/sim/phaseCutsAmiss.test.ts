// A step that names a cut: what is amiss in it is told at its path.
import { describe, expect, it } from 'vitest'
import { read } from '../../sim/read.ts'
import type { Changes } from '../jobs.ts'
import { AT, problemsWith, SPEED, TURNING, whole } from './namedCut.ts'

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
