// The command line of the ratio study, run as a person runs it, on a short job.
import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import type { Variant } from '../../sim/scenario.ts'
import { root } from '../house/tree.ts'
import { jobOf, scenario } from '../jobs.ts'

function launch(...words: string[]) {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ['--import', 'tsx', 'scenarios/ratio.ts', ...words],
    { cwd: root, encoding: 'utf8' },
  )
  const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ')
  return { status, out: plain(stdout), err: plain(stderr) }
}

const folder = mkdtempSync(join(tmpdir(), 'dutywright-'))
afterAll(() => rmSync(folder, { recursive: true }))
const short = scenario({ 'heat.cooling': 'shaft fan', 'duty.repeatFor': '8 min' })
const file = join(folder, 'short.json')
writeFileSync(file, JSON.stringify(short))

describe('an answer', () => {
  it('in words: the window, the drive as it is, a table, pulleys to buy', () => {
    const { status, out, err } = launch(file, '--units', 'metric')
    expect([status, err]).toEqual([0, ''])
    expect(out).toMatch(/Works from \d+(\.\d)? : 1 to \d+(\.\d)? : 1\. Below, [^;]+; above, [^.]+\./)
    expect(out).toMatch(/^The 4 : 1 it has now works\. /m)
    expect(out).toMatch(
      /^ {2}Ratio +Last pulley +Top speed +All day from +Sag +Hottest winding +Cutoff opens$/m,
    )
    expect(out).toMatch(/^ {2}4 : 1 +254 mm +1 120 rpm +.*works$/m)
    expect(out).toMatch(/^ {2}63\.5 mm to 254 mm: 4 : 1; hottest winding \d+ °C, sag \d+ %; nothing to buy$/m)
    expect(out).not.toMatch(/undefined|NaN|Infinity/)
  })

  it('as JSON of the named variant: window, points, and proposals that are variants of the file', () => {
    const { status, out } = launch(file, '--json', '--variant', 'Fan, ratio 5.6 : 1')
    expect(status).toBe(0)
    const answer = JSON.parse(out)
    expect(answer).toMatchObject({
      file,
      ok: true,
      answer: { window: expect.stringMatching(/^Works from /) },
    })
    expect(answer.present.ratio).toBeCloseTo(5.6, 9)
    expect(answer.points.length).toBeGreaterThan(10)
    const variants: Variant[] = answer.pairs.map(({ variant }: { variant: Variant }) => variant)
    expect(variants.length).toBeGreaterThan(0)
    for (const variant of variants) expect(jobOf(short, variant).parts.heat.cooling).toBe('shaft fan')
  })
})

describe('what cannot be done exits 2 and says why', () => {
  it.each([
    ['a file that is not there', ['nowhere.json'], /There is no such file/],
    ['two files', [file, file], /One file at a time/],
    ['unknown units', [file, '--units', 'feet'], /us or metric/],
    ['an unknown option', [file, '--fast'], /--fast/],
    ['an unknown variant', [file, '--variant', 'Fan, ratio 5.6'], /Did you mean "Fan, ratio 5\.6 : 1"/],
  ])('%s', (_, words, wanted) => {
    const { status, out, err } = launch(...words)
    expect([status, out]).toEqual([2, ''])
    expect(err).toMatch(wanted)
    expect(err).not.toMatch(/\n\s+at /)
  })
})
