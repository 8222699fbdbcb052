// The command line of the ratio study: a job file in, the window of ratios and pulleys to buy out. `npm run ratio -- FILE`
import { parseArgs } from 'node:util'
import { presentSentence, windowSentence } from '../sim/say/ratio.ts'
import { ratioLines } from '../sim/say/ratioReport.ts'
import type { Units } from '../sim/say/units.ts'
import { type RatioStudy, ratioStudy } from '../sim/studies/ratio.ts'
import { DEMO, openJob } from './open.ts'
import { drive, problemLines, say, tell } from './terminal.ts'

const USAGE = `npm run ratio -- [FILE] [options]     no file: the apple mill demo
  --variant NAME    the job with this variant's changes
  --json            one line of JSON: the window, every ratio tried, proposals as variants (SI, °C); use npm run -s
  --units us|metric units of the answer (us)
  --fahrenheit      temperatures in °F`

const parse = () =>
  parseArgs({
    allowPositionals: true,
    options: {
      json: { type: 'boolean', default: false },
      variant: { type: 'string' },
      units: { type: 'string', default: 'us' },
      fahrenheit: { type: 'boolean', default: false },
      help: { type: 'boolean', default: false },
    },
  })

function fail(text: string): number {
  tell(`${text}\n\n${USAGE}`)
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
    tell(USAGE)
    return 0
  }
  if (values.units !== 'us' && values.units !== 'metric')
    return fail(`--units cannot be "${values.units}": us or metric.`)
  if (positionals.length > 1) return fail('One file at a time.')
  const units: Units = { system: values.units, temperature: values.fahrenheit ? '°F' : '°C' }
  const file = positionals[0] ?? DEMO
  const opened = openJob(file, values.variant)
  const study = 'reading' in opened ? studyOf(opened) : null
  const problems = 'reading' in opened ? (study?.ok === false ? study.problems : []) : opened
  if (!('reading' in opened) || !study?.ok) {
    tell(problemLines(file, problems))
    if (values.json) process.stdout.write(`${JSON.stringify({ file, ok: false, problems })}\n`)
    return 2
  }
  const { scenario, variant } = opened
  if (values.json) process.stdout.write(`${jsonLine(file, study, units)}\n`)
  else say(ratioLines(`${scenario.name}${variant ? `, ${variant.name}` : ''}`, study, units).join('\n'))
  return 0
}

const studyOf = ({ scenario, variant }: Exclude<ReturnType<typeof openJob>, readonly unknown[]>) =>
  drive(ratioStudy(scenario, variant ? { variant } : {}), 'Trying ratios')

const jsonLine = (file: string, study: RatioStudy, units: Units): string =>
  JSON.stringify({
    file,
    ...study,
    answer: { window: windowSentence(study, units), present: presentSentence(study, units) },
  })

process.exitCode = main()
