// What the commands of one job file share: their options, read once, and the file opened; or what is amiss, told.
import { parseArgs } from 'node:util'
import type { Problem } from '../sim/problem.ts'
import type { Units } from '../sim/say/units.ts'
import { DEMO, type Opened, openJob } from './open.ts'
import { problemLines, tell } from './terminal.ts'

/** An option of a command's own, as node:util takes it. */
export type OwnOptions = Readonly<
  Record<string, { readonly type: 'string' | 'boolean'; readonly multiple?: boolean }>
>

/** The options every command has, for its usage text. */
export const SHARED = `  --variant NAME    the job with this variant's changes
  --json            one line of JSON; use npm run -s
  --units us|metric units of the answer (us)
  --fahrenheit      temperatures in °F`

export interface Command {
  readonly units: Units
  readonly json: boolean
  readonly variant: string | undefined
  readonly files: readonly string[]
  /** A text option of the command's own; undefined where it is not given. */
  text(name: string): string | undefined
  /** Every text of an option that may be given again. */
  texts(name: string): readonly string[]
  flag(name: string): boolean
  /** Tells what is amiss, and the usage; the exit code. */
  fail(text: string): number
}

const shared = {
  json: { type: 'boolean' },
  variant: { type: 'string' },
  units: { type: 'string' },
  fahrenheit: { type: 'boolean' },
  help: { type: 'boolean' },
} as const

/** Reads the command line; a number is the exit code of a command that has nothing left to do. */
export function command(usage: string, own: OwnOptions = {}): Command | number {
  const fail = (text: string): number => {
    tell(`${text}\n\n${usage}`)
    return 2
  }
  let parsed: ReturnType<typeof parseArgs>
  try {
    parsed = parseArgs({ allowPositionals: true, options: { ...shared, ...own } })
  } catch (error) {
    return fail(error instanceof Error ? error.message : String(error))
  }
  const { values, positionals } = parsed
  const text = (name: string) => (typeof values[name] === 'string' ? values[name] : undefined)
  const texts = (name: string) => {
    const value = values[name]
    return Array.isArray(value) ? value.map(String) : []
  }
  const flag = (name: string) => values[name] === true
  if (flag('help')) {
    tell(usage)
    return 0
  }
  const system = text('units') ?? 'us'
  if (system !== 'us' && system !== 'metric') return fail(`--units cannot be "${system}": us or metric.`)
  return {
    units: { system, temperature: flag('fahrenheit') ? '°F' : '°C' },
    json: flag('json'),
    variant: text('variant'),
    files: positionals,
    text,
    texts,
    flag,
    fail,
  }
}

/** The one job a command is about, the demo where no file is named; a number: told, the exit code. */
export function oneJob({ files, variant, json, fail }: Command): Opened | number {
  if (files.length > 1) return fail('One file at a time.')
  const file = files[0] ?? DEMO
  const opened = openJob(file, variant)
  return 'reading' in opened ? opened : refused(file, opened, json)
}

/** Tells why a file came to nothing; the exit code. */
export function refused(file: string, problems: readonly Problem[], json: boolean): number {
  tell(problemLines(file, problems))
  if (json) process.stdout.write(`${JSON.stringify({ file, ok: false, problems })}\n`)
  return 2
}
