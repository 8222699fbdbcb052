// The chart of how sure: forty dots wherever they fall, bars in their order, words for each, in both of its forms.
import { beforeAll, expect, it } from 'vitest'
import { read } from '../../../sim/read.ts'
import { finish } from '../../../sim/run.ts'
import { type Sure, sure, sureSpec } from '../../../sim/studies/sure.ts'
import { barsOf, sureDrawing } from '../../../ui/plot/sureChart.ts'
import { example } from '../demo.ts'

const units = { system: 'us', temperature: '°C' } as const
const scenario = example('bandSaw')
const reading = read(scenario)
if (!reading.ok) throw new Error('the demo does not read')
const { job } = reading
let found: Sure
beforeAll(() => {
  const spec = sureSpec(scenario, { samples: 40 })
  if ('ok' in spec) throw new Error('refused')
  const made = finish(sure(spec))
  if (!made) throw new Error('no motor')
  found = made
})

it('bars: as known now, then what is to be measured, most telling first', () => {
  const bars = barsOf(found, job, units)
  expect(bars[0]).toMatchObject({ name: 'as known now', look: 'now' })
  expect(bars[1].look).toBe('best')
  expect(bars.slice(2).every(({ look }) => look === 'other')).toBe(true)
  expect(bars.every(({ words }) => words.length > 3 && !/NaN|undefined/.test(words))).toBe(true)
})

it.each([[1280], [358]])('at %d px everything has a place', (width) => {
  const { height, table } = sureDrawing(found, job, units, width, 1)
  expect(height).toBeGreaterThan(120)
  expect(height).toBeLessThan(800)
  expect(table().rows.length).toBeGreaterThan(1)
})

it('a job that nearly always lasts is told by its winding, one that never fails by never', () => {
  const sane: Sure = {
    ...found,
    of: 'winding',
    dots: found.dots.map(() => ({ t: null, fate: 'lasts' as const })),
    t: { low: null, mid: null, high: null },
    windingC: { low: 80, mid: 90, high: 104 },
    settling: [],
  }
  expect(barsOf(sane, job, units)).toEqual([
    { name: 'as known now', words: '80 to 104\u00a0°C', band: sane.windingC, look: 'now' },
  ])
  expect(sureDrawing(sane, job, units, 800, 1).table().head[1]).toBe('Hottest winding, 8 in 10')
})
