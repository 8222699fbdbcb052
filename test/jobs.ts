// Jobs for tests: the demonstrations, fresh each time, with changes by path.
import { readFileSync } from 'node:fs'
import type { Job } from '../sim/job.ts'
import { read } from '../sim/read.ts'
import { finish, run } from '../sim/run.ts'
import { type Scenario, type Variant, withChange } from '../sim/scenario.ts'

export const DEMOS = ['appleMill', 'bowlLathe', 'bandSaw'] as const
export type Demo = (typeof DEMOS)[number]

/** Path of an input → its text, a whole group or list, or null to leave it out. */
export type Changes = Readonly<Record<string, unknown>>

const texts = new Map(
  DEMOS.map((name) => [name, readFileSync(new URL(`../scenarios/${name}.json`, import.meta.url), 'utf8')]),
)

/** A demonstration as it stands in its file. */
export const demoText = (name: Demo): string => texts.get(name)!

/** A demonstration with changes; the apple mill unless said. Throws where a change meets no input. */
export function scenario(changes: Changes = {}, name: Demo = 'appleMill'): Scenario {
  return Object.entries(changes).reduce<Scenario>(
    (before, [path, value]) => {
      const after = withChange(before, path, value)
      if (after === before) throw new Error(`no input is called ${path}`)
      return after
    },
    JSON.parse(demoText(name)),
  )
}

/** A demonstration with changes, or with one of its variants, as a job. Throws where the reader refuses it. */
export function job(changes: Changes = {}, name: Demo = 'appleMill', variant?: Variant): Job {
  const reading = read(scenario(changes, name), variant)
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems))
  return reading.job
}

/** The trace of a job. */
export const traceOf = (given: Job) => finish(run(given)).trace
