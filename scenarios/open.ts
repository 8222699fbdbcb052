// Opening a job file for a command: its text, its scenario, one of its variants, the job; or every problem.
import { readFileSync, statSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { nearest } from '../sim/nearest.ts'
import type { Problem } from '../sim/problem.ts'
import { type Accepted, LARGEST_FILE, read, readFile } from '../sim/read.ts'
import { type Scenario, type Variant, variantsOf } from '../sim/scenario.ts'

/** The job that is run where no file is named. */
export const DEMO = fileURLToPath(new URL('./appleMill.json', import.meta.url))

export interface Opened {
  readonly file: string
  readonly scenario: Scenario
  readonly variant: Variant | undefined
  readonly reading: Accepted
}

/** The job and the variant in a line. */
export const titleOf = ({ scenario, variant }: Pick<Opened, 'scenario' | 'variant'>): string =>
  `${scenario.name}${variant ? `, ${variant.name}` : ''}`

const fault = (wrong: string, wouldDo: string): readonly Problem[] => [{ path: '', wrong, wouldDo }]

/** The text of a file, or why not. */
export function textOf(file: string, example: string): string | readonly Problem[] {
  try {
    const { size } = statSync(file)
    if (size > 4 * LARGEST_FILE)
      return fault(`The file is ${Math.round(size / 1e6)} MB.`, 'One of a few kilobytes is wanted.')
    return readFileSync(file, 'utf8')
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : 'unreadable'
    const why =
      code === 'ENOENT'
        ? 'There is no such file.'
        : code === 'EISDIR'
          ? 'This is a folder.'
          : `It cannot be read (${code}).`
    return fault(why, `Give the path of a file, for example ${example}.`)
  }
}

/** Opens a file and reads its job, with the changes of a variant if one is named. */
export function openJob(file: string, wanted?: string): Opened | readonly Problem[] {
  const text = textOf(file, 'scenarios/appleMill.json')
  if (typeof text !== 'string') return text
  const opened = readFile(text)
  if (!opened.ok) return opened.problems
  const { scenario } = opened
  const variants = variantsOf(scenario)
  const variant = variants.find(({ name }) => name === wanted)
  if (wanted !== undefined && !variant) {
    const base = read(scenario)
    return base.ok ? noVariant(wanted, variants) : base.problems
  }
  const reading = read(scenario, variant)
  return reading.ok ? { file, scenario, variant, reading } : reading.problems
}

function noVariant(wanted: string, variants: readonly Variant[]): readonly Problem[] {
  const names = variants.map(({ name }) => name)
  const guess = nearest(wanted, names)
  const known =
    names.length > 0 ? `Known: ${names.map((name) => `"${name}"`).join(', ')}.` : 'This job has none.'
  return fault(`No variant is called "${wanted}".`, guess ? `Did you mean "${guess}"?` : known)
}
