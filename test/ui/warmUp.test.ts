// A warm-up log on the page: taken or refused in a sentence, fitted to the chosen motor, its heat numbers used and undone.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { read } from '../../sim/read.ts'
import { inputAt, withChange } from '../../sim/scenario.ts'
import { fitted, heatInUse, motorKey, takeLog, useHeat } from '../../ui/change/warmUp.ts'
import { choose } from '../../ui/change/variants.ts'
import { logText } from '../../ui/logText.ts'
import type { State } from '../../ui/store.ts'
import { granted } from '../../ui/wishes.ts'
import { root } from '../house/tree.ts'
import { state } from './demo.ts'

const csv = readFileSync(join(root, 'scenarios/appleMillWarmUp.csv'), 'utf8')
const withLog = (text = csv): State => ({ ...state(), logged: takeLog('run.csv', text) })
const fitOf = ({ logged }: State) => (logged?.kind === 'read' ? logged.fit : null)

it('is fitted, used with its source and bounds by every variant, and undone', () => {
  const now = fitted(withLog())
  const fit = fitOf(now)
  if (!fit?.ok) throw new Error('the example log does not fit')
  expect(heatInUse(now.scenario, now.logged)).toBe(false)
  const used = granted(now, { kind: 'use heat' })
  const input = inputAt(used.scenario, 'heat.frameCapacity')
  expect(input?.source).toBe('measured: fitted to run.csv')
  expect([input?.low, input?.high].every((bound) => bound?.endsWith('J/K'))).toBe(true)
  expect(heatInUse(used.scenario, used.logged)).toBe(true)
  for (const variant of used.variants) {
    const reading = read(used.scenario, variant)
    if (!reading.ok) throw new Error(JSON.stringify(reading.problems))
    // To the three digits it is written with.
    expect(reading.job.parts.heat.frameCapacity / fit.numbers.frameCapacity!.value).toBeCloseTo(1, 2)
  }
  expect(granted(used, { kind: 'undo' }).scenario).toBe(now.scenario)
})

it('fits to the motor as it is without an earlier fit: using one does not move the next', () => {
  const now = fitted(withLog())
  const again = fitted(useHeat(now))
  expect(motorKey(again)).toBe(motorKey(now))
  expect(fitOf(again)).toEqual(fitOf(now))
})

it('knows when the motor is another', () => {
  const now = fitted(withLog())
  const key = now.logged?.kind === 'read' ? now.logged.motor : ''
  expect(motorKey(choose(now, 'variant 1'))).not.toBe(key)
  expect(motorKey({ ...now, scenario: withChange(now.scenario, 'plate.power', '1.5 hp') })).not.toBe(key)
  expect(motorKey({ ...now, scenario: withChange(now.scenario, 'belt.machinePulley', '12 in') })).toBe(key)
})

it.each([
  ['when,what\n1,warm\n2,hot\n', /names its columns/],
  ['PK\u0003\u0004 a spreadsheet', /binary file/],
  ['', /empty/],
])('%j is refused in a sentence', (text, wrong) => {
  const logged = takeLog('bad.csv', text)
  expect(logged.kind).toBe('refused')
  expect(logged.kind === 'refused' && logged.wrong).toMatch(wrong)
})

it('a log without speed asks at what speed it was held, and takes the answer', () => {
  const blind = csv
    .split('\n')
    .map((line) =>
      line
        .split(',')
        .filter((_, at) => at !== 3)
        .join(','),
    )
    .join('\n')
  const now = fitted(withLog(blind))
  expect(fitOf(now)).toMatchObject({ ok: false, wrong: expect.stringMatching(/rpm nor volts/) })
  const held = (text: string): State =>
    fitted({ ...now, logged: now.logged?.kind === 'read' ? { ...now.logged, held: text } : null })
  expect(fitOf(held('1400'))?.ok).toBe(true)
  expect(fitOf(held('fast'))).toMatchObject({ ok: false })
})

it('a job that does not read has no motor to fit to, and says so', () => {
  const now = withLog()
  const broken = fitted({ ...now, scenario: withChange(now.scenario, 'plate.speed', '40000 rpm') })
  expect(fitOf(broken)).toMatchObject({ ok: false, wrong: expect.stringMatching(/needs a look/) })
})

it('reads what spreadsheets write: UTF-8, UTF-16 with its mark, the old Western code page', () => {
  const text = 'time;can (°C)\n1;20\n'
  expect(logText(new TextEncoder().encode(text).buffer)).toBe(text)
  expect(logText(new Uint8Array([0xff, 0xfe, ...Buffer.from(text, 'utf16le')]).buffer)).toBe(text)
  expect(logText(new Uint8Array(Buffer.from(text, 'latin1')).buffer)).toBe(text)
  expect(logText(new Uint8Array([0x89, 0xff, 0xff, 0x50, 0, 1]).buffer)).toContain('\ufffd\ufffd')
})
