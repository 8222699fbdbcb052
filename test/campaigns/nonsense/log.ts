// A warm-up log made worse: refused with a sentence, or read into columns and fitted, or refused by the fit.
import { heatDoubtOf } from '../../../sim/heatDoubt.ts'
import { fitWarmUp } from '../../../sim/identify/fit.ts'
import { readLog } from '../../../sim/identify/log.ts'
import { read } from '../../../sim/read.ts'
import { fitLines, missWords, settledWords } from '../../../sim/say/fit.ts'
import { logText } from '../../../ui/logText.ts'
import { readFileSync } from 'node:fs'
import { demo } from '../../jobs.ts'
import type { Chance } from '../../seeded.ts'
import type { Trial } from '../campaign.ts'
import { ABSURD, damaged, HOSTILE } from './damage.ts'
import { amissIn, nonsense, notNumber } from './said.ts'

const demoLog = readFileSync(new URL('../../../scenarios/appleMillWarmUp.csv', import.meta.url), 'utf8')
const HEADS = [
  ...[
    'time (min)',
    'time',
    't',
    'Zeit',
    'can (°C)',
    'case °F',
    'temp',
    'T1',
    'amps',
    'I',
    'Strom (A)',
    'rpm',
  ],
  ...['speed', 'volts', 'U', 'winding ohms', 'winding °C', 'air', 'room (°F)', 'notes', 'date', ''],
] as const
const UNITS = { system: 'metric', temperature: '°C' } as const

/** A table from its grammar: heads people write, cells that mostly fit under them. */
function table(chance: Chance): string {
  const { pick, even, happens, size } = chance
  const mark = pick([',', ';', '\t'])
  const comma = mark !== ',' && happens(0.4)
  const heads = Array.from({ length: Math.floor(size(1, 12)) }, () =>
    pick([...HEADS, ...HOSTILE.slice(0, 3)]),
  )
  if (happens(0.7)) heads.unshift('time (min)', 'can (°C)', 'amps')
  const cell = (row: number, head: string) => {
    if (happens(0.03)) return pick([...ABSURD, ...HOSTILE])
    const value = /time|zeit|^t$/i.test(head) ? row * 0.5 + (happens(0.01) ? even(-9, 9) : 0) : even(0, 90)
    const text = String(Number(value.toPrecision(4)))
    return comma ? text.replace('.', ',') : text
  }
  const rows = Array.from({ length: Math.floor(size(1, 300)) }, (_, row) =>
    heads.map((head) => cell(row, head)),
  )
  return [heads, ...rows].map((cells) => cells.join(mark)).join(pick(['\n', '\r\n', '\r']))
}

/** The bytes of a log of a chance, as a spreadsheet may have written them. */
export function logOf(chance: Chance): Uint8Array<ArrayBuffer> {
  const text = chance.happens(0.5) ? damaged(demoLog, chance, 8) : table(chance)
  if (chance.happens(0.8)) return new TextEncoder().encode(text)
  if (chance.happens(0.5)) return Uint8Array.from(text, (letter) => letter.charCodeAt(0))
  return Uint8Array.from([0xff, 0xfe, ...Buffer.from(text, 'utf16le')])
}

/** What becomes of a log's bytes. */
export function tryLog(bytes: Uint8Array<ArrayBuffer>): Trial {
  const text = logText(bytes.buffer)
  const found = readLog(text)
  if (!found.ok) return refusal(found, text)
  const { log, notes } = found
  const time = log.time
  if (time.some((t, row) => !Number.isFinite(t) || (row > 0 && t < time[row - 1])))
    return { measures: { refused: 0 }, wrong: 'times that do not run forward' }
  if (
    Object.values(log).some(
      (column) => ArrayBuffer.isView(column) && (column as Float64Array).includes(Infinity),
    )
  )
    return { measures: { refused: 0 }, wrong: 'an infinite reading' }
  const scenario = demo('appleMill')
  const reading = read(scenario)
  if (!reading.ok) throw new Error('the demonstration is refused')
  const doubt = heatDoubtOf(scenario, reading.motor, reading.job.parts.supply)
  const fit = fitWarmUp(log, reading.job.parts, doubt, 300)
  if (!fit.ok) return refusal(fit, text)
  const words = [
    ...fitLines(fit, UNITS).flatMap((line) => Object.values(line)),
    ...[missWords(fit, UNITS), settledWords(fit), ...notes, ...fit.notes, ...fit.next],
  ]
  const wrong = notNumber(fit.numbers) ?? nonsense(words.join('\n'), text)
  return { measures: { fitted: 1, 'rows of a log': log.rows }, ...(wrong && { wrong }) }
}

function refusal({ wrong, wouldDo }: { wrong: string; wouldDo: string }, input: string): Trial {
  const amiss = amissIn([{ path: '', wrong, wouldDo }], input)
  return { measures: { refused: 1 }, ...(amiss && { wrong: amiss }) }
}
