// The command line of the ratio study: a job file in, the window of ratios and pulleys to buy out. `npm run ratio -- FILE`
import { presentSentence, windowSentence } from '../sim/say/ratio.ts'
import { ratioLines } from '../sim/say/ratioReport.ts'
import { ratioStudy } from '../sim/studies/ratio.ts'
import { titleOf } from './open.ts'
import { command, oneJob, refused, SHARED } from './options.ts'
import { drive, say } from './terminal.ts'

const USAGE = `npm run ratio -- [FILE] [options]     no file: the apple mill demo
${SHARED}
JSON holds the window, every ratio tried, and proposals as variants (SI, °C).`

function main(): number {
  const asked = command(USAGE)
  if (typeof asked === 'number') return asked
  const opened = oneJob(asked)
  if (typeof opened === 'number') return opened
  const { file, scenario, variant } = opened
  const { units, json } = asked
  const study = drive(ratioStudy(scenario, variant ? { variant } : {}), 'Trying ratios')
  if (!study.ok) return refused(file, study.problems, json)
  const answer = { window: windowSentence(study, units), present: presentSentence(study, units) }
  if (json) process.stdout.write(`${JSON.stringify({ file, ...study, answer })}\n`)
  else say(ratioLines(titleOf(opened), study, units).join('\n'))
  return 0
}

process.exitCode = main()
