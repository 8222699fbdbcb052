// The worker's functions without a worker: slices and breaths counted on a clock of our own.
import { CHANNELS, SUMS } from '../../sim/trace.ts'
import { isDeepStrictEqual } from 'node:util'
import { expose, proxy, wrap } from 'comlink'
import { expect, it } from 'vitest'
import { carryOut } from '../../sim/carryOut.ts'
import { crossCheck } from '../../sim/crossCheck.ts'
import { canonical, type Job } from '../../sim/job.ts'
import { read } from '../../sim/read.ts'
import { againstOld } from '../../sim/rival/picture.ts'
import { finish, type Progress } from '../../sim/run.ts'
import { ratioStudy } from '../../sim/studies/ratio.ts'
import type { Service, Task } from '../../workers/contract.ts'
import { buffersIn, type Pace, SLICE, service, TELL, work } from '../../workers/serve.ts'
import { example } from '../ui/demo.ts'
import { endless, reference, short } from './jobs.ts'

const never = new AbortController().signal

/** A clock that advances `tick` ms whenever it is read, and breaths that are counted. */
function paced(tick: number, atBreath: (breath: number) => void = () => {}) {
  let ms = 0
  const count = { breaths: 0, looks: 0 }
  const pace: Pace = {
    now: () => {
      count.looks++
      ms += tick
      return ms
    },
    breathe: async () => atBreath(++count.breaths),
  }
  return { pace, count }
}

it('runs as the direct call does, bit for bit', async () => {
  const { job } = reference('fan-lost')
  const reply = await work(never, { kind: 'run', job }, undefined, paced(SLICE).pace)
  const direct = (of: Job) => ({ kind: 'done', ...finish(carryOut(of)) })
  expect(isDeepStrictEqual(reply, direct(job))).toBe(true)
  const warmer = { ...job, duty: { ...job.duty, startC: job.duty.startC + 1e-9 } }
  expect(isDeepStrictEqual(reply, direct(warmer))).toBe(false)
})

it('checks as the direct call does', async () => {
  const reply = await work(never, { kind: 'check', job: short, until: 20 }, undefined, paced(SLICE).pace)
  expect(reply).toEqual({ kind: 'checked', comparison: finish(crossCheck(short, { until: 20 })) })
})

it('studies ratios and draws the old motor as the direct calls do', async () => {
  const scenario = example('bandSaw')
  const reading = read(scenario)
  if (!reading.ok) throw new Error('the example does not read')
  const variant = { name: 'As found', changes: {} }
  const study = await work(never, { kind: 'ratio', scenario, variant })
  expect(study).toEqual({ kind: 'studied', study: finish(ratioStudy(scenario, { variant })) })
  const picture = await work(
    never,
    { kind: 'against', job: reading.job, rival: null },
    undefined,
    paced(SLICE).pace,
  )
  expect(picture).toEqual({ kind: 'against', picture: finish(againstOld(reading.job, null)) })
})

it('breathes after each slice and not within it', async () => {
  const { job } = reference('shaft-fan', 'precise')
  const yields = [...carryOut(job)].length
  const breaths = async (tick: number) => {
    const { pace, count } = paced(tick)
    await work(never, { kind: 'run', job }, undefined, pace)
    return count.breaths
  }
  expect(yields).toBeGreaterThan(20)
  // A step of the clock a yield: a whole slice in one, or four, or a clock that stands.
  expect(await breaths(SLICE)).toBe(yields)
  expect(await breaths(SLICE / 4)).toBe(Math.floor(yields / 4))
  expect(await breaths(0)).toBe(0)
})

it('tells its progress forwards, up to the end', async () => {
  for (const task of [
    { kind: 'run', job: reference('shaft-fan', 'precise').job },
    { kind: 'check', job: reference('shaft-fan', 'precise').job, until: 300 },
  ] as const) {
    const told: Progress[] = []
    await work(never, task, (progress) => told.push(progress), paced(TELL).pace)
    const shares = told.map(({ t, of }) => t / of)
    expect(told.length).toBeGreaterThan(20)
    expect(shares).toEqual(shares.toSorted((a, b) => a - b))
    expect(shares.at(-1)).toBeGreaterThan(0.9)
    expect(shares.at(-1)).toBeLessThanOrEqual(1)
  }
})

it('tells it no more often than that', async () => {
  const told: number[] = []
  const { pace, count } = paced(SLICE / 2, () => {})
  const { job } = reference('shaft-fan', 'precise')
  await work(never, { kind: 'run', job }, () => told.push(count.looks * (SLICE / 2)), pace)
  const gaps = told.slice(1).map((ms, n) => ms - told[n])
  expect(gaps.length).toBeGreaterThan(5)
  expect(Math.min(...gaps)).toBeGreaterThanOrEqual(TELL)
  expect(Math.max(...gaps)).toBeLessThan(TELL + 3 * SLICE)
})

it.each(['run', 'check'] as const)('a %s taken back does no further slice', async (kind) => {
  const control = new AbortController()
  const told: Progress[] = []
  const { pace, count } = paced(SLICE / 4, (breath) => {
    if (breath === 3) control.abort()
  })
  const reply = await work(control.signal, { kind, job: endless }, (progress) => told.push(progress), pace)
  expect(reply).toEqual({ kind: 'cancelled' })
  expect(count.breaths).toBe(3)
  expect(told).toHaveLength(1)
})

it('one taken back beforehand takes no step', async () => {
  const { pace, count } = paced(1)
  expect(await work(AbortSignal.abort(), { kind: 'run', job: endless }, undefined, pace)).toEqual({
    kind: 'cancelled',
  })
  expect(count).toEqual({ breaths: 0, looks: 0 })
})

it('answers a bug as data', async () => {
  const broken = { ...short, parts: null } as unknown as Job
  const reply = await work(never, { kind: 'run', job: broken })
  expect(reply.kind).toBe('failed')
  expect(reply.kind === 'failed' && reply.why).toContain('null')
})

it('a job goes through a structured clone unharmed', () => {
  const { job } = reference('lumpy-supply')
  expect(structuredClone(job)).toEqual(job)
  expect(canonical(structuredClone(job))).toBe(canonical(job))
})

it('finds each buffer once, however deep', () => {
  const a = new Float64Array(4)
  const b = new Uint8Array(2)
  const shared = new Float64Array(a.buffer, 8)
  expect(buffersIn({ a, list: [{ b }, shared, null, 'text', 3] })).toEqual([a.buffer, b.buffer])
})

/** The service behind a real port, with what it sent. */
function behindPort(pace?: Pace) {
  const { port1, port2 } = new MessageChannel()
  const inner = service(pace)
  const sent: unknown[] = []
  const outer: Service = {
    ...inner,
    work: async (call, task) => {
      const reply = await inner.work(call, task)
      sent.push(reply)
      return reply
    },
  }
  expose(outer, port1)
  const close = () => {
    port1.close()
    port2.close()
  }
  return { remote: wrap<Service>(port2), sent, close }
}

it('hands its columns over instead of copying them', async () => {
  const { remote, sent, close } = behindPort()
  const { job } = reference('shaft-fan', 'precise')
  const reply = await remote.work(1, { kind: 'run', job })
  close()
  const left = buffersIn(sent[0])
  const came = buffersIn(reply)
  // time, every column, and two arrays a checkpoint
  const columns = 1 + CHANNELS.length + SUMS.length
  expect(reply.kind === 'done' && reply.trace.checkpoints.length).toBeGreaterThan(50)
  expect(came).toHaveLength(reply.kind === 'done' ? columns + 2 * reply.trace.checkpoints.length : 0)
  expect(left).toHaveLength(came.length)
  expect(left.every((buffer) => buffer.byteLength === 0)).toBe(true)
  expect(came.every((buffer) => buffer.byteLength > 0)).toBe(true)
})

it('hears a cancel in its breath: two slices later at the most', async () => {
  const { remote, close } = behindPort()
  let slices = 0
  let atCancel = 0
  await remote.listen(
    proxy((call: number) => {
      if (++slices === 3) {
        atCancel = slices
        remote.cancel(call)
      }
    }),
  )
  const task: Task = { kind: 'check', job: endless }
  expect(await remote.work(7, task)).toEqual({ kind: 'cancelled' })
  expect(atCancel).toBe(3)
  expect(slices - atCancel).toBeLessThanOrEqual(2)
  close()
})

it('leaves a call alone when another is taken back', async () => {
  let ms = 0
  let breaths = 0
  const { remote, close } = behindPort({
    now: () => {
      ms += SLICE
      return ms
    },
    breathe: () => {
      breaths++
      return new Promise((resolve) => setImmediate(resolve))
    },
  })
  const reply = remote.work(8, { kind: 'run', job: reference('shaft-fan', 'precise').job })
  remote.cancel(7)
  expect((await reply).kind).toBe('done')
  expect(breaths).toBeGreaterThan(20)
  close()
})
