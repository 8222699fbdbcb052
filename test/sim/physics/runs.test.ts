// Whole runs against test/checks/runs.json: two independent implementations of PHYSICS.md that agree to 1e-5 K.
import { describe, expect, it } from 'vitest'
import { compareRun, PRECISE, passes } from '../../../scenarios/referenceRuns.ts'
import { references } from '../../checks/files.ts'

const { base, runs } = references

describe('at the "precise" tolerance: 0.02 K, 1e-4 of an event’s time', () => {
  it.each(runs)('$name', (reference) => {
    const found = compareRun(base, reference, 'precise')
    expect(found.sameEvents, `${found.found} events, not ${found.expected}`).toBe(true)
    expect(found.eventError).toBeLessThanOrEqual(PRECISE.event)
    expect(found.temperatureError).toBeLessThanOrEqual(PRECISE.temperature)
    expect(passes(found)).toBe(true)
  })
})

describe('at the default tolerance: 0.05 K, 1e-3, up to the first event', () => {
  it.each(runs)('$name', (reference) => {
    const found = compareRun(base, reference, 'default')
    expect(found.firstEventError).toBeLessThanOrEqual(1e-3)
    // Without events the peaks, too, lie before the first of them.
    const error = reference.expected.events.length > 0 ? found.earlyTemperatureError : found.temperatureError
    expect(error).toBeLessThanOrEqual(0.05)
  })
})

describe('a number of the plant that is 1 % off fails', () => {
  // The rest (L, tauCl, Rs, wPower) leaves no mark of 0.02 K on these runs: the one-page plant looks at those.
  const telling = {
    'power-load': 'R20 k20 Vb Tc B N eta Td Bs FF Cw Cm Gwm Ga0 Gfan wRef m Gc0 rotToW brushToW Ta ts blend',
    'stall-at-limit': 'Imax Topen Tclose',
    'voltage-limited': 'Vmax',
    'ungeared-hot-room': 'Rc GcFan',
    blower: 'Jfly blow',
    'lumpy-supply': 'Jm Jsp accel stir',
  } as const
  const numbers = Object.entries(telling).flatMap(([run, names]) =>
    names.split(' ').map((name) => [name, run]),
  )

  it.each(numbers)('%s in %s', (name, run) => {
    const reference = runs.find((one) => one.name === run)!
    const value = Number({ ...base, ...reference.plant }[name as keyof typeof base])
    const off = { ...reference, plant: { ...reference.plant, [name]: value * 1.01 } }
    expect(passes(compareRun(base, off, 'precise'))).toBe(false)
  })
})
