// Short-time torque: the S2 oracle, a run of the plant, and where it meets the all-day torque.
import { describe, expect, it } from 'vitest'
import { fromUnit } from '../../../sim/quantity.ts'
import { finish, run } from '../../../sim/run.ts'
import { allDayTorque } from '../../../sim/steady/allDay.ts'
import { shortTimeTorque } from '../../../sim/steady/shortTime.ts'
import { oracle } from '../../checks/files.ts'
import { job } from '../../jobs.ts'
import { near, partsWith } from '../physics/lab.ts'
import { NO_COPPER } from '../physics/trial.ts'

describe('O10: a body of one time constant, overloaded for a while', () => {
  const { inputs, answers } = oracle<
    { tau_min: number[]; t_min: number[] },
    Record<string, { loss_factor: number }>
  >('O10')
  const cases = inputs.tau_min.flatMap((tau) => inputs.t_min.map((t) => [tau, t] as const))
  it.each(cases)('time constant %d min, %d min', (tau, minutes) => {
    // Brush heat follows the amps and the amps the torque: so torque may be passed by as much as heat may.
    const parts = partsWith({
      supply: { volts: 1000 },
      winding: { resistance: NO_COPPER, constant: 0.3, magnets: 'AlNiCo', brushDrop: 10 },
      controller: { currentLimit: 1000 },
      heat: {
        air: 25,
        brushShare: 1,
        windingToAir: 2,
        windingCapacity: 2 * 60 * tau,
        frameToAir: 1,
      },
    })
    const most = shortTimeTorque(parts, 10, 60 * minutes)
    expect(most.limit).toBe('winding')
    near(
      most.torque / allDayTorque(parts, 10).torque,
      answers[`tau=${tau}min t=${minutes}min a=0.0`].loss_factor,
      1e-6,
    )
  })
})

const make = (torque: number, changes = {}) =>
  job({
    'controller.holds': 'speed feedback',
    'controller.ramp': '90000 rpm/s',
    'controller.currentLimit': '60 A',
    'machine.inertia': '0.001 kg·m²',
    'heat.cooling': 'none',
    duty: {
      phases: [{ name: 'held', lasts: '10 min', speed: '350 rpm', torque: `${torque} N·m` }],
      repeatFor: '10 min',
    },
    ...changes,
  })
const speed = fromUnit(350, 'rpm')

it('a run of ten minutes at the ten-minute torque just reaches the class limit', () => {
  const most = shortTimeTorque(make(1).parts, speed, 600)
  expect(most.limit).toBe('winding')
  const { peaks } = finish(run({ ...make(most.torque), accuracy: 'precise' })).trace
  // The second of running up is all the difference there is.
  expect(Math.abs(peaks.windingC.value - 120)).toBeLessThan(0.3)
  expect(Math.abs(peaks.windingC.value - most.windingC)).toBeLessThan(0.3)
})

it('the switch limits it where it opens first: a run opens within the last seconds, or just not', () => {
  const low = { 'cutoff.opensAt': '60 °C', 'cutoff.reclosesAt': '40 °C' }
  const { torque, limit } = shortTimeTorque(make(1, low).parts, speed, 600)
  expect(limit).toBe('switch')
  const opens = (times: number) =>
    finish(run(make(times * torque, low))).trace.marks.some(({ kind }) => kind === 'opens')
  expect(opens(1.01)).toBe(true)
  expect(opens(0.99)).toBe(false)
})

it('the longer the less; for days it is the all-day torque, for a second what the amps give', () => {
  const { parts } = make(1)
  const at = (seconds: number, cooling?: 'shaft fan') => shortTimeTorque(parts, speed, seconds, cooling)
  const torques = [1, 60, 300, 1800, 7200, 1e6].map((seconds) => at(seconds).torque)
  for (let n = 1; n < torques.length; n++) expect(torques[n]).toBeLessThan(torques[n - 1])
  near(torques[5], allDayTorque(parts, speed).torque, 1e-4)
  near(at(1e6, 'shaft fan').torque, allDayTorque(parts, speed, 'shaft fan').torque, 1e-4)
  expect(at(1)).toMatchObject({ limit: 'current' })
  near(at(1).amps, 60, 1e-9)
})
