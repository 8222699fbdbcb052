// Jobs for the workers' tests, from the reference runs: a short one, and one too long to wait for.
import { readFileSync } from 'node:fs'
import { type ReferenceFile, referenceJob } from '../../scenarios/referenceRuns.ts'
import { frozen, type Job } from '../../sim/job.ts'

const path = new URL('../checks/runs.json', import.meta.url)
const { base, runs } = JSON.parse(readFileSync(path, 'utf8')) as ReferenceFile

/** The reference run of that name, and our job for it. Throws where there is none. */
export function reference(name: string, accuracy: Job['accuracy'] = 'default') {
  const found = runs.find((run) => run.name === name)
  if (!found) throw new Error(`no reference run is called ${name}`)
  return { expected: found.expected, job: frozen(referenceJob(base, found, accuracy)) }
}

/** Six hundred seconds of one phase: some forty steps. */
export const short = reference('open-loop-sag').job

/** A month of one-minute cycles, none of them skipped: minutes of work. */
export const endless: Job = frozen({
  ...reference('shaft-fan', 'precise').job,
  duty: { ...reference('shaft-fan').job.duty, seconds: 30 * 86400 },
})
