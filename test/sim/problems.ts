// What the reader says of a job with changes.
import { expect, it } from 'vitest'
import { read } from '../../sim/read.ts'
import { type Changes, scenario } from '../jobs.ts'

export const problemsOf = (changes: Changes) => {
  const reading = read(scenario(changes))
  return reading.ok ? [] : reading.problems
}
export const pathsOf = (changes: Changes) => problemsOf(changes).map(({ path }) => path)

/** The one problem of a change. Throws where there is another number of them. */
export const problemOf = (changes: Changes) => {
  const problems = problemsOf(changes)
  if (problems.length !== 1) throw new Error(`${problems.length} problems: ${JSON.stringify(problems)}`)
  return problems[0]
}

/** Each change has one problem: its path, what is wrong and what would do, both in whole sentences. */
export const areTold = (cases: readonly [string, Changes, string, RegExp, RegExp][]) =>
  it.each(cases)('%s is told with its path and what would do', (_, changes, path, wrong, wouldDo) => {
    const problem = problemOf(changes)
    expect(problem.path).toBe(path)
    expect(problem.wrong).toMatch(wrong)
    expect(problem.wouldDo).toMatch(wouldDo)
    expect(problem.wrong).toMatch(/\.$/)
    expect(problem.wouldDo).toMatch(/[.?]$/)
  })
