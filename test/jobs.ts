// Jobs for tests: three with every number given, kept apart from the demonstrations so that those may be tuned; and those.
import { readFileSync } from 'node:fs'
import type { Job } from '../sim/job.ts'
import { read } from '../sim/read.ts'
import { finish, run } from '../sim/run.ts'
import { type Scenario, type Variant, withChange } from '../sim/scenario.ts'

/** Names of the demonstrations, and of the jobs in test/given that were made after them. */
export const DEMOS = ['appleMill', 'bowlLathe', 'bandSaw'] as const
export type Demo = (typeof DEMOS)[number]

/** Path of an input → its text, a whole group or list, or null to leave it out. */
export type Changes = Readonly<Record<string, unknown>>

const load = (folder: string) =>
  new Map(
    DEMOS.map((name) => [name, readFileSync(new URL(`${folder}/${name}.json`, import.meta.url), 'utf8')]),
  )
const demos = load('../scenarios')
const given = load('./given')

/** A demonstration as it stands in its file. */
export const demoText = (name: Demo): string => demos.get(name)!
export const demo = (name: Demo): Scenario => JSON.parse(demoText(name))

/** A job with every number given, with changes; the apple mill unless said. Throws where a change meets no input. */
export function scenario(changes: Changes = {}, name: Demo = 'appleMill'): Scenario {
  return Object.entries(changes).reduce<Scenario>(
    (before, [path, value]) => {
      const after = withChange(before, path, value)
      if (after === before) throw new Error(`no input is called ${path}`)
      return after
    },
    JSON.parse(given.get(name)!),
  )
}

/** A scenario, or a variant of it, as a job. Throws where the reader refuses it. */
export function jobOf(whole: Scenario, variant?: Variant): Job {
  const reading = read(whole, variant)
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems))
  return reading.job
}

/** A job with every number given, with changes. */
export const job = (changes: Changes = {}, name: Demo = 'appleMill'): Job => jobOf(scenario(changes, name))

/** The trace of a job. */
export const traceOf = (one: Job) => finish(run(one)).trace
