// What the reader accepts: files and variants become jobs in SI, with usual values and notes.
import { describe, expect, it } from 'vitest'
import { read, readFile } from '../../sim/read.ts'
import { type Scenario, variantsOf } from '../../sim/scenario.ts'
import { DEMOS, demo, demoText, job, scenario } from '../jobs.ts'
import { pathsOf } from './problems.ts'

describe('a good file', () => {
  it.each(DEMOS)('%s is read, with every number given and as a demonstration', (name) => {
    const opened = readFile(demoText(name))
    if (!opened.ok) throw new Error(JSON.stringify(opened.problems))
    expect(read(opened.scenario)).toMatchObject({ ok: true })
    expect(read(scenario({}, name))).toMatchObject({ ok: true })
  })

  it('becomes SI', () => {
    const { parts, duty } = job()
    expect(parts.winding.resistance).toBe(1.25)
    // 26.2 V/krpm is 26.2 · 30/(1000 π) V·s/rad.
    expect(parts.winding.constant).toBeCloseTo(0.250191571, 9)
    expect(parts.belt.motorPulley).toBeCloseTo(0.0635, 12)
    expect(parts.controller.ramp).toBeCloseTo(30 * Math.PI, 12)
    expect(parts.controller.compensation).toBe(0.8)
    expect(parts.heat.air).toBe(25)
    expect(duty.seconds).toBe(10800)
    expect(duty.startC).toBe(25)
    const [loading, rest, milling] = duty.phases
    expect(rest).toEqual({
      name: 'rest',
      seconds: 60,
      speed: 0,
      cut: { kind: 'torque', torque: 0 },
      surge: null,
    })
    expect(loading.speed).toBeCloseTo((350 * Math.PI) / 30, 12)
    // 3.5 lbf·ft, exactly 1.3558179483314004 N·m each (NIST SP 811).
    expect(milling.cut).toEqual({ kind: 'torque', torque: expect.closeTo(4.745362819, 8) })
    expect(milling.surge).toEqual({ torque: expect.closeTo(4.745362819, 8), every: 12, lasts: 3 })
  })

  it('takes usual values for what is left out', () => {
    const { parts } = job({ machine: null, cutoff: null, 'supply.kind': null, 'belt.efficiency': null })
    expect(parts.machine).toMatchObject({ inertia: 0.01, drag: 0.5, acceptedSag: 0.2 })
    expect(parts.cutoff).toMatchObject({
      fitted: 'self-reset',
      opensAt: 120,
      reclosesAt: 87,
      place: 'brush end',
    })
    expect(parts.supply.kind).toBe('pwm')
    expect(parts.belt.efficiency).toBe(0.95)
  })

  it('takes a value written out with source and bounds, and the text alone, for the same', () => {
    const written = { value: '1.25 Ω', source: 'bench, four positions', low: '1.2 Ω', high: '1300 mΩ' }
    expect(job({ 'winding.resistance': written })).toEqual(job({ 'winding.resistance': '1.25 Ω' }))
    expect(job({ 'supply.kind': { value: 'battery', source: 'seen' } }).parts.supply.kind).toBe('battery')
  })

  it('is frozen all the way down, and can be sent to a worker', () => {
    const given = job()
    const frozenAll = (value: unknown): boolean =>
      typeof value !== 'object' ||
      value === null ||
      (Object.isFrozen(value) && Object.values(value).every(frozenAll))
    expect(frozenAll(given)).toBe(true)
    expect(() => {
      ;(given.parts.winding as { resistance: number }).resistance = 2
    }).toThrow(TypeError)
    expect(structuredClone(given)).toEqual(given)
  })

  it('leaves the scenario as it was', () => {
    const given = scenario()
    const copy = structuredClone(given)
    read(given, variantsOf(given)[1])
    expect(given).toEqual(copy)
  })

  it('may begin with a byte order mark, and carry names for other programs', () => {
    expect(readFile(`\uFEFF${demoText('appleMill')}`).ok).toBe(true)
    expect(read({ ...scenario(), $comment: 'x' } as Scenario).ok).toBe(true)
  })

  it('starts at the air’s temperature, or at its own', () => {
    expect(job({ 'heat.air': '104 °F' }).duty.startC).toBe(40)
    expect(job({ 'heat.air': '104 °F', 'duty.start': '60 °C' }).duty.startC).toBe(60)
  })

  it.each([
    [{ torque: '5 N·m' }, { kind: 'torque', torque: 5 }],
    [{}, { kind: 'torque', torque: 0 }],
    // A quarter of the asked 20 rad/s; where nothing is asked, 1 rad/s.
    [
      { power: '300 W', speed: '20 rad/s' },
      { kind: 'power', power: 300, fullAbove: 5 },
    ],
    [
      { power: '300 W', speed: '0 rpm' },
      { kind: 'power', power: 300, fullAbove: 1 },
    ],
    // 8 N·m at 20 rad/s is 0.02 N·m·s².
    [
      { fanTorque: '8 N·m', speed: '20 rad/s' },
      { kind: 'fan', coefficient: 0.02 },
    ],
    [{ fanTorque: '0 N·m' }, { kind: 'torque', torque: 0 }],
  ])('reads the cut of %j', (cut, wanted) => {
    const given = job({ 'duty.phases': [{ name: 'a', lasts: '10 s', ...cut }] })
    expect(given.duty.phases[0].cut).toEqual(wanted)
  })

  it('an unreachable speed is read: the run will say what limits', () => {
    expect(pathsOf({ 'duty.phases.2.speed': '60000 rpm' })).toEqual([])
  })
})

describe('notes', () => {
  const notesAt = (compensation: string, air = '25 °C') => {
    const reading = read(scenario({ 'controller.compensation': compensation, 'heat.air': air }))
    return reading.ok ? reading.notes.filter(({ path }) => path === 'controller.compensation') : []
  }
  it('warn of compensation over 90 % of the coldest winding, and run all the same', () => {
    // 25 °C copper has 260/255 of its resistance at 20 °C, so 92 % comes to 90.2 %, 91 % to 89.2 %.
    expect(notesAt('91 %')).toEqual([])
    expect(notesAt('92 %')).toEqual([
      {
        path: 'controller.compensation',
        wrong: 'The controller makes up for 90 % of the coldest winding’s resistance: speed will hunt.',
        wouldDo: 'Turn it down under 90 %.',
      },
    ])
    expect(notesAt('85 %', '-20 °C')).toHaveLength(1)
  })
  it('say nothing of a compensation that is not in use', () => {
    const reading = read(
      scenario({ 'controller.compensation': '150 %', 'controller.holds': 'fixed voltage' }),
    )
    if (!reading.ok) throw new Error(JSON.stringify(reading.problems))
    expect(reading.notes.map(({ path }) => path)).not.toContain('controller.compensation')
  })
})

describe('a variant', () => {
  it.each(DEMOS)('of %s, each, goes through the same reader', (name) => {
    const base = demo(name)
    for (const variant of variantsOf(base)) {
      const reading = read(base, variant)
      expect(reading).toMatchObject({ ok: true })
      expect(reading).not.toEqual(read(base))
    }
  })
  it('takes an input back to its usual value with null', () => {
    const reading = read(scenario({ 'belt.efficiency': '80 %' }), {
      name: 'x',
      changes: { 'belt.efficiency': null },
    })
    expect(reading.ok && reading.job.parts.belt.efficiency).toBe(0.95)
  })
  it('has its problems told by path', () => {
    const reading = read(scenario(), {
      name: 'x',
      changes: {
        'belt.machinePuley': '5 in',
        'supply.volts': '9000 V',
        'duty.phases.9.lasts': '5 s',
        __proto__x: 'a',
        constructor: 'b',
      },
    })
    if (reading.ok) throw new Error('was read')
    expect(reading.problems.map(({ path, wouldDo }) => `${path}: ${wouldDo}`)).toEqual([
      'belt.machinePuley: Did you mean "machinePulley"?',
      'duty.phases.9.lasts: Steps are numbered from 0.',
      expect.stringMatching(/^__proto__x: Known here: format, name/),
      expect.stringMatching(/^constructor: /),
      expect.stringMatching(/^supply.volts: Between 1 V and 400 V/),
    ])
  })
})
