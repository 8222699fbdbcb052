// The reference files of this folder as data; each test says what shape its case has.
import { readFileSync } from 'node:fs'
import type { ReferenceFile } from '../../scenarios/referenceRuns.ts'

/** A published case. `recomputed` is mathematics to 12 digits, not a source. */
export interface PublishedCase<I, P, R> {
  readonly id: string
  readonly source: string
  readonly inputs: I
  readonly published: P
  readonly recomputed: R
}

/** A closed-form problem: SI, temperatures in °C, answers to 12 digits. */
export interface Oracle<I, A> {
  readonly inputs: I
  readonly answers: A
}

const read = (name: string): unknown =>
  JSON.parse(readFileSync(new URL(`./${name}.json`, import.meta.url), 'utf8'))

const cases = (read('published') as { published: PublishedCase<unknown, unknown, unknown>[] }).published
const problems = (read('oracles') as { oracles: Record<string, Oracle<unknown, unknown>> }).oracles
const records = (read('measured') as { records: { id: string }[] }).records

/** Whole runs of the plant in PHYSICS.md with expected events, samples and peaks. */
export const references = read('runs') as ReferenceFile

/** Every id of published.json, oracles.json (its short form, "O01") and measured.json. */
export const ids = {
  published: cases.map(({ id }) => id),
  oracles: Object.keys(problems).map((name) => name.slice(0, 3)),
  measured: records.map(({ id }) => id),
}

/** The published case with this id. Throws where there is none: a slip in the test. */
export function publishedCase<I, P, R = unknown>(id: string): PublishedCase<I, P, R> {
  const found = cases.find((one) => one.id === id)
  if (!found) throw new Error(`published.json has no ${id}`)
  return found as PublishedCase<I, P, R>
}

/** The oracle whose name begins with this id. Throws where there is none. */
export function oracle<I, A>(id: string): Oracle<I, A> {
  const name = Object.keys(problems).find((one) => one.startsWith(`${id}_`))
  if (!name) throw new Error(`oracles.json has no ${id}`)
  return problems[name] as Oracle<I, A>
}

/** The measured record with this id. Throws where there is none: a slip in the test. */
export function measuredRecord<R>(id: string): R {
  const found = records.find((one) => one.id === id)
  if (!found) throw new Error(`measured.json has no ${id}`)
  return found as R
}
