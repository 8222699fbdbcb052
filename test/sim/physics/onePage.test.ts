// The product against the one-page plant: written apart, integrated otherwise, over what runs.json leaves out.
import { describe, expect, it } from 'vitest'
import { referenceJob } from '../../../scenarios/referenceRuns.ts'
import type { Job } from '../../../sim/job.ts'
import type { Heat } from '../../../sim/parts/heat.ts'
import { finish, run } from '../../../sim/run.ts'
import { references } from '../../checks/files.ts'
import { onePage, type PageNumbers, type PagePhase } from '../../onePagePlant.ts'

const { base, runs } = references

describe('the one-page plant against runs.json, 1e-4 K and 1e-6 of an event’s time', () => {
  it.each(['stall-at-limit', 'power-load', 'two-speeds', 'ungeared-hot-room', 'voltage-limited'])(
    '%s',
    (name) => {
      const { plant, phases, seconds, samples, expected } = runs.find((one) => one.name === name)!
      const times = [...new Set([...samples, seconds])]
      const page = onePage({ ...base, ...plant }, phases, seconds, times)
      times.forEach((t, n) => {
        const { Tw, Tm, Ts } = expected.samples[String(t)] ?? expected.end
        ;[Tw, Tm, Ts].forEach((wanted, j) => {
          expect(Math.abs(page.samples[n][3 + j] - wanted)).toBeLessThan(1e-4)
        })
      })
      expect(page.events.map(([kind]) => kind)).toEqual(expected.events.map(([kind]) => kind))
      expected.events.forEach(([, t], n) => {
        expect(Math.abs(page.events[n][1] / t - 1)).toBeLessThan(1e-6)
      })
    },
  )
})

interface Own {
  name: string
  plant: Partial<PageNumbers>
  phases: PagePhase[]
  seconds: number
  times: number[]
  /** Kinds of event, in order. */
  events?: string[]
}

/** Our own jobs: numbers invented, each to reach a corner. */
const jobs: Own[] = [
  {
    name: 'surges, a blower at 60 %, fixed voltage',
    plant: { mode: 'open', fan: 'blower', blow: 0.6 },
    phases: [
      {
        seconds: 31,
        speed: 300,
        load: { kind: 'torque', value: 4 },
        surge: { torque: 5, every: 7, lasts: 2.5 },
      },
      { seconds: 9 },
    ],
    seconds: 150,
    times: [2.4, 2.6, 8, 29, 30.4, 33, 75, 150],
  },
  {
    name: 'surges on an idling spindle, speed feedback, slow response',
    plant: { tauCl: 0.6, L: 0.03 },
    phases: [{ seconds: 50, speed: 250, surge: { torque: 9, every: 10, lasts: 1 } }],
    seconds: 60,
    times: [0.5, 1.1, 3, 10.4, 11.2, 20.5, 41.5, 60],
  },
  {
    name: 'phase control without a choke on a soft supply, sag compensation, stirred air',
    plant: {
      mode: 'sag',
      Rc: 0.7,
      fan: 'none',
      stir: 0.25,
      Rs: 1.4,
      Vmax: 118,
      lumpy: { FFp: 1.42, Ip: 13, wp: 419 },
    },
    phases: [
      { seconds: 30, speed: 340, load: { kind: 'torque', value: 7.5 } },
      { seconds: 20, speed: 60, load: { kind: 'torque', value: 2 } },
      { seconds: 10 },
    ],
    seconds: 200,
    times: [1, 6, 29, 34, 49, 51, 140, 200],
  },
  {
    name: 'enclosed, NdFeB, dirty air path that matters no more',
    plant: { enclosed: 'plain', kTempCoeff: -0.0011, dirt: 0.5, mode: 'open' },
    phases: [
      { seconds: 100, speed: 300, load: { kind: 'torque', value: 6 } },
      { seconds: 40, speed: 120 },
    ],
    seconds: 400,
    times: [99, 139, 400],
  },
  {
    name: 'enclosed with an outer fan, AlNiCo',
    plant: { enclosed: 'outer fan', GcFan: 2.5, kTempCoeff: -0.0002, mode: 'sag', Rc: 0.5 },
    phases: [
      { seconds: 100, speed: 300, load: { kind: 'torque', value: 6 } },
      { seconds: 40, speed: 120 },
    ],
    seconds: 400,
    times: [99, 139, 400],
  },
  {
    name: 'a dirty air path',
    plant: { dirt: 0.3 },
    phases: [{ seconds: 300, speed: 380, load: { kind: 'torque', value: 7 } }],
    seconds: 300,
    times: [10, 100, 300],
  },
  {
    name: 'constant power down to a crawl at the current limit',
    plant: { Imax: 9, wPower: 25 },
    phases: [
      { seconds: 6, speed: 300 },
      { seconds: 20, speed: 300, load: { kind: 'power', value: 900 } },
      { seconds: 6, speed: 300, load: { kind: 'power', value: 200 } },
    ],
    seconds: 64,
    times: [5, 6.5, 8, 25, 27, 31, 50, 64],
  },
  {
    name: 'a fan’s torque with surges, a heavy flywheel, turned down while running',
    plant: { Jfly: 0.08, mode: 'open' },
    phases: [
      {
        seconds: 15,
        speed: 380,
        load: { kind: 'square', value: 4e-4 },
        surge: { torque: 3, every: 6, lasts: 1.5 },
      },
      { seconds: 10, speed: 90, load: { kind: 'square', value: 4e-4 } },
    ],
    seconds: 60,
    times: [3, 7, 14, 17, 24, 26, 60],
  },
  {
    name: 'creeping, where friction, drag and cut are at their knees',
    plant: { ts: 5 },
    phases: [
      { seconds: 20, speed: 0.5 },
      { seconds: 20, speed: 1.5, load: { kind: 'torque', value: 4 } },
    ],
    seconds: 40,
    times: [2, 19, 22, 39],
  },
  {
    name: 'manual reset: opens on a hot shell and stays open',
    plant: { reset: 'manual', Tstart: 90, Topen: 94, Tclose: 60, blend: 0.1, ts: 90, fan: 'none' },
    phases: [{ seconds: 60, speed: 300, load: { kind: 'torque', value: 8 } }, { seconds: 15 }],
    seconds: 600,
    times: [10, 100, 300, 600],
    events: ['opens'],
  },
  {
    name: 'hotter than its opening at the start: open at once, recloses, opens again',
    plant: { Tstart: 118, Topen: 115, Tclose: 100, ts: 20, Gc0: 6, fan: 'none' },
    phases: [{ seconds: 300, speed: 200, load: { kind: 'torque', value: 9 } }],
    seconds: 300,
    times: [5, 150, 250, 300],
    events: ['opens', 'recloses', 'opens'],
  },
  {
    name: 'stalled at a high limit: the winding is lost before the shell’s switch knows',
    plant: { Imax: 40, Topen: 120, blend: 0.1, ts: 90, fan: 'none' },
    phases: [{ seconds: 600, speed: 300, load: { kind: 'torque', value: 60 } }],
    seconds: 600,
    times: [0.05, 1, 20],
    events: ['destroyed'],
  },
]

const COOLING = { plain: 'enclosed', 'outer fan': 'enclosed, outer fan' } as const

/** One of our own jobs for the product, at the "precise" tolerance. */
function jobOf({ name, plant, phases, seconds }: Own): Job {
  const expected = {
    events: [],
    samples: {},
    peak: { Tw: 0, Tm: 0, Ts: 0 },
    end: { i: 0, w: 0, Tw: 0, Tm: 0, Ts: 0 },
  }
  const job = referenceJob(
    base,
    { name, about: '', seconds, samples: [], plant, phases, expected },
    'precise',
  )
  const heat: Heat = {
    ...job.parts.heat,
    airPath: plant.dirt ?? 1,
    ...(plant.enclosed && { cooling: COOLING[plant.enclosed] }),
  }
  return {
    ...job,
    parts: { ...job.parts, heat },
    duty: {
      seconds,
      startC: plant.Tstart ?? job.duty.startC,
      phases: job.duty.phases.map((phase, n) => ({ ...phase, surge: phases[n].surge ?? null })),
    },
  }
}

/** Half of what is allowed against runs.json in temperature; a quarter in time; 0.01 A and 0.05 rad/s. */
const ALLOWED = [0.01, 0.05, 0.1, 0.005, 0.005, 0.005]

describe.each(jobs)('$name', (own) => {
  const { plant, phases, seconds, times, events = [] } = own
  const page = onePage({ ...base, ...plant }, phases, seconds, times, 1e-6)
  const { trace, samples } = finish(run(jobOf(own), { samples: times }))

  it('the same states', () => {
    expect(page.samples.length).toBe(times.length)
    expect(samples.length).toBe(times.length)
    times.forEach((t, n) => {
      page.samples[n].forEach((wanted, state) => {
        const off = Math.abs(samples[n][state] - wanted)
        expect(off, `state ${state} at ${t} s: ${samples[n][state]} against ${wanted}`).toBeLessThan(
          ALLOWED[state],
        )
      })
    })
  })

  it('the same peaks', () => {
    const { windingC, frameC, switchC } = trace.peaks
    ;[windingC, frameC, switchC].forEach(({ value }, n) => {
      expect(Math.abs(value - page.peak[n])).toBeLessThan(0.005)
    })
  })

  it('the same events', () => {
    const found = trace.marks
      .filter(({ kind }) => kind === 'opens' || kind === 'recloses')
      .map(({ kind, t }): [string, number] => [kind, t])
    if (trace.ending.kind === 'destroyed') found.push(['destroyed', trace.ending.t])
    expect(page.events.map(([kind]) => kind)).toEqual(events)
    expect(found.map(([kind]) => kind)).toEqual(events)
    page.events.forEach(([, t], n) => {
      expect(Math.abs(found[n][1] - t)).toBeLessThanOrEqual(2.5e-5 * t)
    })
  })
})
