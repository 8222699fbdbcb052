// Jobs at the ends of what is legal: each is carried out within its budget of work, and answered without nonsense.
import { expect, it } from 'vitest'
import { carryOut } from '../../sim/carryOut.ts'
import { cycles } from '../../sim/cycles.ts'
import { judgeCycles } from '../../sim/judgeCycles.ts'
import { read } from '../../sim/read.ts'
import { finish } from '../../sim/run.ts'
import { answerOf } from '../../sim/say/answer.ts'
import { jobReport } from '../../sim/say/report.ts'
import { MOST_ROWS } from '../../sim/recorder.ts'
import { inputAt } from '../../sim/scenario.ts'
import { nonsense, notNumber } from '../campaigns/nonsense/said.ts'
import { type Changes, jobOf, scenario } from '../jobs.ts'

const UNITS = { system: 'metric', temperature: '°C' } as const

/** The high bound of an input, as its own table has it. */
const most = (path: string): string => {
  const input = inputAt(scenario(), path)
  if (input?.field.kind !== 'quantity') throw new Error(`no quantity at ${path}`)
  return input.field.high
}

const turn = (n: number) => ({
  name: `step ${n}`,
  lasts: '1 s',
  speed: `${300 + (n % 7) * 20} rpm`,
  torque: '1 N·m',
})

/** Job by name: its changes, and the most evaluations it may take. */
const JOBS: readonly (readonly [string, Changes, number])[] = [
  [
    'a one-second cycle for a day, with its rows',
    {
      'duty.phases': [
        { name: 'on', lasts: '0.5 s', speed: '600 rpm', torque: '1 N·m' },
        { name: 'off', lasts: '0.5 s' },
      ],
      'duty.repeatFor': '1 d',
    },
    2e6,
  ],
  [
    'ten thousand phases',
    { 'duty.phases': Array.from({ length: 10_000 }, (_, n) => turn(n)), 'duty.repeatFor': '10000 s' },
    2e6,
  ],
  ['a supply at its lowest', { 'supply.volts': '1 V' }, 2e6],
  [
    'no friction at all',
    {
      'rotor.dryFriction': '0 N·m',
      'rotor.windage': '0 N·m·s',
      'machine.drag': '0 N·m',
      'machine.windage': '0 N·m·s',
    },
    2e6,
  ],
  [
    'a motor of 5 kW',
    {
      'supply.volts': '200 V',
      'plate.amps': '30 A',
      'winding.resistance': '0.2 Ω',
      'winding.constant': '0.55 V·s/rad',
      'controller.currentLimit': '60 A',
      'rotor.inertia': '0.02 kg·m²',
    },
    2e6,
  ],
  ['the heaviest flywheel', { 'rotor.flywheel': most('rotor.flywheel') }, 2e6],
  ['the heaviest machine', { 'machine.inertia': most('machine.inertia') }, 2e6],
]

it.each(JOBS)('%s', (_, changes, budget) => {
  const whole = scenario(changes)
  const reading = read(whole)
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems))
  const { job, notes } = reading
  const outcome = finish(carryOut(job))
  const { trace, figures } = outcome
  expect(trace.ending.kind).not.toMatch(/too many|not finite|too small/)
  expect(trace.effort.rates).toBeLessThan(budget)
  expect(trace.time.length).toBeLessThanOrEqual(MOST_ROWS + 2)
  expect(notNumber({ figures, trace })).toBeNull()
  const report = jobReport('extreme', { job, notes, check: null, ...outcome }, UNITS)
  expect(nonsense(report, '')).toBeNull()
})

it('a one-second cycle for 30 days comes to figures: 2 592 000 turns, few of them run', () => {
  const job = jobOf(scenario({ ...JOBS[0][1], 'duty.repeatFor': '30 d' }))
  const made = finish(cycles(job))
  expect(made.reached).toBe(30 * 86_400)
  expect(made.computed.length).toBeLessThan(100)
  const figures = judgeCycles(job, made)
  expect(notNumber(figures)).toBeNull()
  const { sentence, support } = answerOf(job, figures, UNITS)
  expect(nonsense(`${sentence} ${support}`, '')).toBeNull()
})

it.each([
  ['supply.volts', '0.2 V', /^0\.2 V is less/],
  ['rotor.flywheel', '1e30 kg·m²', /is more|too/],
  ['winding.resistance', '0 Ω', /^0 Ω is /],
  ['duty.repeatFor', '400 d', /is more|longer/],
])('%s of %s is beyond what is legal, and says so', (path, text, wrong) => {
  const reading = read(scenario({ [path]: text }))
  if (reading.ok) throw new Error('it was taken')
  expect(reading.problems.map(({ path: at }) => at)).toContain(path)
  expect(reading.problems.find((each) => each.path === path)?.wrong).toMatch(wrong)
})
