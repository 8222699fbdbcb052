// `npm run sure` as a process: one line of JSON that follows its samples; a count that makes no sense is refused.
import { spawnSync } from 'node:child_process'
import { expect, it } from 'vitest'
import { root } from '../house/tree.ts'

const sure = (...options: string[]) =>
  spawnSync('node', ['--import', 'tsx', 'scenarios/sure.ts', ...options], { cwd: root, encoding: 'utf8' })

it('one line of JSON: shares, bands and what to measure', () => {
  const { stdout, status } = sure('scenarios/bandSaw.json', '--json', '--samples', '40', '--seed', '3')
  expect(status).toBe(0)
  const found = JSON.parse(stdout)
  expect(found).toMatchObject({ ok: true, seed: 3, samples: 40, fails: 'opens', answer: { verdict: 'No' } })
  expect(found.answer.sentence).toMatch(/^No\. The cutoff opens .* into the job, likely between \d/)
  expect(found.dots).toHaveLength(40)
  expect(found.settling.length).toBe(found.measurable)
}, 60_000)

it('refuses a count of samples that is none', () => {
  const { stderr, status } = sure('--samples', 'many')
  expect(status).toBe(2)
  expect(stderr).toContain('--samples takes a whole number')
}, 60_000)
