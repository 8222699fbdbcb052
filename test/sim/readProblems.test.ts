// What the reader refuses: every problem by its path, what is wrong and what would do; and files that are no jobs.
import { describe, expect, it } from 'vitest'
import { LARGEST_FILE, read, readFile } from '../../sim/read.ts'
import type { Scenario } from '../../sim/scenario.ts'
import { type Changes, scenario } from '../jobs.ts'
import { pathsOf, problemsOf } from './problems.ts'

/** The one problem of a change. Throws where there is another number of them. */
const problemOf = (changes: Changes) => {
  const problems = problemsOf(changes)
  if (problems.length !== 1) throw new Error(`${problems.length} problems: ${JSON.stringify(problems)}`)
  return problems[0]
}

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
