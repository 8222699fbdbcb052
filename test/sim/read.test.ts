// The reader: a good file to a job in SI; a bad one to every problem with its path and what would do.
import { describe, expect, it } from 'vitest'
import { LARGEST_FILE, read, readFile } from '../../sim/read.ts'
import { type Scenario, variantsOf } from '../../sim/scenario.ts'
import { type Changes, DEMOS, demo, demoText, job, scenario } from '../jobs.ts'

const problemsOf = (changes: Changes) => {
  const reading = read(scenario(changes))
  return reading.ok ? [] : reading.problems
}
const pathsOf = (changes: Changes) => problemsOf(changes).map(({ path }) => path)
/** The one problem of a change. Throws where there is another number of them. */
const problemOf = (changes: Changes) => {
  const problems = problemsOf(changes)
  if (problems.length !== 1) throw new Error(`${problems.length} problems: ${JSON.stringify(problems)}`)
  return problems[0]
}

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

describe('bad input', () => {
  it.each<[string, Changes, string, RegExp, RegExp]>([
    [
      'an unknown unit',
      { 'supply.volts': '12 furlongs' },
      'supply.volts',
      /"furlongs" is not a unit of voltage/,
      /V or mV/,
    ],
    [
      'a wrong dimension',
      { 'supply.volts': '12 A' },
      'supply.volts',
      /is a current; a voltage is wanted/,
      /90 V/,
    ],
    ['no unit', { 'supply.volts': '12' }, 'supply.volts', /has no unit/, /12 V/],
    ['NaN', { 'supply.volts': 'NaN V' }, 'supply.volts', /"NaN V" does not begin with a number/, /90 V/],
    ['nothing', { 'supply.volts': '' }, 'supply.volts', /Nothing is written/, /90 V/],
    [
      'a number',
      { 'supply.volts': 120 },
      'supply.volts',
      /must be a text with a unit/,
      /Between 1 V and 400 V/,
    ],
    [
      'a negative resistance',
      { 'winding.resistance': '-1 Ω' },
      'winding.resistance',
      /-1 Ω is less than any winding/,
      /0\.001 Ω/,
    ],
    [
      'no resistance',
      { 'winding.resistance': '0 Ω' },
      'winding.resistance',
      /touch the probes together/,
      /0\.001 Ω/,
    ],
    [
      'a speed no brush stands',
      { 'plate.speed': '40000 rpm' },
      'plate.speed',
      /more than brushes stand/,
      /Did you mean 4000 rpm/,
    ],
    [
      'hysteresis under 5 K',
      { 'cutoff.reclosesAt': '116 °C' },
      'cutoff.reclosesAt',
      /4 °C under its opening/,
      /At least 5 °C lower/,
    ],
    [
      'a switch the wrong way round',
      { 'cutoff.reclosesAt': '130 °C' },
      'cutoff.reclosesAt',
      /no cooler than it opens/,
      /20 to 40/,
    ],
    [
      'a duty of no time',
      { 'duty.phases': [{ name: 'a', lasts: '0 s' }] },
      'duty.phases',
      /no time at all/,
      /a length/,
    ],
    [
      'steps of a nanosecond',
      { 'duty.phases': [{ name: 'a', lasts: '0.000001 ms' }] },
      'duty.phases',
      /no time at all/,
      /a length/,
    ],
    ['a job of no time', { 'duty.repeatFor': '0 s' }, 'duty.repeatFor', /no time at all/, /3 h/],
    [
      'a negative time',
      { 'duty.phases.0.lasts': '-1 s' },
      'duty.phases.0.lasts',
      /less than no time/,
      /Between 0 s/,
    ],
    ['no steps', { 'duty.phases': [] }, 'duty.phases', /at least one step/, /1 to 10000/],
    [
      'steps that are no list',
      { 'duty.phases': 'milling' },
      'duty.phases',
      /needs a list of steps/,
      /1 to 10000/,
    ],
    [
      'a step that is no group',
      { 'duty.phases.1': 'rest' },
      'duty.phases.1',
      /must be a group/,
      /begins with \{/,
    ],
    ['a list for a group', { machine: [] }, 'machine', /must be a group/, /begins with \{/],
    ['a text for a group', { belt: '4 : 1' }, 'belt', /must be a group/, /begins with \{/],
    ['a missing group', { belt: null }, 'belt', /part of the job is missing/, /examples/],
    [
      'a missing input',
      { 'belt.motorPulley': null },
      'belt.motorPulley',
      /Motor pulley is missing/,
      /Between 5 mm and 3 m/,
    ],
    [
      'an input without its value',
      { 'belt.motorPulley': {} },
      'belt.motorPulley',
      /Motor pulley must be a text with a unit/,
      /Between 5 mm and 3 m is sensible/,
    ],
    [
      'a word that is no choice',
      { 'heat.cooling': 'big fan' },
      'heat.cooling',
      /Cooling cannot be "big fan"/,
      /"shaft fan"/,
    ],
    ['a name that is no text', { name: 5 }, 'name', /must be a text/, /80/],
    ['a name that is too long', { name: 'x'.repeat(81) }, 'name', /81 characters/, /80/],
    [
      'two cuts in one step',
      { 'duty.phases.2.power': '100 W' },
      'duty.phases.2.torque',
      /more than one kind of cut/,
      /Keep one/,
    ],
    [
      'a fan’s torque at no speed',
      { 'duty.phases.1.fanTorque': '3 N·m' },
      'duty.phases.1.fanTorque',
      /that is 0/,
      /Ask for a speed/,
    ],
    [
      'a surge that never ends',
      { 'duty.phases.2.surge.lasts': '12 s' },
      'duty.phases.2.surge.lasts',
      /as long as the time between/,
      /Shorter/,
    ],
    [
      'a surge without its length',
      { 'duty.phases.2.surge.lasts': null },
      'duty.phases.2.surge.lasts',
      /It lasts is missing/,
      /0.01 s/,
    ],
    [
      'one jackshaft pulley',
      { 'belt.jackshaftLarge': '6 in' },
      'belt.jackshaftSmall',
      /two pulleys/,
      /Give the other/,
    ],
    [
      'the other jackshaft pulley',
      { 'belt.jackshaftSmall': '2 in' },
      'belt.jackshaftLarge',
      /two pulleys/,
      /Give the other/,
    ],
    [
      'lumpy current without plate amps',
      { 'supply.kind': 'phase control', 'plate.amps': null },
      'plate.amps',
      /follows from the plate/,
      /choke/,
    ],
    [
      'a low bound that is garbage',
      { 'heat.air': { value: '25 °C', low: 'cold' } },
      'heat.air',
      /low bound beside it: "cold"/,
      /°C/,
    ],
    [
      'a low bound over the value',
      { 'heat.air': { value: '25 °C', low: '30 °C' } },
      'heat.air',
      /30 °C, is on the wrong side/,
      /in this order/,
    ],
    [
      'a high bound under the value',
      { 'heat.air': { value: '25 °C', high: '20 °C' } },
      'heat.air',
      /20 °C, is on the wrong side/,
      /in this order/,
    ],
    [
      'a source that is no text',
      { 'heat.air': { value: '25 °C', source: 5 } },
      'heat.air',
      /Where it comes from/,
      /300/,
    ],
    ['variants that are no list', { variants: {} }, 'variants', /must be a list/, /examples/],
    ['a variant that is no group', { variants: [null] }, 'variants.0', /must be a group/, /begins with/],
    [
      'a change that is no text',
      { variants: [{ name: 'a', changes: { 'supply.volts': 5 } }] },
      'variants.0.changes.supply.volts',
      /a text, or null/,
      /examples/,
    ],
    [
      'too many variants',
      { variants: Array(25).fill({ name: 'a', changes: {} }) },
      'variants',
      /More than 24/,
      /examples/,
    ],
  ])('%s is told with its path and what would do', (_, changes, path, wrong, wouldDo) => {
    const problem = problemOf(changes)
    expect(problem.path).toBe(path)
    expect(problem.wrong).toMatch(wrong)
    expect(problem.wouldDo).toMatch(wouldDo)
    expect(problem.wrong).toMatch(/\.$/)
    expect(problem.wouldDo).toMatch(/[.?]$/)
  })

  it('one comma and three digits are refused with both readings offered', () => {
    expect(problemOf({ 'plate.speed': '4,000 rpm' })).toEqual({
      path: 'plate.speed',
      wrong: '"4,000" can be read two ways.',
      wouldDo: 'Write 4000 or 4.000.',
      offers: ['4000 rpm', '4.000 rpm'],
    })
  })

  it.each([
    ['belt', 'motorPuley', 'Did you mean "motorPulley"?'],
    ['', 'windng', 'Did you mean "winding"?'],
    ['duty.phases.0', 'Speed', 'Did you mean "speed"?'],
    ['heat', 'qqqqqqqq', /^Known here: cooling, air, /],
  ])('a name that no input of "%s" has, %s, is told: %s', (group, key, meant) => {
    const broken = structuredClone(scenario()) as unknown as Record<string, unknown>
    const at = group
      .split('.')
      .reduce<Record<string, unknown>>(
        (value, part) => (part === '' ? value : (value[part] as Record<string, unknown>)),
        broken,
      )
    at[key] = '1 m'
    const reading = read(broken as unknown as Scenario)
    if (reading.ok) throw new Error('was read')
    expect(reading.problems).toEqual([
      {
        path: group === '' ? key : `${group}.${key}`,
        wrong: 'No input has this name.',
        wouldDo: expect.anything(),
      },
    ])
    expect(reading.problems[0].wouldDo).toMatch(meant)
  })

  it('a name in a value written out is told too, and a choice has no bounds', () => {
    expect(problemOf({ 'heat.air': { value: '25 °C', sorce: 'x' } })).toMatchObject({
      path: 'heat.air.sorce',
      wouldDo: 'Did you mean "source"?',
    })
    expect(pathsOf({ 'heat.cooling': { value: 'none', low: 'shaft fan' } })).toEqual(['heat.cooling.low'])
  })

  it('five mistakes give those five paths', () => {
    const paths = pathsOf({
      'supply.volts': '12 furlongs',
      'winding.resistance': '-1 Ω',
      'cutoff.reclosesAt': '118 °C',
      'duty.phases.1.lasts': 'NaN s',
      'belt.machinePulley': null,
    })
    expect([...paths].sort()).toEqual([
      'belt.machinePulley',
      'cutoff.reclosesAt',
      'duty.phases.1.lasts',
      'supply.volts',
      'winding.resistance',
    ])
  })

  it('what does not go together is told beside what cannot be read', () => {
    expect(
      pathsOf({
        'supply.volts': 'x',
        'supply.kind': 'phase control',
        'plate.amps': null,
        'plate.speed': null,
        'belt.jackshaftLarge': '6 in',
        'duty.phases.2.surge.lasts': '20 s',
        'duty.repeatFor': '0 s',
      }).sort(),
    ).toEqual(
      [
        'supply.volts',
        'plate.amps',
        'plate.speed',
        'belt.jackshaftSmall',
        'duty.phases.2.surge.lasts',
        'duty.repeatFor',
      ].sort(),
    )
    // An opening temperature that cannot be read is no mismatch with the reclosing one.
    expect(pathsOf({ 'cutoff.opensAt': 'hot', 'cutoff.reclosesAt': '190 °C' })).toEqual(['cutoff.opensAt'])
  })

  it('100 000 steps are refused as too many, whatever is in them', () => {
    const steps = Array(100_000).fill({ name: 'a', lasts: '1 s' })
    expect(problemOf({ 'duty.phases': steps })).toEqual({
      path: 'duty.phases',
      wrong: '100000 steps are more than one cycle can hold.',
      wouldDo: 'Up to 10000.',
    })
    expect(pathsOf({ 'duty.phases': Array(100_000).fill(5), 'supply.volts': 'x' })).toEqual([
      'duty.phases',
      'supply.volts',
    ])
  })

  it('no file gets more than fifty problems', () => {
    expect(problemsOf({ 'duty.phases': Array(2000).fill({ name: 'a', lasts: 'x' }) })).toHaveLength(50)
  })
})

describe('the file itself', () => {
  const refusal = (text: string) => {
    const opened = readFile(text)
    return opened.ok ? null : opened.problems
  }
  it.each([
    ['', /it is not JSON/, /saved as a job/],
    ['{ "format": 1, ', /it is not JSON/, /saved as a job/],
    ['format: 1', /it is not JSON/, /saved as a job/],
    ['\u0000\u0001', /it is not JSON/, /saved as a job/],
    ['[]', /holds no job/, /begins with \{/],
    ['null', /holds no job/, /begins with \{/],
    ['5', /holds no job/, /begins with \{/],
    ['{}', /does not say its format/, /"format": 1/],
    ['{"format": "1"}', /does not say its format/, /"format": 1/],
    ['{"format": 0}', /does not say its format/, /"format": 1/],
    ['{"format": 2}', /of format 2, from a newer version/, /reads format 1/],
    ['{"format": 1e999}', /from a newer version/, /reads format 1/],
  ])('%j is refused', (text, wrong, wouldDo) => {
    expect(refusal(text)).toEqual([
      {
        path: expect.stringMatching(/^(format)?$/),
        wrong: expect.stringMatching(wrong),
        wouldDo: expect.stringMatching(wouldDo),
      },
    ])
  })

  it('of ten million characters is refused unread', () => {
    const problems = refusal(`{"format": 1, "about": "${'x'.repeat(1e7)}"}`)
    expect(problems?.[0].wrong).toBe('The file holds 10 million characters.')
    expect(refusal(' '.repeat(LARGEST_FILE))?.[0].wrong).toMatch(/not JSON/)
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
