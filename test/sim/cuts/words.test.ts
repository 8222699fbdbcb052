// What is said of a cut: in both unit systems, with the row, how well it is known, and every input.
import { expect, it } from 'vitest'
import { type CutName, CUTS } from '../../../sim/cuts/index.ts'
import { inputsOf } from '../../../sim/cuts/read.ts'
import { cutLines, cutSentence, inputLines, spreadText, sumText } from '../../../sim/say/cut.ts'
import type { Units } from '../../../sim/say/units.ts'
import { ask, EXAMPLES } from './ask.ts'

const us: Units = { system: 'us', temperature: '°F' }
const metric: Units = { system: 'metric', temperature: '°C' }
const names = Object.keys(CUTS) as CutName[]
/** No-break spaces read as spaces. */
const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ')

it('a cut in either system of units', () => {
  const answer = ask('turning', {
    ...EXAMPLES.turning,
    material: 'plain carbon HB 160-180',
    spindle: '191 rpm',
  })
  expect(plain(cutSentence(answer, metric))).toBe('The spindle asks 8.5 N·m at 191 rpm: 169 W.')
  expect(plain(cutSentence(answer, us))).toBe('The spindle asks 6.2 lbf·ft at 191 rpm: 0.227 hp.')
  expect(plain(spreadText(answer, metric))).toBe('6.3 to 11.8 N·m')
  expect(plain(sumText(answer.how, metric))).toBe(
    'A chip of 1 mm by 0.1 mm takes 345 N, acting 24.5 mm from the axis.',
  )
  expect(plain(sumText(answer.how, us))).toBe(
    'A chip of 0.0394 in by 0.00394 in takes 77.5 lbf, acting 0.965 in from the axis.',
  )
})

it('the answer in full names the row, how well it is known, and its source', () => {
  const lines = cutLines('Turning metal', ask('turning', EXAMPLES.turning), metric).map(plain)
  expect(lines[0]).toBe('Turning metal')
  expect(lines.join('\n')).toMatch(
    /Row +Plain carbon steel, HB 120–140 \(mild steel\): 1.88 kJ\/cm³ \(0.69 hp·min\/in³\)/,
  )
  expect(lines.join('\n')).toMatch(
    /Known +the row was read there\n +Source +Machinery’s Handbook, 31st ed., Table 1b, p. 1147/,
  )
  const brass = cutLines('', ask('turning', { ...EXAMPLES.turning, material: 'brass' }), metric).join('\n')
  expect(brass).toMatch(/Known +the row is from memory: nobody has the page/)
  expect(cutLines('', ask('clay', EXAMPLES.clay), us).join('\n')).toMatch(/Known +common practice/)
})

it('a number that was given is called so, without a spread', () => {
  const lines = cutLines('A torque', ask('torque', EXAMPLES.torque), metric).map(plain).join('\n')
  expect(lines).toMatch(/8 times in 10 +5.0 N·m, as given/)
  expect(lines).toMatch(/Known +your own number/)
  expect(lines).not.toMatch(/Source/)
})

it('a hoist’s caution is said', () => {
  expect(cutLines('Hoisting', ask('hoisting', EXAMPLES.hoisting), us).join('\n')).toMatch(
    /Caution +Up only, and never people/,
  )
})

it.each(names)('%s says no metric unit in US units, nor the other way round, and ends its sum', (name) => {
  const { how } = ask(name, EXAMPLES[name])
  expect(plain(sumText(how, us))).not.toMatch(/\d (N|N·m|mm|m|m\/s|W|kg)\b/)
  expect(plain(sumText(how, metric))).not.toMatch(/\d (lbf|lbf·ft|in|ft\/min|hp|lb)\b/)
  for (const units of [us, metric]) expect(sumText(how, units)).toMatch(/^[A-Z0-9].*\.$/)
})

it.each(names)('%s lists each input with its range in the reader’s units', (name) => {
  for (const units of [us, metric]) {
    const lines = inputLines(inputsOf(name), units).map(plain)
    expect(lines).toHaveLength(Object.keys(inputsOf(name)).length)
    for (const input of Object.keys(inputsOf(name)))
      expect(lines.some((line) => new RegExp(`^ {2}--${input} +\\S`).test(line))).toBe(true)
    expect(lines.join('\n')).not.toMatch(/NaN|undefined/)
  }
})

it('an input says what it is when it is left out', () => {
  const lines = inputLines(inputsOf('sawingWood'), metric).map(plain).join('\n')
  expect(lines).toMatch(/--kerf +Width of the kerf: 0.3 mm to 10 mm; else 1.5 mm/)
  expect(lines).toMatch(/--spindle +Spindle speed: 1 rpm to 60 000 rpm; may be left out/)
  expect(plain(inputLines(inputsOf('sawingWood'), us).join('\n'))).toMatch(
    /--height +Height of the wood: 0.0394 in to 39.4 in/,
  )
})
