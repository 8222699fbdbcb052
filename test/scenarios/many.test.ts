// Many files at once, as README tells it: the very lines run by a shell, a process a file, one line of JSON each.
import { spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, it } from 'vitest'
import { root } from '../house/tree.ts'
import { scenario } from '../jobs.ts'

const folder = mkdtempSync(join(tmpdir(), 'many-'))
afterAll(() => rmSync(folder, { recursive: true }))

/** The line of README that starts so, with its files in a folder of their own. */
function line(start: string): string {
  const found = readFileSync(join(root, 'README.md'), 'utf8')
    .split('\n')
    .find((each) => each.startsWith(start))
  if (!found) throw new Error(`README.md has no line "${start}…".`)
  return found
    .replaceAll(/\b(?=(files|answers?\$?\w*)\.\w+)/g, `${folder}/`)
    .replace('find jobs', `find ${folder}/jobs`)
}
const shell = (text: string, env: Readonly<Record<string, string>> = {}) =>
  spawnSync('sh', ['-c', text], { cwd: root, encoding: 'utf8', env: { ...process.env, ...env } })

it('xargs, and a task of a job array: a line a file, a bad one too, and nothing else', () => {
  mkdirSync(join(folder, 'jobs'))
  const put = (name: string, text: string) => writeFileSync(join(folder, 'jobs', name), text)
  const short = JSON.stringify(scenario({ 'duty.repeatFor': '2 min' }))
  for (const name of ['a.json', 'b with spaces.json']) put(name, short)
  put('bad.json', '{"format": 2}')

  expect(shell(line('find jobs')).status).toBe(0)
  const files = readFileSync(join(folder, 'files.txt'), 'utf8').trimEnd().split('\n')
  expect(files).toHaveLength(3)

  // Some file was refused: xargs ends with 123 where a command of its ended with another code than 0.
  const many = shell(line('xargs'))
  expect([many.status, many.stdout]).toEqual([123, ''])
  const answers = readFileSync(join(folder, 'answers.jsonl'), 'utf8').trimEnd().split('\n')
  const told = new Map(answers.map((each) => JSON.parse(each)).map((answer) => [answer.file, answer]))
  expect([...told.keys()].sort()).toEqual(files.toSorted())
  for (const [file, { ok, samples }] of told)
    expect([ok, samples]).toEqual(file.endsWith('bad.json') ? [false, undefined] : [true, 200])

  const task = files.findIndex((file) => file.endsWith('a.json')) + 1
  expect(shell(line('FILE='), { TASK: String(task) }).status).toBe(0)
  const one = JSON.parse(readFileSync(join(folder, `answer${task}.json`), 'utf8'))
  expect(one).toEqual(told.get(files[task - 1]))
}, 120_000)
