// The command line of work and rest: a job file in, how long a cut goes and what rest it needs out. `npm run limits -- FILE`
import { DUTY_TYPES, dutyType } from '../sim/handbook/dutyTypes.ts'
import { parseQuantity } from '../sim/quantity.ts'
import { limitsSentences } from '../sim/say/limits.ts'
import { limitsCard } from '../sim/say/limitsCard.ts'
import { limitsLines } from '../sim/say/limitsReport.ts'
import { limitsStudy } from '../sim/studies/limits.ts'
import { titleOf } from './open.ts'
import { command, oneJob, refused, SHARED } from './options.ts'
import { drive, say } from './terminal.ts'

const TYPES = DUTY_TYPES.map(({ name }) => `"${name}"`).join(', ')

const USAGE = `npm run limits -- [FILE] [options]     no file: the apple mill demo
${SHARED}
  --phase NAME      the step that is the cut (the hardest)
  --rest TIME       how long again after this rest (the cycle's own)
  --duty TYPE       a ready-made duty with this cut: ${TYPES}
JSON holds each limit as likely and at its careful end (SI, °C), and the card.`

function main(): number {
  const asked = command(USAGE, {
    phase: { type: 'string' },
    rest: { type: 'string' },
    duty: { type: 'string' },
  })
  if (typeof asked === 'number') return asked
  const restText = asked.text('rest')
  const rest = restText === undefined ? null : parseQuantity(restText, 'time')
  if (rest && !(rest.ok && rest.value > 0))
    return asked.fail(`--rest: ${rest.ok ? 'More than nothing is wanted.' : `${rest.wrong} ${rest.wouldDo}`}`)
  const dutyText = asked.text('duty')
  const type = dutyText === undefined ? undefined : dutyType(dutyText)
  if (type === null) return asked.fail(`--duty cannot be "${dutyText}": one of ${TYPES}.`)
  const opened = oneJob(asked)
  if (typeof opened === 'number') return opened
  const { file, scenario, variant } = opened
  const { units, json } = asked
  const options = { variant, phase: asked.text('phase'), rest: rest?.ok ? rest.value : undefined, type }
  const study = drive(limitsStudy(scenario, options), 'Finding limits')
  if (!study.ok) return refused(file, study.problems, json)
  const title = `${titleOf(opened)}${type ? `, ${type.name}` : ''}`
  if (json) {
    const answer = { sentence: limitsSentences(study, units), card: limitsCard(title, study, units) }
    process.stdout.write(`${JSON.stringify({ file, ...study, answer })}\n`)
  } else say(limitsLines(title, study, units).join('\n'))
  return 0
}

process.exitCode = main()
