// `npm run grid` as a process: JSON for programs, a table for people, and a refusal with its path.
import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { root } from '../house/tree.ts'

const grid = (...given: string[]) =>
  spawnSync(process.execPath, ['--import', 'tsx', join(root, 'scenarios/grid.ts'), ...given], {
    cwd: root,
    encoding: 'utf8',
  })

it('prints one line of JSON with the figure at each crossing', () => {
  const { stdout, status } = grid(
    'scenarios/bandSaw.json',
    '--x',
    'heat.air=10..30degC',
    '--nx',
    '3',
    '--y',
    'heat.cooling=none, enclosed',
    '--figure',
    'hottestFrame',
    '--json',
  )
  expect(status).toBe(0)
  const line = JSON.parse(stdout)
  expect(stdout.trim().split('\n')).toHaveLength(1)
  expect(line).toMatchObject({
    ok: true,
    figure: 'hottestFrame',
    x: { path: 'heat.air', texts: ['10 °C', '20 °C', '30 °C'] },
  })
  expect(line.values).toHaveLength(6)
  expect(line.values[2]).toBeGreaterThan(line.values[0])
  expect(line.points[4].figures.hottestFrame).toBe(line.values[4])
})

it('refuses an unknown input with the one that was meant, and a figure', () => {
  const bad = grid('--x', 'heat.are=10..30degC', '--y', 'heat.cooling')
  expect(bad.status).toBe(2)
  expect(bad.stderr).toContain('heat.are: No input')
  expect(bad.stderr).toContain('heat.air')
})
