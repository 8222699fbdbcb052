// The command line of the comparison, run as a person runs it.
import { spawnSync } from 'node:child_process'
import { describe, expect, it } from 'vitest'
import { root } from '../house/tree.ts'

function compare(...words: string[]) {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ['--import', 'tsx', 'scenarios/compare.ts', ...words],
    { cwd: root, encoding: 'utf8' },
  )
  return { status, out: stdout.replace(/[\u00a0\u202f]/g, ' '), err: stderr.replace(/[\u00a0\u202f]/g, ' ') }
}
const OLD = ['--old', '3/4 hp', '--rpm', '1725']

describe('an answer', () => {
  it('in words: a sentence, a table for each step, the plates', () => {
    const { status, out, err } = compare(...OLD, '--old-pulleys', '3 in, 9 in; 2 in, 10 in')
    expect([status, err]).toEqual([0, ''])
    expect(out).toMatch(
      /At 345 rpm the old ¾ hp motor held [\d.]+ lbf·ft all day\. This one holds [\d.]+ with the fan/,
    )
    expect(out.match(/at the spindle\n/g)).toHaveLength(2)
    expect(out).toMatch(/At 575 rpm, lbf·ft at the spindle/)
    expect(out).toMatch(/By the plates this motor’s 1\.6 hp at 4 000 rpm/)
  })

  it('as one line of JSON in SI', () => {
    const { status, out } = compare(
      'scenarios/bowlLathe.json',
      ...OLD,
      '--old-speeds',
      '350, 700 rpm',
      '--phase',
      'three',
      '--json',
    )
    expect([status, out.trim().split('\n').length]).toEqual([0, 1])
    const said = JSON.parse(out)
    expect(said).toMatchObject({
      ok: true,
      file: 'scenarios/bowlLathe.json',
      rival: { kind: 'three-phase', poles: 4 },
    })
    expect(said.met.map(({ speed }: { speed: number }) => Math.round((speed * 30) / Math.PI))).toEqual([
      350, 700,
    ])
    // 5252 hp/rpm in N·m, through 1725:350 and 95 %, less the lathe's drag of 0.6 N·m.
    expect(said.met[0].old.allDay).toBeCloseTo(
      ((0.75 * 745.6998715822702) / (1725 * (Math.PI / 30))) * (1725 / 350) * 0.95 - 0.6,
      9,
    )
  })

  it('against another DC motor, in metric units', () => {
    const { status, out } = compare(
      '--old',
      '1 hp',
      '--rpm',
      '6000',
      '--dc',
      '--old-pulleys',
      '2 in, 14 in',
      '--units',
      'metric',
    )
    expect(status).toBe(0)
    expect(out).toMatch(/the old 746 W motor held [\d.]+ N·m/)
  })
})

describe('no answer, and leaves with 2', () => {
  it.each([
    [['--old', '3/4 hp'], /--old and --rpm say/],
    [['--old', '3/4 hp', '--rpm', '1800'], /^--rpm: No motor of the mains/],
    [[...OLD, '--phase', 'two'], /--phase cannot be "two"/],
    [[...OLD, '--old-pulleys', '3 in'], /is not a pair/],
    [[...OLD, '--old-pulleys', '3 in, 9 cats'], /^--old-pulleys, step 1: "cats"/],
    [[...OLD, '--dc', '--phase', 'three'], /--phase goes with an AC motor/],
    [[...OLD, '--units', 'cubits'], /--units cannot be/],
    [['nowhere.json', ...OLD], /nowhere\.json: There is no such file/],
  ])('%j', (words, said) => {
    const { status, err } = compare(...words)
    expect(status).toBe(2)
    expect(err).toMatch(said)
  })
})
