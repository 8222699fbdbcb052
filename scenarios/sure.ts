// The command line of how sure: a job file in, likely outcomes and what to measure next out. `npm run sure -- FILE`
import { figuresOf } from '../sim/carryOut.ts'
import { answerOf } from '../sim/say/answer.ts'
import { sureLines } from '../sim/say/sure.ts'
import { MOST_SAMPLES, SAMPLES } from '../sim/studies/sure.ts'
import { doubtOn } from './doubt.ts'
import { titleOf } from './open.ts'
import { command, oneJob, refused, SHARED } from './options.ts'
import { drive, say } from './terminal.ts'

const USAGE = `npm run sure -- [FILE] [options]     no file: the apple mill demo
  --samples N       ways things may be that are tried (${SAMPLES})
  --seed N          another set of them (1)
${SHARED}
JSON holds the share of each fate, 8-in-10 bands, forty likely outcomes, and what to measure next (SI, °C; null: never).`

const whole = (text: string | undefined, usual: number, least: number, most: number): number | null => {
  if (text === undefined) return usual
  const value = Number(text)
  return /^\d+$/.test(text) && value >= least && value <= most ? value : null
}

function main(): number {
  const asked = command(USAGE, { samples: { type: 'string' }, seed: { type: 'string' } })
  if (typeof asked === 'number') return asked
  const samples = whole(asked.text('samples'), SAMPLES, 10, MOST_SAMPLES)
  if (samples === null) return asked.fail(`--samples takes a whole number from 10 to ${MOST_SAMPLES}.`)
  const seed = whole(asked.text('seed'), 1, 0, 2 ** 32 - 1)
  if (seed === null) return asked.fail('--seed takes a whole number.')
  const opened = oneJob(asked)
  if (typeof opened === 'number') return opened
  const { file, scenario, variant, reading } = opened
  const { units, json } = asked
  const found = doubtOn(scenario, variant, { seed, samples })
  if (!('fates' in found)) return refused(file, found, json)
  const { job } = reading
  const answer = answerOf(job, drive(figuresOf(job), 'Working it out'), units, found)
  if (json) process.stdout.write(`${JSON.stringify({ file, ok: true, seed, answer, ...found })}\n`)
  else
    say(
      [titleOf(opened), '', answer.sentence, answer.support, '', ...sureLines(found, job, units)].join('\n'),
    )
  return 0
}

process.exitCode = main()
