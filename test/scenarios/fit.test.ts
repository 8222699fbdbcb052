// The command line of warm-up fits, run as a person runs it; and its lines put back into the job.
import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { HEAT_NUMBERS } from '../../sim/identify/heatPath.ts'
import { read } from '../../sim/read.ts'
import type { Scenario } from '../../sim/scenario.ts'
import { root } from '../house/tree.ts'
import { demo } from '../jobs.ts'

const LOG = 'scenarios/appleMillWarmUp.csv'
const folder = mkdtempSync(join(tmpdir(), 'fit-'))
afterAll(() => rmSync(folder, { recursive: true }))

function run(...words: string[]) {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ['--import', 'tsx', 'scenarios/fit.ts', ...words],
    { cwd: root, encoding: 'utf8' },
  )
  return { status, out: stdout.replace(/[\u00a0\u202f]/g, ' '), err: stderr.replace(/[\u00a0\u202f]/g, ' ') }
}
const file = (name: string, content: string | Buffer) => {
  const path = join(folder, name)
  writeFileSync(path, content)
  return path
}

describe('an answer', () => {
  it('in words: numbers with bands, what the log settles, what to record next, lines to paste', () => {
    const { status, out, err } = run(LOG, 'scenarios/appleMill.json')
    expect([status, err]).toEqual([0, ''])
    expect(out).toMatch(/Heat the winding stores +\d+ J\/K +likely \d+ to \d+ J\/K +settled by the log/)
    expect(out).toMatch(/Winding to air, full fan .* kept in the usual proportion/)
    expect(out).toMatch(/The curve misses the can by 0\.\d K and the winding by \d\.\d K/)
    expect(out).toContain('1 row with gaps is left out.')
    expect(out).toMatch(/To record next\n {2}.*cold ohms/)
  })

  it('its lines are read back as the heat numbers of the job', () => {
    const { out } = run(LOG, 'scenarios/appleMill.json')
    const lines = out.slice(out.indexOf('under "heat":') + 'under "heat":'.length)
    const heat = JSON.parse(`{${lines}}`)
    const job = demo('appleMill')
    const reading = read({ ...job, heat: { ...job.heat, ...heat } } as Scenario)
    if (!reading.ok) throw new Error(JSON.stringify(reading.problems))
    for (const name of HEAT_NUMBERS)
      expect(`${reading.job.parts.heat[name]}`).toBe(heat[name].value.replace(/ [JW]\/K/, ''))
    expect(heat.windingCapacity.source).toBe('measured: fitted to appleMillWarmUp.csv')
  })

  it('as one line of JSON, of the motor the log was made of', () => {
    const { status, out } = run(LOG, '--json')
    expect(status).toBe(0)
    const { ok, numbers, frameMiss } = JSON.parse(out)
    expect(ok).toBe(true)
    // The numbers the invented log was made with, by the one-page plant; readings scattered by 0.4 K and 1.5 %.
    const made = [660, 1950, 0.95, 0.2, 2.2, 0.75, 0.4]
    HEAT_NUMBERS.forEach((name, n) => {
      expect(numbers[name].low).toBeLessThan(made[n])
      expect(numbers[name].high).toBeGreaterThan(made[n])
    })
    expect(frameMiss).toBeCloseTo(0.4, 1)
  })
})

describe('refused, with its reason', () => {
  const HEAD = 'min,can °C,amps,rpm\n'
  it.each<[string, () => string[], RegExp]>([
    ['no log named', () => [], /npm run fit/],
    ['no such file', () => ['none.csv'], /no such file/],
    ['50 MB', () => [file('large.csv', HEAD.padEnd(50_000_000, '0,20,8,1500\n'))], /50 million/],
    ['binary', () => [file('bytes.csv', Buffer.from([0, 1, 2, 3, 255]))], /binary/],
    [
      'constant',
      () => [file('flat.csv', HEAD + [0, 1, 2, 3, 4, 5, 6].map((n) => `${n},20,8,1500\n`).join(''))],
      /warmed by only/,
    ],
    ['no such job', () => [LOG, 'none.json'], /no such file/],
    ['an odd speed', () => [LOG, '--rpm', 'fast'], /--rpm/],
  ])('%s', (_, words, reason) => {
    const { status, err } = run(...words())
    expect(status).toBe(2)
    expect(err).toMatch(reason)
  })
})
