// What the reader says of a job with changes.
import { read } from '../../sim/read.ts'
import { type Changes, scenario } from '../jobs.ts'

export const problemsOf = (changes: Changes) => {
  const reading = read(scenario(changes))
  return reading.ok ? [] : reading.problems
}
export const pathsOf = (changes: Changes) => problemsOf(changes).map(({ path }) => path)
