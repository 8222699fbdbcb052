// The map's command line: a table to read, and the whole grid as one line of JSON.
import { execFileSync, spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { root } from '../house/tree.ts'

const tsx = join(root, 'node_modules/tsx/dist/cli.mjs')
const run = (...args: string[]) =>
  execFileSync(process.execPath, [tsx, 'scenarios/map.ts', ...args], { cwd: root, encoding: 'utf8' })

it('prints a table with and without the fan, and what is marked', () => {
  const text = run('--units', 'metric').replaceAll('\u00a0', ' ')
  expect(text).toMatch(/Minutes until the cutoff opens, running without a pause from cold/)
  expect(text).toMatch(/\n\s+N·m\s+200 rpm\s+400 rpm/)
  expect(text).toMatch(/No fan[\s\S]*With shaft fan/)
  expect(text).toContain('Milling without a pause: the cutoff opens in 25 min')
})

it('gives the grid as one line of JSON, never as null', () => {
  const text = run('scenarios/bandSaw.json', '--json', '--speeds', '4', '--torques', '3')
  expect(text.trim().split('\n')).toHaveLength(1)
  const { ok, speeds, torques, panels, marks } = JSON.parse(text)
  expect(ok).toBe(true)
  expect([speeds.length, torques.length, panels.length]).toEqual([4, 3, 2])
  expect(panels[0].columns).toHaveLength(4)
  expect(panels[0].columns[0].seconds[0]).toBeNull()
  expect(panels[0].columns[3].seconds[2]).toBeGreaterThan(60)
  expect(marks[0].name).toBe('cutting')
  const bad = spawnSync(process.execPath, [tsx, 'scenarios/map.ts', '--speeds', '1'], {
    cwd: root,
    encoding: 'utf8',
  })
  expect(bad.status).toBe(2)
  expect(bad.stderr).toMatch(/--speeds: a whole number from 2 to 400/)
})
