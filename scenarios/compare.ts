// Does a job's motor replace an old one? Both at the spindle. `npm run compare -- FILE --old "3/4 hp" --rpm 1725 …`
import { parseArgs } from 'node:util'
import type { Problem } from '../sim/problem.ts'
import { compare } from '../sim/rival/compare.ts'
import type { GivenRival } from '../sim/rival/fields.ts'
import { readRival } from '../sim/rival/read.ts'
import { compareSentence } from '../sim/say/compare.ts'
import { compareReport } from '../sim/say/compareReport.ts'
import type { Units } from '../sim/say/units.ts'
import { DEMO, openJob } from './open.ts'
import { problemLines, say, tell } from './terminal.ts'

const USAGE = `npm run compare -- [FILE] --old POWER --rpm SPEED [options]     no file: the apple mill demo
  --old "3/4 hp"    power on the old motor's plate
  --rpm 1725        speed on it, at full load
  --phase single|three   an AC motor's mains (single)
  --dc              it is another DC motor: --old-volts, --old-amps and --old-continuous ("1 hp") if printed
  --old-pulleys "3 in, 9 in"   motor, machine; again, or "3 in, 9 in; 4 in, 8 in", for each step
  --old-speeds "350 rpm, 700 rpm"   the spindle speeds it gave, where pulleys are not known
                    neither: it sat straight on the spindle
  --sf 1.25         service factor, if printed
  --json            one line of JSON (SI); use npm run -s
  --variant NAME    the job with this variant's changes
  --units us|metric units (us)`

const parse = () =>
  parseArgs({
    allowPositionals: true,
    options: {
      old: { type: 'string' },
      rpm: { type: 'string' },
      phase: { type: 'string' },
      dc: { type: 'boolean', default: false },
      'old-volts': { type: 'string' },
      'old-amps': { type: 'string' },
      'old-continuous': { type: 'string' },
      'old-pulleys': { type: 'string', multiple: true, default: [] },
      'old-speeds': { type: 'string', multiple: true, default: [] },
      sf: { type: 'string' },
      json: { type: 'boolean', default: false },
      variant: { type: 'string' },
      units: { type: 'string', default: 'us' },
      help: { type: 'boolean', default: false },
    },
  })
type Values = ReturnType<typeof parse>['values']

/** The option that an input of the old motor is given with. */
const OPTIONS: Readonly<Record<string, string>> = {
  power: '--old',
  speed: '--rpm',
  volts: '--old-volts',
  amps: '--old-amps',
  continuousPower: '--old-continuous',
  serviceFactor: '--sf',
}
const optionOf = (path: string): string =>
  OPTIONS[path] ??
  (path.startsWith('steps.') ? `--old-pulleys, step ${Number(path.split('.')[1]) + 1}` : path)

const split = (texts: readonly string[], by: string): string[] =>
  texts.flatMap((text) => text.split(by)).map((text) => text.trim())

/** A bare number of turns is rpm. */
const speedText = (text: string): string => (/^[\d., ]+$/.test(text) ? `${text} rpm` : text)

/** The old motor from the options, as texts; a sentence where they do not say one. */
function oldMotor(values: Values): GivenRival | string {
  if (values.old === undefined || values.rpm === undefined)
    return '--old and --rpm say what the old motor was.'
  const { phase, dc } = values
  if (phase !== undefined && phase !== 'single' && phase !== 'three')
    return `--phase cannot be "${phase}": single or three.`
  if (dc && phase !== undefined) return '--phase goes with an AC motor, --dc with another DC one.'
  const pulleys = split(values['old-pulleys'], ';').map((pair) => split([pair], ','))
  const odd = pulleys.find((pair) => pair.length !== 2)
  if (odd) return `--old-pulleys: "${odd.join(', ')}" is not a pair: motor pulley, machine pulley.`
  const given = {
    volts: values['old-volts'],
    amps: values['old-amps'],
    continuousPower: values['old-continuous'],
    serviceFactor: values.sf,
  }
  return {
    ...Object.fromEntries(Object.entries(given).filter(([, text]) => text !== undefined)),
    kind: dc ? 'DC' : phase === 'three' ? 'three-phase' : 'single-phase',
    power: values.old,
    speed: speedText(values.rpm),
    steps: [
      ...pulleys.map(([motorPulley, machinePulley]) => ({ motorPulley, machinePulley })),
      ...split(values['old-speeds'], ',').map((text) => ({ spindle: speedText(text) })),
    ],
  }
}

function fail(text: string): number {
  tell(`${text}\n\n${USAGE}`)
  return 2
}

function refuse(file: string, problems: readonly Problem[], lines: string, json: boolean): number {
  tell(lines)
  if (json) say(JSON.stringify({ file, ok: false, problems }))
  return 2
}

function main(): number {
  let parsed: ReturnType<typeof parse>
  try {
    parsed = parse()
  } catch (error) {
    return fail(error instanceof Error ? error.message : String(error))
  }
  const { values, positionals } = parsed
  if (values.help) {
    say(USAGE)
    return 0
  }
  const { units: system, json } = values
  if (system !== 'us' && system !== 'metric') return fail(`--units cannot be "${system}": us or metric.`)
  if (positionals.length > 1) return fail('One job is compared at a time: give one file.')
  const given = oldMotor(values)
  if (typeof given === 'string') return fail(given)
  const [file = DEMO] = positionals
  const reading = readRival(given)
  if (!reading.ok) {
    const lines = reading.problems.map(({ path, wrong, wouldDo }) => `${optionOf(path)}: ${wrong} ${wouldDo}`)
    return refuse(file, reading.problems, lines.join('\n'), json)
  }
  const opened = openJob(file, values.variant)
  if (!('reading' in opened)) return refuse(file, opened, problemLines(file, opened), json)
  const { scenario, variant } = opened
  const { job } = opened.reading
  const units: Units = { system, temperature: '°C' }
  const comparison = compare(job, reading.rival)
  if (json) say(JSON.stringify({ file, ok: true, answer: compareSentence(comparison, units), ...comparison }))
  else say(compareReport(`${scenario.name}${variant ? `, ${variant.name}` : ''}`, comparison, job, units))
  return 0
}

process.exitCode = main()
