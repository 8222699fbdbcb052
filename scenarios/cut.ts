// The command line of a cut: what a person knows in, torque and power at the spindle out. `npm run cut -- KIND …`
import { CUTS, type CutName, isCut } from '../sim/cuts/index.ts'
import { inputsOf, readCut } from '../sim/cuts/read.ts'
import { nearest } from '../sim/nearest.ts'
import type { Problem } from '../sim/problem.ts'
import { cutLines, cutSentence, inputLines, sumText } from '../sim/say/cut.ts'
import type { Units } from '../sim/say/units.ts'
import { say, tell } from './terminal.ts'

const USAGE = `npm run cut -- [KIND] [--INPUT VALUE…] [options]     no kind: every kind with its inputs
  --json            one line of JSON: torque, power, speed, spread (SI), row, source; use npm run -s
  --units us|metric units of the answer (us)
  --help            with a kind: its inputs`

interface Words {
  readonly kinds: readonly string[]
  /** Every --name, with the last value given for it; null where none follows. */
  readonly named: ReadonlyMap<string, string | null>
}

const SWITCHES = ['json', 'help']

/** "--name value" and "--name=value"; a value may begin with one minus sign, as a slope does. */
function wordsOf(words: readonly string[]): Words {
  const kinds: string[] = []
  const named = new Map<string, string | null>()
  for (let n = 0; n < words.length; n++) {
    const word = words[n]
    if (!word.startsWith('--')) {
      kinds.push(word)
      continue
    }
    const at = word.indexOf('=')
    const name = word.slice(2, at < 0 ? undefined : at)
    const next = words[n + 1]
    if (at >= 0) named.set(name, word.slice(at + 1))
    else if (SWITCHES.includes(name) || next === undefined || next.startsWith('--')) named.set(name, null)
    else {
      named.set(name, next)
      n++
    }
  }
  return { kinds, named }
}

const kindLines = (name: CutName, units: Units): string =>
  `${name}: ${CUTS[name].label}\n${inputLines(inputsOf(name), units).join('\n')}`

const everyKind = (units: Units): string =>
  (Object.keys(CUTS) as CutName[]).map((name) => kindLines(name, units)).join('\n\n')

const problemLines = (problems: readonly Problem[]): string =>
  problems.map(({ path, wrong, wouldDo }) => `--${path}: ${wrong} ${wouldDo}`).join('\n')

function fail(text: string): number {
  tell(`${text}\n\n${USAGE}`)
  return 2
}

function work(name: CutName, texts: Readonly<Record<string, string>>, json: boolean, units: Units): number {
  const worked = readCut(name, texts)
  const answer = worked.ok ? worked.answer : worked.asked
  if (json) {
    const said = answer && { ...answer, how: sumText(answer.how, units) }
    say(JSON.stringify({ kind: name, ...worked, ...(worked.ok ? { answer: said } : { asked: said }) }))
  }
  if (!worked.ok) {
    tell(problemLines(worked.problems))
    if (worked.asked) tell(`For what it is worth: ${cutSentence(worked.asked, units)}`)
    return 2
  }
  if (!json) say(cutLines(CUTS[name].label, worked.answer, units).join('\n'))
  return 0
}

function main(): number {
  const { kinds, named } = wordsOf(process.argv.slice(2))
  const system = named.has('units') ? named.get('units') : 'us'
  if (system !== 'us' && system !== 'metric')
    return fail(`--units cannot be "${system ?? ''}": us or metric.`)
  const units: Units = { system, temperature: '°C' }
  const [kind] = kinds
  if (kind === undefined) {
    const stray = [...named.keys()].find((name) => ![...SWITCHES, 'units'].includes(name))
    if (stray !== undefined)
      return fail(`--${stray}: The kind of cut is missing. Known: ${Object.keys(CUTS).join(', ')}.`)
    say(`${USAGE}\n\n${everyKind(units)}`)
    return 0
  }
  if (!isCut(kind)) {
    const guess = nearest(kind, Object.keys(CUTS))
    return fail(
      `No kind of cut is called "${kind}". ${guess ? `Did you mean "${guess}"?` : `Known: ${Object.keys(CUTS).join(', ')}.`}`,
    )
  }
  if (kinds.length > 1) return fail(`"${kinds[1]}" belongs to no input. Put texts with spaces in quotes.`)
  if (named.has('help')) {
    say(kindLines(kind, units))
    return 0
  }
  const inputs = [...named].filter(([name]) => ![...SWITCHES, 'units'].includes(name))
  const bare = inputs.find(([, value]) => value === null)
  if (bare) return fail(`--${bare[0]}: A value is missing.`)
  return work(kind, Object.fromEntries(inputs) as Record<string, string>, named.has('json'), units)
}

process.exitCode = main()
