// Speed, as evaluations and as ratios measured in one run. `npm run bench`; milliseconds are this machine's.
import { readFileSync } from 'node:fs'
import { type ReferenceFile, referenceJob } from '../../scenarios/referenceRuns.ts'
import { cycles } from '../../sim/cycles.ts'
import { steadyCycle } from '../../sim/cycles/steady.ts'
import { wholeTrace } from '../../sim/cycles/whole.ts'
import type { Job } from '../../sim/job.ts'
import { judgeCycles } from '../../sim/judgeCycles.ts'
import { STATE } from '../../sim/plant.ts'
import { finish, type RunOptions, run } from '../../sim/run.ts'
import { mapSpec } from '../../sim/studies/map.ts'
import { points } from '../../sim/studies/points.ts'
import { sureSpec } from '../../sim/studies/sure.ts'
import { simulate } from '../sim/physics/spice.ts'
import { plantNetlist } from '../sim/physics/spicePlant.ts'
import { endOf, heldJob, jobs as mapJobs } from '../sim/studies/heldRuns.ts'
import { dragged } from './drag.ts'
import { worstOf } from './precise.ts'
import { type Row, writeTable } from './table.ts'

const HOUR = 3600
const file = JSON.parse(
  readFileSync(new URL('../checks/runs.json', import.meta.url), 'utf8'),
) as ReferenceFile
const cycle = file.runs.find(({ name }) => name === 'shaft-fan')
if (!cycle) throw new Error('test/checks/runs.json has no run "shaft-fan".')
/** Eight hours of a one-minute cycle: 480 cycles. */
const job = referenceJob(file.base, { ...cycle, seconds: 8 * HOUR }, 'default')

/** Least time of a few goes, ms: the least disturbed one. */
function timed<T>(times: number, work: () => T): { ms: number; made: T } {
  let ms = Infinity
  let made = work()
  for (let n = 0; n < times; n++) {
    const started = performance.now()
    made = work()
    ms = Math.min(ms, performance.now() - started)
  }
  return { ms, made }
}

/** The best of a few runs, and what it came to. */
function best(times: number, job: Job, options: RunOptions) {
  const { ms, made } = timed(times, () => finish(run(job, options)).trace)
  return { ms, ...made.effort, windingC: made.columns.windingC.at(-1) ?? Number.NaN }
}

const say = (text: string) => process.stdout.write(`${text}\n`)

const table: Row[] = []
const thousands = (value: number) => `${Math.round(value / 1000)} k`

const ours = best(7, job, {})
const precise = best(2, { ...job, accuracy: 'precise' }, {})
const started = performance.now()
const whole = finish(run(job, { method: 'extrapolation' })).trace
const libraryMs = performance.now() - started

say('8 h of a one-minute cycle (480 cycles), the whole plant')
say(
  `  own method (Rodas4), default   ${thousands(ours.rates)} evaluations  ${ours.steps} steps  ${ours.ms.toFixed(0)} ms`,
)
say(
  `  own method (Rodas4), precise   ${thousands(precise.rates)} evaluations  ${precise.steps} steps  ${precise.ms.toFixed(0)} ms`,
)
say(
  `  library (odex), default        ${thousands(whole.effort.rates)} evaluations  ${libraryMs.toFixed(0)} ms`,
)
say(
  `  library over own: ${(whole.effort.rates / ours.rates).toFixed(0)} times the evaluations, ${(libraryMs / ours.ms).toFixed(0)} times the time`,
)
say(
  `  winding at the end: own ${ours.windingC.toFixed(4)} °C, precise ${precise.windingC.toFixed(4)} °C, library ${(whole.columns.windingC.at(-1) ?? Number.NaN).toFixed(4)} °C`,
)
say(`  readings for the figures       ${thousands(ours.readings)} evaluations more`)
say(
  `  goal: at most 600 k evaluations with differences (${ours.rates + ours.readings <= 600_000 ? 'met' : 'MISSED'}); at most 120 ms warm on two idle cores (${ours.ms <= 120 ? 'met' : 'missed here'})`,
)

table.push(
  {
    what: '8 h of 480 cycles, whole plant, default',
    evaluations: thousands(ours.rates + ours.readings),
    ratio: `library method (odex): ${(libraryMs / ours.ms).toFixed(0)} times the time`,
    goal: `≤ 600 k evaluations: ${ours.rates + ours.readings <= 600_000 ? 'met' : 'missed'}`,
  },
  {
    what: 'the same, precise',
    evaluations: thousands(precise.rates),
    ratio: `${(precise.ms / ours.ms).toFixed(1)} times the default’s time`,
    goal: '',
  },
)

const off = worstOf(file)
table.push({
  what: `${file.runs.length} reference runs of other programs, precise`,
  evaluations: '',
  ratio: `${off.temperature.toPrecision(2)} K and ${off.event.toExponential(0)} of an event’s time off at worst`,
  goal: `≤ 0.02 K: ${off.temperature <= 0.02 ? 'met' : 'missed'}; ≤ 1e-4: ${off.event <= 1e-4 ? 'met' : 'missed'}`,
})
say(`reference runs, precise: ${off.temperature} K, ${off.event} of an event's time off at worst`)

const SPICE_SECONDS = 600
const circuitOf = (seconds: number) => plantNetlist({ ...file.base, ...cycle.plant }, cycle.phases, seconds)
const netlist = circuitOf(SPICE_SECONDS)
const short = referenceJob(file.base, { ...cycle, seconds: SPICE_SECONDS }, 'default')
await simulate(circuitOf(1))
const spiceStarted = performance.now()
const circuit = await simulate(netlist)
const spiceMs = performance.now() - spiceStarted
const shortRun = best(7, short, {})
const spiceC = circuit('v(tw)', SPICE_SECONDS)
say('10 min of the same cycle in a circuit simulator (ngspice in WASM), the same equations')
say(
  `  ${(spiceMs / shortRun.ms).toFixed(0)} times the time; winding at the end ${spiceC.toFixed(3)} °C, own ${shortRun.windingC.toFixed(3)} °C`,
)
table.push({
  what: '10 min of the same cycle',
  evaluations: thousands(shortRun.rates),
  ratio: `ngspice in WASM: ${(spiceMs / shortRun.ms).toFixed(0)} times the time, ${Math.abs(spiceC - shortRun.windingC).toFixed(3)} K apart`,
  goal: '',
})

const envelope = timed(30, () => {
  const made = finish(cycles(job))
  return { ...made, figures: judgeCycles(job, made) }
})
const { computed, effort } = envelope.made
const last = computed.at(-1)?.turn.end.states[STATE.windingC] ?? Number.NaN
const rows = timed(5, () => finish(wholeTrace(job, envelope.made)))
const steady = timed(20, () => finish(steadyCycle(job)))
say('the same by turns (envelope following), with its figures')
say(
  `  ${computed.length} turns run of 480   ${effort.rates} evaluations, ${effort.readings} readings  ${envelope.ms.toFixed(1)} ms`,
)
say(
  `  direct over turns: ${(ours.rates / effort.rates).toFixed(0)} times the evaluations, ${(ours.ms / envelope.ms).toFixed(0)} times the time; winding at the end ${last.toFixed(4)} °C`,
)
say(`  rows for the plots, skipped turns filled in   ${rows.made.time.length} rows  ${rows.ms.toFixed(0)} ms`)
say(
  `  steady turn by Newton's method   ${steady.made?.tries} tries  ${steady.made?.effort.rates} evaluations  ${steady.ms.toFixed(1)} ms`,
)
say(
  `  goal: at most 15 k evaluations (${effort.rates <= 15_000 ? 'met' : 'MISSED'}); at most 10 ms warm on two idle cores (${envelope.ms <= 10 ? 'met' : 'missed here'}); within 0.05 K (${Math.abs(last - precise.windingC) <= 0.05 ? 'met' : 'MISSED'})`,
)

table.push({
  what: 'the 8 h by turns (envelope)',
  evaluations: `${thousands(effort.rates + effort.readings)}, ${computed.length} turns run`,
  ratio: `direct: ${(ours.ms / envelope.ms).toFixed(0)} times the time, odex: ${(libraryMs / envelope.ms).toFixed(0)}, ngspice (its 10 min 48 times): ${((spiceMs * job.duty.seconds) / SPICE_SECONDS / envelope.ms).toFixed(0)}; ${Math.abs(last - precise.windingC).toFixed(4)} K from precise`,
  goal: `≤ 15 k evaluations: ${effort.rates + effort.readings <= 15_000 ? 'met' : 'missed'}; ≤ 0.05 K: ${Math.abs(last - precise.windingC) <= 0.05 ? 'met' : 'missed'}`,
})

const [mill] = mapJobs
const spec = mapSpec(mill)
const [cooling] = spec.coolings
const one = { ...spec, coolings: [cooling] }
const map = timed(5, () => finish(points<'map'>(one)))
const looks = map.made.reduce((sum, { evaluations }) => sum + evaluations, 0)
const cells = one.speeds.length * one.torques.length
/** Every so many cells are run directly. */
const EVERY = 61
const chosen = Array.from({ length: Math.floor(cells / EVERY) }, (_, n) => n * EVERY)
const direct = timed(1, () =>
  chosen.map((n) =>
    endOf({
      ...heldJob(
        mill,
        cooling,
        one.speeds[n % one.speeds.length],
        one.torques[Math.floor(n / one.speeds.length)],
      ),
      accuracy: 'default',
    }),
  ),
)
say('the map of minutes, 60 × 40, one cooling')
say(`  ${cells} points   ${(looks / cells).toFixed(0)} looks at the drive a point  ${map.ms.toFixed(0)} ms`)
say(
  `  direct runs of the whole plant over the map: ${((direct.ms * cells) / chosen.length / map.ms).toFixed(0)} times the time`,
)
say(
  `  goal: at most 100 looks a point (${looks <= 100 * cells ? 'met' : 'MISSED'}); at most 40 ms warm on two idle cores (${map.ms <= 40 ? 'met' : 'missed here'})`,
)

table.push({
  what: 'map of minutes, 60 × 40, one cooling',
  evaluations: `${(looks / cells).toFixed(0)} looks at the drive a point`,
  ratio: `direct runs: ${((direct.ms * cells) / chosen.length / map.ms).toFixed(0)} times the time; the 8 h run: ${(map.ms / ours.ms).toFixed(1)} of its time`,
  goal: `≤ 40 ms where the 8 h take 86: ${map.ms / ours.ms <= 40 / 86 ? 'met' : 'missed'}`,
})

const doubted = JSON.parse(readFileSync(new URL('../given/appleMill.json', import.meta.url), 'utf8'))
const asked = sureSpec(doubted, {})
if ('ok' in asked) throw new Error('the mill does not read')
const samples = timed(1, () => finish(points<'sure'>(asked)))
say('how sure: 200 samples of the 3 h job')
say(`  ${samples.ms.toFixed(0)} ms in one process`)
table.push({
  what: 'how sure, 200 samples of a 3 h job',
  evaluations: '',
  ratio: `one seat: ${(samples.ms / ours.ms).toFixed(0)} times the 8 h run`,
  goal: `≤ 1.5 s in two seats where the 8 h take 86 ms: ${samples.ms / 2 / ours.ms <= 1500 / 86 ? 'met' : 'missed'}`,
})

/** A task of the page's main thread, and the answer after a change. ms */
const [LONGEST, FOLLOWS] = [33, 150]
const page = await dragged()
if (typeof page === 'string') say(`the built page: not measured. ${page}`)
else {
  const median = (values: readonly number[]) =>
    values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN
  const [task, follows] = [median(page.longest), median(page.follows)]
  const all = (values: readonly number[]) => values.map((each) => each.toFixed(0)).join(', ')
  say('a step dragged on the built page, five times')
  say(`  longest task on the main thread ${all(page.longest)} ms; the answer after ${all(page.follows)} ms`)
  table.push({
    what: 'a step dragged on the built page, median of five',
    evaluations: '',
    ratio: `longest task ${(task / ours.ms).toFixed(2)} of the 8 h run’s time (${task.toFixed(0)} ms), answer ${(follows / ours.ms).toFixed(2)} (${follows.toFixed(0)} ms) after the last move`,
    goal: `no task over ${LONGEST} ms: ${task <= LONGEST ? 'met' : 'missed'}; answer within ${FOLLOWS} ms: ${follows <= FOLLOWS ? 'met' : 'missed'}`,
  })
}

if (process.argv.includes('--write')) writeTable(table)
