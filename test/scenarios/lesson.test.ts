// `npm run lesson`: the list, a sheet with blanks, a sheet with answers, and a name nobody knows.
import { spawnSync } from 'node:child_process'
import { expect, it } from 'vitest'
import { root } from '../house/tree.ts'

const lesson = (...args: string[]) =>
  spawnSync(process.execPath, ['--import', 'tsx', 'scenarios/lesson.ts', ...args], {
    cwd: root,
    encoding: 'utf8',
  })

it('lists them', () => {
  expect(lesson().stdout).toMatch(/^gearing +Why slow running needs gearing\n/)
})

it('prints blanks, and the same sheet with answers', () => {
  const blanks = lesson('gearing').stdout
  const answers = lesson('gearing', '--answers', '--units', 'metric').stdout
  expect(blanks).toMatch(/Amps that the cut adds +_{8} +_{8} +_{8}\n/)
  expect(blanks).not.toContain('11.0')
  expect(answers).toMatch(/Amps that the cut adds +11\.0.A +5\.5.A +2\.8.A\n/)
})

it('guesses what was meant', () => {
  const { status, stderr } = lesson('gering')
  expect(status).toBe(2)
  expect(stderr).toContain('Did you mean "gearing"?')
})
