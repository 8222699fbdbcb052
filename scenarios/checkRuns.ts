// Reference runs against ours at the "precise" tolerance. `npm run check:runs -- FILE`
import { readFileSync } from 'node:fs'
import { type Comparison, compareRun, PRECISE, passes, type ReferenceFile } from './referenceRuns.ts'

const exponent = (value: number): string => (value === 0 ? '0' : value.toExponential(1))

const row = (c: Comparison): string =>
  [
    c.name.padEnd(20),
    `events ${c.found}/${c.expected}`.padEnd(12),
    `time ${exponent(c.eventError)}`.padEnd(14),
    `temperature ${c.temperatureError.toFixed(5)} K`.padEnd(24),
    passes(c) ? 'pass' : 'FAIL',
  ].join('  ')

/** The file, or why it cannot be read as reference runs. */
function load(path: string): ReferenceFile | string {
  let parsed: unknown
  try {
    parsed = JSON.parse(readFileSync(path, 'utf8'))
  } catch (error) {
    return `${path}: ${error instanceof Error ? error.message : 'unreadable'}`
  }
  if (
    typeof parsed !== 'object' ||
    parsed === null ||
    !('base' in parsed) ||
    !('runs' in parsed) ||
    !Array.isArray(parsed.runs)
  )
    return `${path}: no reference runs in it. It should hold "base" and "runs", as test/checks/runs.json does.`
  if (parsed.runs.length === 0) return `${path}: "runs" is empty, so there is nothing to check.`
  return parsed as ReferenceFile
}

function main(): number {
  const path = process.argv[2]
  if (path === undefined) {
    process.stderr.write('npm run check:runs -- FILE     for example test/checks/runs.json\n')
    return 2
  }
  const file = load(path)
  if (typeof file === 'string') {
    process.stderr.write(`${file}\n`)
    return 2
  }
  let failed = 0
  for (const [index, reference] of file.runs.entries()) {
    let outcome: Comparison
    try {
      outcome = compareRun(file.base, reference, 'precise')
    } catch (error) {
      // A run that is not in the file's own shape is a failed check, told by name.
      process.stdout.write(
        `${reference?.name ?? `run ${index}`}: cannot be run: ${error instanceof Error ? error.message : error}  FAIL\n`,
      )
      failed++
      continue
    }
    if (!passes(outcome)) failed++
    process.stdout.write(`${row(outcome)}\n`)
  }
  process.stdout.write(
    `${file.runs.length - failed} passed, ${failed} failed (events within ${PRECISE.event} of their time, temperatures within ${PRECISE.temperature} K)\n`,
  )
  return failed > 0 ? 1 : 0
}

process.exitCode = main()
