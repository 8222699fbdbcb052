// Does a job's motor replace an old one? Both at the spindle. `npm run compare -- FILE --old "3/4 hp" --rpm 1725 …`
import { compare } from '../sim/rival/compare.ts'
import type { GivenRival } from '../sim/rival/fields.ts'
import { readRival } from '../sim/rival/read.ts'
import { compareSentence } from '../sim/say/compare.ts'
import { compareReport } from '../sim/say/compareReport.ts'
import { DEMO, titleOf } from './open.ts'
import { type Command, command, oneJob, SHARED } from './options.ts'
import { say, tell } from './terminal.ts'

const USAGE = `npm run compare -- [FILE] --old POWER --rpm SPEED [options]     no file: the apple mill demo
  --old "3/4 hp"    power on the old motor's plate
  --rpm 1725        speed on it, at full load
  --phase single|three   an AC motor's mains (single)
  --dc              it is another DC motor: --old-volts, --old-amps and --old-continuous ("1 hp") if printed
  --old-pulleys "3 in, 9 in"   motor, machine; again, or "3 in, 9 in; 4 in, 8 in", for each step
  --old-speeds "350 rpm, 700 rpm"   the spindle speeds it gave, where pulleys are not known
                    neither: it sat straight on the spindle
  --sf 1.25         service factor, if printed
${SHARED}`

const TEXT = { type: 'string' } as const
const AGAIN = { type: 'string', multiple: true } as const
const OWN = {
  old: TEXT,
  rpm: TEXT,
  phase: TEXT,
  dc: { type: 'boolean' },
  'old-volts': TEXT,
  'old-amps': TEXT,
  'old-continuous': TEXT,
  'old-pulleys': AGAIN,
  'old-speeds': AGAIN,
  sf: TEXT,
} as const

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
function oldMotor({ text, texts, flag }: Command): GivenRival | string {
  const power = text('old')
  const speed = text('rpm')
  if (power === undefined || speed === undefined) return '--old and --rpm say what the old motor was.'
  const phase = text('phase')
  const dc = flag('dc')
  if (phase !== undefined && phase !== 'single' && phase !== 'three')
    return `--phase cannot be "${phase}": single or three.`
  if (dc && phase !== undefined) return '--phase goes with an AC motor, --dc with another DC one.'
  const pulleys = split(texts('old-pulleys'), ';').map((pair) => split([pair], ','))
  const odd = pulleys.find((pair) => pair.length !== 2)
  if (odd) return `--old-pulleys: "${odd.join(', ')}" is not a pair: motor pulley, machine pulley.`
  const given = {
    volts: text('old-volts'),
    amps: text('old-amps'),
    continuousPower: text('old-continuous'),
    serviceFactor: text('sf'),
  }
  return {
    ...Object.fromEntries(Object.entries(given).filter(([, given]) => given !== undefined)),
    kind: dc ? 'DC' : phase === 'three' ? 'three-phase' : 'single-phase',
    power,
    speed: speedText(speed),
    steps: [
      ...pulleys.map(([motorPulley, machinePulley]) => ({ motorPulley, machinePulley })),
      ...split(texts('old-speeds'), ',').map((given) => ({ spindle: speedText(given) })),
    ],
  }
}

function main(): number {
  const asked = command(USAGE, OWN)
  if (typeof asked === 'number') return asked
  const { units, json } = asked
  const given = oldMotor(asked)
  if (typeof given === 'string') return asked.fail(given)
  const reading = readRival(given)
  if (!reading.ok) {
    const { problems } = reading
    tell(problems.map(({ path, wrong, wouldDo }) => `${optionOf(path)}: ${wrong} ${wouldDo}`).join('\n'))
    if (json) say(JSON.stringify({ file: asked.files[0] ?? DEMO, ok: false, problems }))
    return 2
  }
  const opened = oneJob(asked)
  if (typeof opened === 'number') return opened
  const { file } = opened
  const { job } = opened.reading
  const comparison = compare(job, reading.rival)
  if (json) say(JSON.stringify({ file, ok: true, answer: compareSentence(comparison, units), ...comparison }))
  else say(compareReport(titleOf(opened), comparison, job, units))
  return 0
}

process.exitCode = main()
