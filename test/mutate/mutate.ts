// `npm run mutate -- FOLDER`: small wrongs put into the code one at a time, and how many of them the quick tests notice.
import { readFileSync } from 'node:fs'
import { dirname } from 'node:path/posix'
import { parseArgs } from 'node:util'
import type { PartialStrykerOptions } from '@stryker-mutator/api/core'
import { Stryker } from '@stryker-mutator/core'
import { quickTests } from './quick.ts'

const USAGE = `npm run mutate -- FOLDER [--far] [--anew]

Tries mutants of the files under FOLDER (or of one file), sim/parts say, on the Node tests in the folder's own place
under test/ that take under a second each, and prints the share that they notice and every mutant that lives. --far
tries what lives there on the quick tests of all of sim/ as well, which takes long. What was tried before and has not
changed is not tried again; --anew tries all of it, and measures the tests again.
`

const { values, positionals } = parseArgs({
  options: {
    far: { type: 'boolean', default: false },
    anew: { type: 'boolean', default: false },
    help: { type: 'boolean', default: false },
  },
  allowPositionals: true,
})
const [folder] = positionals
if (values.help || folder === undefined) {
  process.stdout.write(USAGE)
  process.exit(values.help ? 0 : 2)
}

const tests = quickTests(values.anew)
const place = `test/${folder.replace(/\.ts$/, '')}`
const own = tests.filter((test) => test.startsWith(place))
const near = own.length > 0 ? own : tests.filter((test) => test.startsWith(`${dirname(place)}/`))
const cache = 'node_modules/.cache/mutate'
const report = `${cache}/${folder.replaceAll(/[/.]/g, '-')}.json`
const options: PartialStrykerOptions = {
  mutate: [folder.endsWith('.ts') ? folder : `${folder}/**/*.ts`],
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  vitest: { configFile: 'test/mutate/vitest.config.ts' },
  coverageAnalysis: 'perTest',
  ignorePatterns: ['.git', 'dist', 'shared'],
  incremental: true,
  incrementalFile: report,
  // Far longer than any quick test takes on a busy machine: what runs out of time hangs.
  timeoutMS: 60_000,
  // Not under node_modules: tests there are not found.
  tempDirName: '.mutate',
  reporters: ['clear-text', 'progress-append-only'],
  clearTextReporter: { logTests: false, allowColor: false },
  // A text that a mutant changes is a sentence a person reads: snapshots and readers judge those.
  mutator: { excludedMutations: ['StringLiteral'] },
  // Tables are read once, when a module comes in, and the runner keeps its modules: a mutant of them is never seen.
  ignoreStatic: true,
  concurrency: 2,
  allowEmpty: false,
}
const runOn = (these: readonly string[], force: boolean) => {
  process.env.QUICK_TESTS = these.join(',')
  return new Stryker({ ...options, force }).runMutationTest()
}
await runOn(near, values.anew)
if (values.far) await runOn(tests, false)

interface Report {
  readonly files: Readonly<Record<string, { readonly mutants: readonly { readonly status: string }[] }>>
}
const { files } = JSON.parse(readFileSync(report, 'utf8')) as Report
const all = Object.values(files).flatMap(({ mutants }) => mutants.map(({ status }) => status))
const noticed = all.filter((status) => status === 'Killed' || status === 'Timeout').length
const lived = all.filter((status) => status === 'Survived' || status === 'NoCoverage').length
process.stdout.write(
  `${folder}: ${((100 * noticed) / (noticed + lived)).toFixed(1)} % of ${noticed + lived} mutants noticed, ${lived} live\n`,
)
