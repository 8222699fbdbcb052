// `npm run shots -- NAME` takes the photographs named, and the sheet of them.
import { spawnSync } from 'node:child_process'
import { readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { root } from '../house/tree.ts'

it('takes the photographs named, and the sheet of them', () => {
  const { status, stderr } = spawnSync(
    process.execPath,
    ['--import', 'tsx', 'test/browser/shots.ts', '05-phone-light'],
    { cwd: root, encoding: 'utf8' },
  )
  // Nothing on standard error: what a page complains of is printed there.
  expect({ status, stderr }).toEqual({ status: 0, stderr: '' })
  const folder = join(root, 'node_modules/.cache/shots')
  expect(readFileSync(join(folder, 'list.txt'), 'utf8')).toBe('05-phone-light\n')
  for (const name of ['05-phone-light', 'all'])
    expect(statSync(join(folder, `${name}.png`)).size).toBeGreaterThan(10_000)
})
