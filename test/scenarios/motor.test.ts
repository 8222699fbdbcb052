// The command line of what is known of a motor, run as a person runs it.
import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, it } from 'vitest'
import { root } from '../house/tree.ts'
import { demo } from '../jobs.ts'
import { APPLE_MILL } from '../sim/identify/motors.ts'

const folder = mkdtempSync(join(tmpdir(), 'motor-'))
afterAll(() => rmSync(folder, { recursive: true }))

function ask(...words: string[]) {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ['--import', 'tsx', 'scenarios/motor.ts', ...words],
    { cwd: root, encoding: 'utf8' },
  )
  return { status, out: stdout.replace(/[\u00a0\u202f]/g, ' '), err: stderr.replace(/[\u00a0\u202f]/g, ' ') }
}

it('a job in words: each number with band and origin, its torque, and what is worth a look', () => {
  // The demonstration's plate may be tuned: so a plate of its own, too heavy for its power.
  const heavy = join(folder, 'heavy.json')
  writeFileSync(heavy, JSON.stringify({ ...demo('appleMill'), plate: { ...APPLE_MILL, mass: '20 kg' } }))
  const { status, out, err } = ask(heavy, '--units', 'metric')
  expect([status, err]).toEqual([0, ''])
  expect(out).toMatch(/^The motor of Orchard workshop apple mill\n/)
  expect(out).toMatch(
    /^ {2}Motor constant, cold +26\.2 V\/krpm +likely 24 to 29 V\/krpm +From the plate: plate torque/m,
  )
  // A number given has no band.
  expect(out).toMatch(/^ {2}Flywheel inertia +0 kg·m² +Given in the job\.$/m)
  expect(out.match(/^ {2}\S.* likely /gm)).toHaveLength(14)
  expect(out).toMatch(/at 4 000 rpm is a torque of 2\.8 N·m; all day it is 1\.6 N·m\./)
  expect(out).toMatch(
    /Worth a look\n {2}plate\.continuousPower: The continuous line does not fit a motor this size/,
  )
})

it('as lines of JSON: motors identified, given, and none', () => {
  const bare = join(folder, 'bare.json')
  const { plate: _, ...rest } = demo('appleMill') as Record<string, unknown>
  writeFileSync(bare, JSON.stringify({ ...rest, plate: { volts: '120 V' } }))
  const mine = join(folder, 'mill.json')
  writeFileSync(mine, JSON.stringify({ ...demo('appleMill'), plate: APPLE_MILL }))
  const { status, out, err } = ask(mine, 'test/given/appleMill.json', bare, '--json')
  expect(status).toBe(2)
  const [mill, given, none] = out
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line))
  expect(mill).toMatchObject({ ok: true, name: 'Orchard workshop apple mill', complaints: [] })
  expect(mill.numbers.resistance).toMatchObject({ from: 'plate' })
  expect(mill.numbers.resistance.value).toBeCloseTo(1.2537, 4)
  expect(mill.numbers.resistance.low).toBeLessThan(mill.numbers.resistance.value)
  // Both kinds have one shape.
  expect(Object.keys(given.numbers).toSorted()).toEqual(Object.keys(mill.numbers).toSorted())
  expect(given.numbers.resistance).toMatchObject({ low: given.numbers.resistance.value, from: 'given' })
  expect(none).toMatchObject({ file: bare, ok: false, problems: [{ path: 'plate.power' }] })
  expect(err).toContain('plate.power: The plate gives only volts. Two of volts, amps and power make a motor.')
})
