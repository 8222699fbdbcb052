// The map: against direct runs (more of them in test/campaigns/map.ts) and 48 h of "never", monotone facts, closed forms.
import { describe, expect, it } from 'vitest'
import { finish, run } from '../../../sim/run.ts'
import { mapColumn } from '../../../sim/studies/map/column.ts'
import { warmingDrive } from '../../../sim/studies/map/drive.ts'
import { warming } from '../../../sim/studies/map/warming.ts'
import { mapPoint } from '../../../sim/studies/map.ts'
import { assemble } from '../../../sim/plant.ts'
import { driveAt } from '../../../sim/steady/drive.ts'
import { operatingPoint } from '../../../sim/steady/operating.ts'
import { oracle } from '../../checks/files.ts'
import { near, partsWith } from '../physics/lab.ts'
import { seeded } from '../../seeded.ts'
import { endOf, heldJob, jobs } from './heldRuns.ts'

const [mill] = jobs
const rpm = Math.PI / 30

describe('against direct runs of the whole plant', () => {
  it('the speed gives way while it warms: the current limit reached hot', () => {
    const speed = 476 * rpm
    const most = mapColumn(mill.parts, 'none', speed, [0, 10, 20]).most
    const point = mapPoint(mill.parts, 'none', speed, 0.985 * most)
    expect(point.limit).toBe('none')
    expect(point.limitedAt).toBeGreaterThan(30)
    expect(point.limitedAt).toBeLessThan(point.seconds)
    near(point.seconds, endOf(heldJob(mill, 'none', speed, 0.985 * most)), 2e-3)
  })

  it('a slow soft start is followed: it heats on its way', () => {
    const slow = { ...mill, parts: { ...mill.parts, controller: { ...mill.parts.controller, ramp: 2 } } }
    const point = mapPoint(slow.parts, 'none', 350 * rpm, 9)
    near(point.seconds, endOf(heldJob(slow, 'none', 350 * rpm, 9)), 2e-3)
    expect(point.seconds - mapPoint(mill.parts, 'none', 350 * rpm, 9).seconds).toBeGreaterThan(5)
  })

  it('a heavy wheel takes minutes to run up, and the cutoff opens on the way', () => {
    const heavy = { ...mill, parts: { ...mill.parts, machine: { ...mill.parts.machine, inertia: 400 } } }
    const point = mapPoint(heavy.parts, 'none', 350 * rpm, 1)
    expect(mapPoint(mill.parts, 'none', 350 * rpm, 1).seconds).toBe(Infinity)
    expect(point.limitedAt).toBe(0)
    near(point.seconds, endOf(heldJob(heavy, 'none', 350 * rpm, 1)), 2e-3)
  })

  it('where the winding passes its class is found as a run finds it', () => {
    const point = mapPoint(mill.parts, 'none', 350 * rpm, 8)
    const { trace } = finish(run(heldJob(mill, 'none', 350 * rpm, 8), { toFirstOpening: true }))
    const passed = trace.marks.find(({ kind }) => kind === 'class passed')
    near(point.classAt, passed?.t ?? Number.NaN, 2e-3)
  })
})

it('the drive while it warms is the drive as it settles, whatever held it before', () => {
  const { even } = seeded(5)
  for (const { parts } of jobs) {
    const plant = assemble({ ...parts, controller: { ...parts.controller, currentLimit: 1e6 } })
    for (const holds of ['fixed voltage', 'sag compensation', 'speed feedback'] as const) {
      const other = { ...plant, controller: { ...plant.controller, holds } }
      const drive = warmingDrive(other)
      for (let n = 0; n < 40; n++) {
        const [asked, torque, windingC, frameC] = [even(0, 500), even(0, 15), even(0, 200), even(0, 100)]
        const steady = driveAt(other, asked, torque, windingC, frameC)
        // A belt at its grip creeps, and the quick drive leaves that aside.
        if (steady.spindle * plant.ratio < 0.99 * steady.motor) continue
        drive.torque = torque
        drive.find(asked, 0, windingC, frameC)
        expect(Math.abs(drive.speed - steady.motor)).toBeLessThan(1e-3 + 1e-4 * steady.motor)
        expect(Math.abs(drive.amps - steady.amps)).toBeLessThan(1e-3 + 1e-4 * steady.amps)
        expect(drive.short).toBe(steady.limit === 'voltage' || steady.limit === 'stall')
      }
    }
  }
})

it('what each kelvin does to speed and amps is what the drive itself does by differences', () => {
  const { even } = seeded(6)
  const by = 1e-3
  for (const { parts } of jobs) {
    const plant = assemble({ ...parts, controller: { ...parts.controller, currentLimit: 1e6 } })
    for (const holds of ['fixed voltage', 'sag compensation', 'speed feedback'] as const) {
      const drive = warmingDrive({ ...plant, controller: { ...plant.controller, holds } })
      const at = (asked: number, windingC: number, frameC: number) => {
        drive.find(asked, 0, windingC, frameC)
        return [drive.speed, drive.amps]
      }
      for (let n = 0; n < 20; n++) {
        const [asked, windingC, frameC] = [even(100, 400), even(30, 200), even(30, 100)]
        drive.torque = even(1, 8)
        const [speed, amps] = at(asked, windingC, frameC)
        const { speedByWinding, speedByFrame, ampsByWinding, ampsByFrame } = { ...drive.perKelvin() }
        const winding = at(asked, windingC + by, frameC)
        const frame = at(asked, windingC, frameC + by)
        const close = (slope: number, to: number, from: number) =>
          expect(Math.abs(slope - (to - from) / by)).toBeLessThan(1e-3 * Math.abs(slope) + 1e-4)
        close(speedByWinding, winding[0], speed)
        close(speedByFrame, frame[0], speed)
        close(ampsByWinding, winding[1], amps)
        close(ampsByFrame, frame[1], amps)
      }
    }
  }
})

describe('never, from steady heat', () => {
  it('just under the line it never opens in 48 h, just over it does', () => {
    for (const cooling of ['none', 'shaft fan'] as const) {
      const speed = 300 * rpm
      const { never } = mapColumn(mill.parts, cooling, speed, [0, 2, 4, 6, 8, 10])
      expect(endOf(heldJob(mill, cooling, speed, 0.985 * never))).toBe(Infinity)
      expect(endOf(heldJob(mill, cooling, speed, 1.015 * never))).toBeLessThan(48 * 3600)
    }
  })

  it('settles where the operating point does', () => {
    for (const torque of [0, 1, 2, 3]) {
      const settled = warming(mill.parts, 350 * rpm).settles(torque)
      const { warm } = operatingPoint(mill.parts, 350 * rpm, torque)
      expect(settled!.switchC).toBeCloseTo(warm!.switchC, 3)
      expect(settled!.windingC).toBeCloseTo(warm!.windingC, 3)
    }
  })
})

describe('monotone facts (PHYSICS.md §6)', () => {
  const at = (changes: object, cooling: 'none' | 'shaft fan' | 'blower', speed: number, torque: number) =>
    mapPoint({ ...mill.parts, ...changes }, cooling, speed * rpm, torque).seconds

  it('within the current limit the more torque, the sooner; the better the air, the later', () => {
    for (const speed of [150, 350, 600]) {
      const times = [5, 6, 8, 10, 12].map((torque) => at({}, 'none', speed, torque))
      for (let n = 1; n < times.length; n++) expect(times[n]).toBeLessThan(times[n - 1])
      expect(at({}, 'shaft fan', speed, 8)).toBeGreaterThan(at({}, 'none', speed, 8))
      expect(at({ heat: { ...mill.parts.heat, air: 35 } }, 'none', speed, 8)).toBeLessThan(
        at({}, 'none', speed, 8),
      )
    }
  })

  it('with a shaft fan it is longest at no end of the speeds, with slow running the worse', () => {
    expect(at({}, 'shaft fan', 900, 8)).toBeGreaterThan(at({}, 'shaft fan', 200, 8))
    // Without one faster running only adds friction heat.
    expect(at({}, 'none', 900, 8)).toBeLessThan(at({}, 'none', 200, 8))
  })

  it('beyond the limit it stands, and more torque changes nothing any more', () => {
    const [a, b] = [at({}, 'none', 350, 16.5), at({}, 'none', 350, 19)]
    near(a, b, 0.01)
    expect(mapPoint(mill.parts, 'none', 350 * rpm, 19)).toMatchObject({ limit: 'stall', limitedAt: 0 })
  })
})

describe('O05: one body with copper in it, held at a current, through the reduced system', () => {
  const { inputs, answers } = oracle<Record<string, number>, Record<string, number>>('O05')
  it.each([8, 9, 10, 12, 15, 20, 30])('%d A', (amps) => {
    // The winding alone stores and gives off heat; magnets whose flux hardly changes, on a frame that hardly warms.
    // Copper by 235 + T: the coefficient at 20 °C is 1/255, the oracle's 0.00393; the closed form is taken with ours.
    const alpha = 1 / 255
    const { C, G, R20, Ta, Ttrip } = inputs
    const parts = partsWith({
      supply: { volts: 1000 },
      winding: { resistance: R20, constant: 0.3, magnets: 'AlNiCo' },
      controller: { holds: 'speed feedback', currentLimit: 1e3, ramp: 1e9 },
      rotor: { inertia: 1e-9 },
      heat: { air: Ta, windingCapacity: C, windingToAir: G, windingToFrame: 1e-12 },
      cutoff: { fitted: 'self-reset', opensAt: Ttrip, windingShare: 1, lag: 1e-3 },
    })
    const { constant } = parts.winding
    const cold = 1 - 0.0002 * (Ta - 20)
    const found = mapPoint(parts, 'none', 100, amps * constant * cold)
    const lam = G - amps * amps * R20 * alpha
    const p0 = amps * amps * R20 * (1 + alpha * (Ta - 20))
    near(found.seconds, (-C / lam) * Math.log(1 - (lam * (Ttrip - Ta)) / p0), 1e-3)
    // The oracle's own figure, as far as the two coefficients agree.
    near(found.seconds, answers[`I=${amps}A_s`], 0.01)
  })

  it('under the least current that ever trips it never does', () => {
    expect(answers.I_min_that_ever_trips_A).toBeCloseTo(6.4557, 3)
  })
})

it('O10: a constant heat into one time constant ends when the exponential says', () => {
  // No copper: heat is the brush drop's, so the load factor of O10 is a ratio of torques, and torque one of heats.
  const { inputs, answers } = oracle<
    { tau_min: number[]; t_min: number[] },
    Record<string, { loss_factor: number }>
  >('O10')
  const tau = inputs.tau_min[0]
  for (const minutes of inputs.t_min) {
    const parts = partsWith({
      supply: { volts: 1000 },
      winding: { resistance: 1e-12, constant: 0.3, magnets: 'AlNiCo', brushDrop: 10 },
      controller: { holds: 'speed feedback', currentLimit: 1e4, ramp: 1e9 },
      rotor: { inertia: 1e-9 },
      heat: { air: 20, brushShare: 1, windingToAir: 2, windingCapacity: 120 * tau, windingToFrame: 1e-12 },
      cutoff: { fitted: 'self-reset', opensAt: 120, windingShare: 1, lag: 1e-3 },
    })
    // 100 K over 2 W/K is 200 W: 20 A of the brushes' 10 V, 6 N·m.
    const factor = answers[`tau=${tau}min t=${minutes}min a=0.0`].loss_factor
    near(mapPoint(parts, 'none', 100, 6 * factor).seconds, 60 * minutes, 1e-3)
    expect(mapPoint(parts, 'none', 100, 6 * 0.999).seconds).toBe(Infinity)
  }
})

it('with no cutoff it is minutes until the winding passes its class', () => {
  const bare = { ...mill.parts, cutoff: { ...mill.parts.cutoff, fitted: 'none' as const } }
  const point = mapPoint(bare, 'none', 350 * rpm, 8)
  expect(point.ends).toBe('class')
  near(point.seconds, mapPoint(mill.parts, 'none', 350 * rpm, 8).classAt, 1e-9)
  const column = mapColumn(bare, 'none', 350 * rpm, [0, 2, 4, 6])
  expect(column.never).toBe(column.cool)
})
