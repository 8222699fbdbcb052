// When the cutoff opens, against closed forms: oracles O05 (time to trip) and O20 (switch lag).
import { describe, expect, it } from 'vitest'
import { STATE } from '../../../sim/plant.ts'
import { oracle } from '../../checks/files.ts'
import { type Changes, look, near, plantWith, zero } from './lab.ts'
import { copper, flatOut, follow, held, holding, NO_COPPER, rising, runTrial, timeOf } from './trial.ts'

type Numbers = Record<string, number>

describe('O05: time from the air’s temperature to the switch’s', () => {
  const { inputs, answers } = oracle<Numbers, Numbers>('O05')
  const { C, G, R20, alpha20, Ta, Ttrip } = inputs
  const { resistance, moved } = copper(alpha20, R20)
  const changes = (i: number) =>
    held(i, {
      winding: { resistance },
      heat: { air: Ta + moved, windingCapacity: C, windingToAir: G },
      cutoff: { fitted: 'manual reset', opensAt: Ttrip + moved },
    })
  const amps = [
    ...[8, 9, 10, 12, 15, 20, 30].map((i) => [`I=${i}A_s`, i] as const),
    ['I=Icrit_s', answers.I_crit_A] as const,
  ]

  it.each(amps)('%s', (name, i) => {
    const [wanted, start] = [answers[name], Ta + moved]
    const levels = [rising(STATE.windingC, Ttrip + moved)]
    near(follow(plantWith(changes(i)), holding(i, start), [1e4], levels).crossed, wanted, 1e-6)
    // The run's switch feels the winding alone, 1 µs late.
    const trial = { changes: changes(i), flowing: i, startC: start, phases: [flatOut(6000)], seconds: 6000 }
    near(timeOf(runTrial(trial), 'opens'), wanted, 1e-5)
  })

  it('the current under which it never opens', () => {
    const plant = plantWith(changes(8))
    const least = zero((i) => look(plant, { i, windingC: Ttrip + moved }).windingRate, 1, 100)
    near(least, answers.I_min_that_ever_trips_A, 1e-9)
  })

  it('with nothing lost to the air', () => {
    const { windingRate } = look(plantWith(changes(30)), { i: 30, windingC: Ta + moved })
    // The copper warms on the way: heat grows in a straight line with temperature, so time goes by the logarithmic mean.
    const last = look(plantWith({ ...changes(30), heat: { windingCapacity: C } }), {
      i: 30,
      windingC: Ttrip + moved,
    })
    const mean = (last.windingRate - windingRate) / Math.log(last.windingRate / windingRate)
    near((Ttrip - Ta) / mean, answers['adiabatic_I=30A_s'], 1e-6)
  })
})

describe('O20: the switch feels the housing late', () => {
  const { inputs, answers } = oracle<Numbers, Numbers>('O20')
  const { theta_inf_K: rise, tau_s: tau, tau_switch_s: lag, theta_trip_K: trip } = inputs
  const i = 8
  const changes = (opensAt: number, late: number): Changes =>
    held(i, {
      winding: { resistance: NO_COPPER, brushDrop: rise / i },
      heat: { frameCapacity: tau, frameToAir: 1, brushShare: 0 },
      cutoff: { fitted: 'manual reset', opensAt: 20 + opensAt, windingShare: 0, lag: late },
    })
  const trial = (opensAt: number, late: number) =>
    runTrial({ changes: changes(opensAt, late), flowing: i, phases: [flatOut(6000)], seconds: 6000 })

  it('opening and its tolerance: 1e-6 when stepped finely, 1e-4 in a run', () => {
    const plant = plantWith(changes(trip, lag))
    const when = (state: number, level: number) =>
      follow(plant, holding(i, 20), [1e4], [rising(state, 20 + level)]).crossed
    near(when(STATE.frameC, trip), answers.t_housing_at_trip_s, 1e-6)
    near(when(STATE.switchC, trip), answers.t_switch_opens_s, 1e-6)
    near(when(STATE.switchC, trip - 5), answers['tolerance_-5K_s'], 1e-6)
    near(when(STATE.switchC, trip + 5), answers['tolerance_+5K_s'], 1e-6)
    near(timeOf(trial(trip, lag), 'opens'), answers.t_switch_opens_s, 1e-4)
    near(timeOf(trial(trip - 5, lag), 'opens'), answers['tolerance_-5K_s'], 1e-4)
    near(timeOf(trial(trip + 5, lag), 'opens'), answers['tolerance_+5K_s'], 1e-4)
  })

  it('the housing has gone past by then', () => {
    const plant = plantWith(changes(trip, lag))
    const [state] = follow(plant, holding(i, 20), [answers.t_switch_opens_s]).states
    near(state[STATE.frameC] - 20 - trip, answers.overshoot_of_housing_K, 1e-6)
    expect(state[STATE.switchC] - 20).toBeCloseTo(trip, 6)
  })
})
