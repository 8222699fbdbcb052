// The top level of the project holds the agreed names and nothing else, and every file opens with its idea.
import { readdirSync } from 'node:fs'
import { expect, it } from 'vitest'
import { root, sources } from './tree.ts'

const agreed = [
  'DEVELOPERS.md',
  'LICENSE',
  'README.md',
  'package-lock.json',
  'package.json',
  'scenarios',
  'sim',
  'test',
  'tsconfig.json',
  'ui',
  'workers',
]
const made = ['node_modules', 'dist']

it('the top level holds the agreed names', () => {
  const names = readdirSync(root).filter((name) => !name.startsWith('.') && !made.includes(name))
  expect(names.sort()).toEqual(agreed)
})

const startsWithIdea = (text: string) => /^(\/\/ |\/\*\*? ?)\S/.test(text)

it('the first line of every file says its idea', () => {
  const silent = [...sources('sim', 'workers', 'ui', 'scenarios', 'test')].filter(
    ([, text]) => !startsWithIdea(text),
  )
  expect(silent.map(([path]) => path)).toEqual([])
  expect(startsWithIdea("import { a } from './a.ts'\n// late")).toBe(false)
})
