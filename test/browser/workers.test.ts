// The pool in a real browser: a bundled module worker answers, stops, dies and is replaced.
import { mkdtemp, rm } from 'node:fs/promises'
import { join } from 'node:path'
import { build } from 'vite'
import { afterAll, beforeAll, expect, it, vi } from 'vitest'
import { root } from '../house/tree.ts'
import { endless, reference, short } from '../workers/jobs.ts'
import type { Offered } from './fixtures/workers.ts'
import { openBuilt, type Site, type Watched } from './page.ts'

declare const offered: Offered

let site: Site
let outDir: string
beforeAll(async () => {
  outDir = await mkdtemp(join(root, 'node_modules/.cache/workers-test-'))
  const fixtures = join(root, 'test/browser/fixtures')
  await build({
    configFile: join(root, 'ui/vite.config.ts'),
    root: fixtures,
    logLevel: 'warn',
    build: { outDir, rolldownOptions: { input: join(fixtures, 'workers.html') } },
  })
  vi.stubEnv('TEST_SITE', outDir)
  site = await openBuilt()
})
afterAll(async () => {
  await site?.close()
  vi.unstubAllEnvs()
  await rm(outDir, { recursive: true })
})

const opened = async (before: (watched: Watched) => Promise<unknown> = async () => {}) => {
  const watched = await site.newPage()
  await before(watched)
  await watched.page.goto(`${site.url}workers.html`)
  await watched.page.waitForFunction(() => 'offered' in window)
  return watched
}

it('gives the same numbers as the page itself, bit for bit, and in silence', async () => {
  const { page, consoleErrors, pageErrors, foreign } = await opened()
  const { job } = reference('fan-lost')
  const found = await page.evaluate(async (job) => {
    const { carryOut, createPool, crossCheck, difference, finish } = offered
    const pool = createPool(2)
    const never = new AbortController().signal
    const shares: number[] = []
    const [ran, checked] = await Promise.all([
      pool.run(never, job),
      pool.check(never, job, ({ t, of }) => shares.push(t / of), 300),
    ])
    pool.close()
    const outcome = finish(carryOut(job))
    const { trace } = outcome
    const comparison = finish(crossCheck(job, { until: 300 }))
    return {
      ran: difference(ran, { kind: 'done', ...outcome }),
      checked: difference(checked, { kind: 'checked', comparison }),
      noticed: difference(trace, { ...trace, time: trace.time.map((t) => t + 1e-9) }),
      rows: trace.time.length,
      forwards: shares.every((share, n) => n === 0 || share >= shares[n - 1]),
    }
  }, job)
  expect(found).toEqual({
    ran: null,
    checked: null,
    noticed: '/time/0',
    rows: expect.any(Number),
    forwards: true,
  })
  expect(found.rows).toBeGreaterThan(1000)
  expect({ consoleErrors, pageErrors, foreign }).toEqual({ consoleErrors: [], pageErrors: [], foreign: [] })
})

it.each(['run', 'check'] as const)('a %s taken back leaves a warm worker', async (kind) => {
  const { page } = await opened()
  const found = await page.evaluate(
    async ({ kind, endless, short }) => {
      const { createPool, made } = offered
      const pool = createPool(1)
      const control = new AbortController()
      const long = await pool[kind](control.signal, endless, () => control.abort())
      // Answered only when the worker has let go of the long one: it would run for minutes.
      const next = await pool.run(new AbortController().signal, short)
      pool.close()
      return [long.kind, next.kind, made.length]
    },
    { kind, endless, short },
  )
  expect(found).toEqual(['cancelled', 'done', 1])
})

it('a worker that does not load is said to be lost, and the next task gets a new one', async () => {
  const { page } = await opened(({ page }) => page.route('**/worker-*.js', (route) => route.abort()))
  const lost = await page.evaluate(async (short) => {
    const pool = offered.createPool(1)
    Object.assign(window, { pool })
    return (await pool.run(new AbortController().signal, short)).kind
  }, short)
  expect(lost).toBe('lost')
  await page.unroute('**/worker-*.js')
  const next = await page.evaluate(async (short) => {
    const { pool } = window as unknown as { pool: ReturnType<Offered['createPool']> }
    const reply = await pool.run(new AbortController().signal, short)
    pool.close()
    return [reply.kind, offered.made.length]
  }, short)
  expect(next).toEqual(['done', 2])
})

it('a worker that dies without a word is missed after some rounds', async () => {
  // A clock of the test's own: what is waited for is rounds, not seconds.
  const { page } = await opened(({ page }) => page.clock.install())
  await page.evaluate(
    ([endless, short]) =>
      new Promise<void>((killed) => {
        const never = new AbortController().signal
        const pool = offered.createPool(1)
        const lost = pool.run(never, endless, () => {
          offered.made[0].terminate()
          killed()
        })
        const both = Promise.all([lost, pool.run(never, short)])
        Object.assign(window, { both })
      }),
    [endless, short],
  )
  await page.clock.runFor('01:00')
  const kinds = await page.evaluate(async () => {
    const { both } = window as unknown as { both: Promise<{ kind: string }[]> }
    return [...(await both).map(({ kind }) => kind), offered.made.length]
  })
  expect(kinds).toEqual(['lost', 'done', 2])
})
