// `npm run gallery -- --freeze`: runs the gallery's jobs and studies once and writes what came out into its data files.
import { readFileSync, writeFileSync } from 'node:fs'
import { type Advice, advise } from '../../sim/advise.ts'
import { carryOut } from '../../sim/carryOut.ts'
import { heatDoubtOf } from '../../sim/heatDoubt.ts'
import { fitWarmUp } from '../../sim/identify/fit.ts'
import { readLog } from '../../sim/identify/log.ts'
import { read, readFile } from '../../sim/read.ts'
import { againstOld } from '../../sim/rival/picture.ts'
import { finish } from '../../sim/run.ts'
import { type Scenario, variantsOf, withChange } from '../../sim/scenario.ts'
import { axisOf } from '../../sim/studies/grid/axis.ts'
import { gridSpec } from '../../sim/studies/grid.ts'
import { limitsStudy } from '../../sim/studies/limits.ts'
import { heatMap, mapSpec } from '../../sim/studies/map.ts'
import { points } from '../../sim/studies/points.ts'
import { ratioStudy } from '../../sim/studies/ratio.ts'
import { sureOf, sureSpec } from '../../sim/studies/sure.ts'
import { readOld } from '../change/oldMotor.ts'
import { freeze } from './frozen.ts'
import { type FrozenJob, type FrozenStudies, MADE, type Made, type MadeName } from './made.ts'
import { OLD, OLD_STEPS } from './oldMotors.ts'
import { thin } from './thin.ts'

/** An invented log of the mill's motor. */
const LOG = 'appleMillWarmUp.csv'

const text = (file: string): string =>
  readFileSync(new URL(`../../scenarios/${file}`, import.meta.url), 'utf8')
const write = (name: string, value: unknown): void =>
  writeFileSync(new URL(`data/${name}.json`, import.meta.url), `${JSON.stringify(freeze(value))}\n`)

/** What a study came to; a refusal is a mistake in the made jobs. */
function good<T extends object>(found: T): Exclude<T, { ok: false }> {
  if ('ok' in found && found.ok === false) throw new Error(`refused: ${JSON.stringify(found)}`)
  return found as Exclude<T, { ok: false }>
}

function scenarioOf({ demo, changes }: Made): Scenario {
  const { scenario } = good(readFile(text(`${demo}.json`)))
  return Object.entries(changes).reduce((so, [path, value]) => withChange(so, path, value), scenario)
}
const scenarios = Object.fromEntries(
  Object.entries(MADE).map(([name, made]) => [name, scenarioOf(made)]),
) as Record<MadeName, Scenario>
const jobOf = (name: MadeName) => good(read(scenarios[name])).job

/** Every turn is run: what is skipped has no rows. */
function outcomesOf(scenario: Scenario, variants: boolean): FrozenJob['outcomes'] {
  return [undefined, ...(variants ? variantsOf(scenario) : [])].map((variant) => {
    const { trace, figures } = finish(carryOut(good(read(scenario, variant)).job, { direct: true }))
    return { trace: thin(trace), figures }
  })
}

function mapOf(name: MadeName) {
  const spec = mapSpec(jobOf(name), { speeds: 30, torques: 20 })
  return heatMap(jobOf(name), spec, finish(points<'map'>(spec)))
}

function sureOfJob(name: MadeName) {
  const spec = good(sureSpec(scenarios[name], { samples: 60 }))
  const found = sureOf(spec, finish(points<'sure'>(spec)))
  if (!found) throw new Error(`no motor in ${name}`)
  return found
}

function against(old: Parameters<typeof readOld>[0] | null) {
  const reading = old && readOld(old)
  return finish(againstOld(jobOf('mill'), reading?.ok ? reading.rival : null))
}

function grid(): FrozenStudies['grid'] {
  const scenario = scenarios.mill
  const axis = (path: string, range: string, count: number) => {
    const found = axisOf(scenario, path, range, count)
    if ('wrong' in found) throw new Error(found.wrong)
    return found
  }
  // The smallest pulleys are refused, the largest cannot do the work: every kind of cell is there.
  const x = axis('belt.machinePulley', '3..30 in', 6)
  const y = axis('duty.phases.2.torque', '1..9 lbf·ft', 5)
  const spec = good(gridSpec(scenario, undefined, x, y))
  return { spec, points: finish(points<'grid'>(spec)) }
}

function warmUp() {
  const found = good(readLog(text(LOG)))
  const { scenario } = good(readFile(text('appleMill.json')))
  const { job, motor } = good(read(scenario))
  return good(fitWarmUp(found.log, job.parts, heatDoubtOf(scenario, motor, job.parts.supply)))
}

const advised = (name: MadeName): Advice => good(finish(advise(scenarios[name])))

for (const [name, made] of Object.entries(MADE)) {
  const scenario = scenarios[name as MadeName]
  write(name, {
    scenario,
    outcomes: made.runs ? outcomesOf(scenario, made.variants) : [],
  } satisfies FrozenJob)
}
write('studies', {
  ratio: { mill: good(finish(ratioStudy(scenarios.mill))), saw: good(finish(ratioStudy(scenarios.saw))) },
  map: { mill: mapOf('mill'), saw: mapOf('saw'), burnt: mapOf('burnt') },
  against: { alone: against(null), old: against(OLD), steps: against(OLD_STEPS) },
  limits: {
    mill: good(finish(limitsStudy(scenarios.mill))),
    well: good(finish(limitsStudy(scenarios.well))),
  },
  sure: { mill: sureOfJob('mill'), well: sureOfJob('well') },
  advice: { mill: advised('mill'), deadly: advised('deadly'), well: advised('well') },
  grid: grid(),
  fit: warmUp(),
} satisfies FrozenStudies)
