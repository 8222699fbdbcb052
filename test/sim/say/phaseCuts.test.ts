// The cuts of a job in its report: what each asks, how surely, by which row; in both systems of units.
import { expect, it } from 'vitest'
import { judge } from '../../../sim/judge.ts'
import { cutWords, phaseCutLines } from '../../../sim/say/phaseCuts.ts'
import { jobReport } from '../../../sim/say/report.ts'
import type { Units } from '../../../sim/say/units.ts'
import { read } from '../../../sim/read.ts'
import { scenario, traceOf } from '../../jobs.ts'
import { EXAMPLES } from '../cuts/ask.ts'

const US: Units = { system: 'us', temperature: '°F' }
const METRIC: Units = { system: 'metric', temperature: '°C' }

function linesOf(cut: Readonly<Record<string, string>>, units: Units, name = 'roughing') {
  const reading = read(scenario({ 'duty.phases.1': { name, lasts: '5 min', speed: '200 rpm', cut } }))
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems))
  return phaseCutLines(reading.cuts, reading.job, units).map((line) => line.replaceAll('\u00a0', ' '))
}
const { spindle: _, ...turning } = EXAMPLES.turning

it('the step, the kind, torque, speed, power and spread; the sum; the row with its source', () => {
  expect(linesOf({ kind: 'turning', ...turning }, METRIC)).toEqual([
    '  roughing: Turning metal. The spindle asks 7.5 N·m at 200 rpm: 156 W. 8 times in 10 it is 5.6 to 10.4 N·m.',
    '    A chip of 1 mm by 0.1 mm takes 304 N, acting 24.5 mm from the axis.',
    expect.stringMatching(
      /^ {4}Plain carbon steel, HB 120–140 .* \(Machinery’s Handbook, 31st ed., Table 1b, p. 1147; .*the row was read there\)\.$/,
    ),
  ])
  expect(linesOf({ kind: 'turning', ...turning }, US)[0]).toBe(
    '  roughing: Turning metal. The spindle asks 5.5 lbf·ft at 200 rpm: 0.21 hp. 8 times in 10 it is 4.1 to 7.7 lbf·ft.',
  )
})

it('a step without a name has its number; a caution is told', () => {
  const lines = linesOf({ kind: 'hoisting', mass: '100 kg', diameter: '50 mm', holds: 'brake' }, US, '')
  expect(lines[0]).toMatch(/^ {2}step 2: Hoisting\. /)
  expect(lines).toHaveLength(4)
  expect(lines[3]).toMatch(/never people/)
})

it('common practice is said once; a number of one’s own has no spread', () => {
  const [, , row] = linesOf({ kind: 'clay' }, US)
  expect(row.match(/ommon practice/g)).toHaveLength(1)
  const reading = read(
    scenario({
      'duty.phases.1': {
        name: 'x',
        lasts: '5 min',
        speed: '200 rpm',
        cut: { kind: 'force', force: '50 N', radius: '100 mm' },
      },
    }),
  )
  expect(reading.ok && cutWords(reading.cuts[0], METRIC).spread).toBe('The number is your own.')
  expect(reading.ok && cutWords(reading.cuts[0], METRIC).row).toBe('Force, as given (your own number).')
})

it('the report tells them under a heading of their own, and none where no step names one', () => {
  const reading = read(
    scenario({
      'duty.phases.1': {
        name: 'roughing',
        lasts: '5 min',
        speed: '200 rpm',
        cut: { kind: 'turning', ...turning },
      },
      'duty.repeatFor': '10 min',
    }),
  )
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems))
  const { job, cuts } = reading
  const trace = traceOf(job)
  const told = { job, trace, figures: judge(job, trace), notes: [], check: null }
  const lines = phaseCutLines(cuts, job, US)
  expect(jobReport('', { ...told, cuts }, US)).toContain(['', 'What the work asks', ...lines, ''].join('\n'))
  expect(jobReport('', { ...told, cuts: [] }, US)).not.toContain('What the work asks')
})
