// The command line of cuts, run as a person runs it.
import { spawnSync } from 'node:child_process'
import { describe, expect, it } from 'vitest'
import { CUTS } from '../../sim/cuts/index.ts'
import { root } from '../house/tree.ts'

function cut(...words: string[]) {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ['--import', 'tsx', 'scenarios/cut.ts', ...words],
    {
      cwd: root,
      encoding: 'utf8',
    },
  )
  return { status, out: stdout.replace(/[\u00a0\u202f]/g, ' '), err: stderr.replace(/[\u00a0\u202f]/g, ' ') }
}

const TURNING = [
  'turning',
  '--material',
  'plain carbon HB 160-180',
  '--depth',
  '1mm',
  '--feed=0.1mm',
  '--diameter',
  '50mm',
]

describe('an answer', () => {
  it('in words: torque, power, spindle speed, spread, row and source', () => {
    const { status, out, err } = cut(...TURNING, '--speed', '0.5 m/s', '--units', 'metric')
    expect([status, err]).toEqual([0, ''])
    expect(out).toMatch(/The spindle asks 8\.5 N·m at 191 rpm: 169 W\./)
    expect(out).toMatch(/8 times in 10 +6\.3 to 11\.8 N·m/)
    expect(out).toMatch(/Row +Plain carbon steel, HB 160–180: 2\.13 kJ\/cm³/)
    expect(out).toMatch(/Source +Machinery’s Handbook/)
  })

  it('in US units unless told otherwise', () => {
    expect(cut(...TURNING, '--speed', '100 ft/min').out).toMatch(/asks 6\.2 lbf·ft at 194 rpm/)
  })

  it('as one line of JSON in SI', () => {
    const { status, out } = cut(...TURNING, '--spindle', '200 rpm', '--json')
    expect([status, out.trim().split('\n').length]).toEqual([0, 1])
    const said = JSON.parse(out)
    expect(said).toMatchObject({ kind: 'turning', ok: true, answer: { standing: 'read', caution: null } })
    // 2.13 kJ/cm³ × 3^0.2 × 1.3 × 0.1 mm² × 24.5 mm.
    expect(said.answer.torque).toBeCloseTo(2130 * 3 ** 0.2 * 1.3 * 0.1 * 0.0245, 9)
    expect(said.answer.speed).toBeCloseTo((200 * Math.PI) / 30, 9)
    expect(said.answer.how).toMatch(/^A chip of .*\.$/)
  })
})

describe('no answer', () => {
  it('says each problem at its option, and leaves with 2', () => {
    const { status, out, err } = cut(
      'turning',
      '--depth',
      '1 rpm',
      '--diametr',
      '50mm',
      '--spindle',
      '200rpm',
    )
    expect([status, out]).toEqual([2, ''])
    expect(err).toMatch(/^--diametr: No input has this name\. Did you mean "diameter"\?$/m)
    expect(err).toMatch(/^--depth: "1 rpm" is a turning speed; a length is wanted\./m)
    expect(err).toMatch(/^--feed: Feed for each turn is missing\./m)
    expect(err).toMatch(/^--diameter: Diameter before the cut is missing\./m)
  })

  it('refuses what can drive the motor, with the torque all the same', () => {
    const hoist = ['hoisting', '--mass', '300 lb', '--diameter', '2 in', '--speed', '0.1 m/s']
    const { status, out, err } = cut(...hoist, '--units', 'metric')
    expect([status, out]).toEqual([2, ''])
    expect(err).toMatch(/^--holds: Needs a brake; this drive cannot hold or lower\./)
    expect(err).toMatch(/33\.9 N·m at 38 rpm: 133 W/)
    const said = JSON.parse(cut(...hoist, '--json').out)
    expect(said).toMatchObject({ ok: false, problems: [{ path: 'holds' }] })
    expect(said.asked.torque).toBeCloseTo(33.9, 1)
  })

  it('a value may begin with one minus sign', () => {
    const { status, err } = cut(
      'wheel',
      '--mass',
      '600 lb',
      '--slope',
      '-5 %',
      '--speed',
      '3 mph',
      '--diameter',
      '20 in',
    )
    expect(status).toBe(2)
    expect(err).toMatch(/^--slope: Needs a brake/)
  })

  it.each([
    [['trning'], /No kind of cut is called "trning"\. Did you mean "turning"\?/],
    [['cheese'], /No kind of cut is called "cheese"\. Known: turning, drilling/],
    [['turning', '--depth'], /^--depth: A value is missing\./],
    [['turning', 'steel', 'hard'], /"steel" belongs to no input/],
    [['--depth', '1mm'], /^--depth: The kind of cut is missing\./],
    [['turning', '--units', 'si'], /^--units cannot be "si": us or metric\./],
  ])('%j', (words, wanted) => {
    const { status, out, err } = cut(...words)
    expect([status, out]).toEqual([2, ''])
    expect(err).toMatch(wanted)
  })

  it('what would steer a terminal comes back as a box', () => {
    const { err } = cut('turn\u001b[31m')
    expect(err).not.toContain('\u001b')
    expect(err).toContain('turn□[31m')
  })
})

it('without arguments, every kind with its inputs', () => {
  const { status, out } = cut()
  expect(status).toBe(0)
  for (const [name, { label }] of Object.entries(CUTS)) expect(out).toContain(`${name}: ${label}\n`)
  expect(out).toMatch(/--depth +Depth of cut: 0\.000394 in to 1\.97 in/)
})

it('with a kind and --help, its inputs alone', () => {
  const { status, out } = cut('clay', '--help', '--units', 'metric')
  expect([status, out]).toEqual([
    0,
    'clay: Clay on a potter’s wheel\n  --spindle  Spindle speed: 1 rpm to 60 000 rpm\n',
  ])
})
