// Writing to a terminal: text from files is shown, and never steers it.
import { harmless } from '../sim/harmless.ts'
import type { Problem } from '../sim/problem.ts'
import type { Progress } from '../sim/run.ts'
import { type Counts, progressLine } from './progress.ts'

/** Names and keys come from files: whatever would steer a terminal is shown as a box. */
const shown = (text: string): string => harmless(text).replace(/[\t\r]/g, '□')

/** A line for the person, on standard error. */
export const tell = (text: string): void => void process.stderr.write(`${shown(text)}\n`)

/** A line of the answer, on standard output. */
export const say = (text: string): void => void process.stdout.write(`${shown(text)}\n`)

/** Every problem, with where it is. */
export const problemLines = (file: string, problems: readonly Problem[]): string =>
  problems
    .map(({ path, wrong, wouldDo }) => `${file}${path === '' ? '' : `: ${path}`}: ${wrong} ${wouldDo}`)
    .join('\n')

/** Does long work to its end, telling progress where a person is watching. */
export function drive<T>(work: Generator<Progress, T>, label: string, counts?: Counts): T {
  const line = progressLine(label, counts)
  for (;;) {
    const next = work.next()
    if (next.done) {
      line.clear()
      return next.value
    }
    line.show(next.value)
  }
}
