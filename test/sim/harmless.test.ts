// Characters that steer what stands around them are boxed in whatever comes from a file; letters of every script stay.
import { expect, it } from 'vitest'
import { harmless } from '../../sim/harmless.ts'
import { readLog } from '../../sim/identify/log.ts'
import { readFile } from '../../sim/read.ts'
import { demo } from '../jobs.ts'

it('boxes controls and turns of direction, and leaves letters, line ends and tabs', () => {
  // The embeddings, overrides and isolates of the Unicode bidirectional algorithm (UAX 9, table 1).
  for (const code of [
    0x202a, 0x202b, 0x202c, 0x202d, 0x202e, 0x2066, 0x2067, 0x2068, 0x2069, 0, 7, 0x1b, 0x9b,
  ])
    expect(harmless(`a${String.fromCharCode(code)}b`)).toBe('a□b')
  const plain = 'Mühle №3\t≈ 5 Ω\r\nطاحونة עץ 🌳\u200d'
  expect(harmless(plain)).toBe(plain)
})

it('in a job file, raw or written as an escape', () => {
  const name = 'mill \u202egpj.exe\u001b[2J'
  const found = readFile(JSON.stringify({ ...demo('appleMill'), name }))
  expect(found.ok && found.scenario.name).toBe('mill □gpj.exe□[2J')
  const escaped = JSON.stringify({ ...demo('appleMill'), name }).replace('\u202e', '\\u202E')
  expect(readFile(escaped)).toEqual(found)
})

it('in the columns of a log', () => {
  const rows = Array.from({ length: 8 }, (_, n) => `${n},${20 + n},5`).join('\n')
  const found = readLog(`time (min),can \u202e(°C),amps\n${rows}`)
  expect(found.ok && found.log.place).toBe('can □(°C)')
})
