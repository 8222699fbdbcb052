// From the text of a job to its temperatures: reader, units, usual values and run against the one-page plant.
import { expect, it } from 'vitest'
import { read } from '../../../sim/read.ts'
import { finish, run } from '../../../sim/run.ts'
import type { Scenario } from '../../../sim/scenario.ts'
import { onePage, type PageNumbers } from '../../onePagePlant.ts'

/** Numbers invented; what is left out takes its usual value. */
const scenario: Scenario = {
  format: 1,
  name: 'A mill in mixed units',
  plate: { amps: '12 A', speed: '4000 rpm' },
  supply: { kind: 'phase control', volts: '112 V', resistance: '300 mΩ', formFactor: '1.4' },
  controller: { compensation: '60 %', currentLimit: '24 A', ramp: '600 rpm/s' },
  winding: {
    resistance: '1.2 Ω',
    constant: '26 V/krpm',
    magnets: 'NdFeB',
    brushDrop: '1400 mV',
    insulation: 'F',
  },
  rotor: {
    inertia: '22000 g·cm²',
    flywheel: '0.2 lb·ft²',
    dryFriction: '1.2 lbf·in',
    windage: '0.0002 N·m·s/rad',
  },
  belt: {
    motorPulley: '2 in',
    jackshaftLarge: '4 in',
    jackshaftSmall: '60 mm',
    machinePulley: '120 mm',
    efficiency: '91 %',
  },
  machine: { inertia: '1.5 lb·ft²', drag: '0.4 lbf·ft' },
  heat: {
    cooling: 'none',
    air: '86 °F',
    windingCapacity: '400 J/K',
    frameCapacity: '500 J/K',
    windingToFrame: '1.4 W/K',
    windingToAir: '0.28 W/K',
    windingToFanAir: '3.2 W/K',
    frameToAir: '2 W/K',
    frameToFanAir: '0.55 W/K',
    fanSpeed: '4000 rpm',
  },
  cutoff: { opensAt: '140 °F', reclosesAt: '55 °C', place: 'magnet' },
  duty: {
    repeatFor: '12 min',
    start: '95 °F',
    phases: [
      { name: 'load', lasts: '0.2 min', speed: '800 rpm' },
      { name: 'rest', lasts: '25 s' },
      {
        name: 'cut',
        lasts: '45 s',
        speed: '800 rpm',
        power: '0.32 hp',
        surge: { torque: '2 lbf·ft', every: '10 s', lasts: '1.5 s' },
      },
      { name: 'stir', lasts: '20 s', speed: '500 rpm', fanTorque: '3 N·m' },
    ],
  },
}

// The same by hand: exact factors, PHYSICS.md's usual values.
const rpm = Math.PI / 30
const inch = 0.0254
const foot = 12 * inch
const pound = 0.45359237
const lbfft = pound * 9.80665 * foot
const ratio = 4
const plant: PageNumbers = {
  R20: 1.2,
  L: 0.005 * 1.2,
  k20: 0.026 / rpm,
  kTempCoeff: -0.0011,
  Vb: 1.4,
  Tc: (1.2 * lbfft) / 12,
  B: 2e-4,
  Jm: 22e-4,
  Jfly: 0.2 * pound * foot ** 2,
  N: ratio,
  eta: 0.91,
  Jsp: 1.5 * pound * foot ** 2,
  Td: 0.4 * lbfft,
  Bs: 0,
  Vmax: 112,
  Imax: 24,
  FF: 1.4,
  mode: 'sag',
  Rc: 0.6 * 1.2,
  accel: 600 * rpm,
  tauCl: 0.1,
  Cw: 400,
  Cm: 500,
  Gwm: 1.4,
  Ga0: 0.28,
  Gfan: 3.2,
  wRef: 4000 * rpm,
  m: 0.8,
  Gc0: 2,
  GcFan: 0.55,
  fan: 'none',
  blow: 1,
  rotToW: 0.5,
  brushToW: 0.5,
  Ta: 30,
  Tstart: 35,
  Topen: 60,
  Tclose: 55,
  ts: 60,
  blend: 0.25,
  reset: 'self',
  Rs: 0.3,
  stir: 0.2,
  wPower: (800 * rpm) / 4,
  lumpy: { FFp: 1.4, Ip: 12, wp: 4000 * rpm },
}

it('a job in mixed units runs like the same numbers by hand', () => {
  const found = read(scenario)
  if (!found.ok) throw new Error(JSON.stringify(found.problems))
  // The cut begins from standstill: what it asks under a quarter of its speed is felt at 37.8 s.
  const times = [5, 11.9, 13, 37.8, 40, 50, 81, 90, 101, 240, 720]
  const page = onePage(
    plant,
    [
      { seconds: 12, speed: 800 * rpm * ratio },
      { seconds: 25 },
      {
        seconds: 45,
        speed: 800 * rpm * ratio,
        load: { kind: 'power', value: 0.32 * 550 * lbfft },
        surge: { torque: 2 * lbfft, every: 10, lasts: 1.5 },
      },
      { seconds: 20, speed: 500 * rpm * ratio, load: { kind: 'square', value: 3 / (500 * rpm) ** 2 } },
    ],
    720,
    times,
    1e-6,
  )
  const { trace, samples } = finish(run({ ...found.job, accuracy: 'precise' }, { samples: times }))
  const events = trace.marks.filter(({ kind }) => kind === 'opens' || kind === 'recloses')
  // It does open: else neither the cutoff nor what warms it would be checked.
  expect(page.events.length).toBeGreaterThanOrEqual(2)
  expect(events.map(({ kind }) => kind)).toEqual(page.events.map(([kind]) => kind))
  events.forEach(({ t }, n) => {
    expect(Math.abs(t / page.events[n][1] - 1)).toBeLessThan(1e-4)
  })
  const allowed = [0.01, 0.05, 0.1, 0.005, 0.005, 0.005]
  times.forEach((t, n) => {
    page.samples[n].forEach((wanted, state) => {
      expect(Math.abs(samples[n][state] - wanted), `state ${state} at ${t} s`).toBeLessThan(allowed[state])
    })
  })
})
