// The ratio chart: its axis, what it reads off between the ratios tried, its keys; and the torque chart's points.
import { expect, it } from 'vitest'
import { read } from '../../../sim/read.ts'
import type { RatioPoint } from '../../../sim/studies/ratio.ts'
import { atRatio, isBurnt, ratioKey } from '../../../ui/plot/ratioCurves.ts'
import { ratioScale } from '../../../ui/plot/ratioScale.ts'
import { askedPoints, onCurve, torqueKey, torqueWords } from '../../../ui/plot/torqueLines.ts'
import { example } from '../demo.ts'

const point = (ratio: number, part: Partial<RatioPoint>) => ({ ratio, ...part }) as RatioPoint
const points = [
  point(2, { topSpeed: 200, sag: null, hottestSwitchC: 200, hottestWindingC: 300 }),
  point(4, { topSpeed: 100, sag: 0.2, hottestSwitchC: 120, hottestWindingC: 140 }),
  point(8, { topSpeed: 50, sag: 0, hottestSwitchC: 80, hottestWindingC: 100 }),
]

it('is logarithmic: equal factors are equal lengths, and a press finds its ratio again', () => {
  const { x, ratioAt, ticks } = ratioScale(1, 16, 0, 400, 60)
  expect([1, 2, 4, 8, 16].map((ratio) => Math.round(x(ratio)))).toEqual([0, 100, 200, 300, 400])
  expect(ratioAt(x(5))).toBeCloseTo(5, 9)
  expect([ratioAt(-50), ratioAt(900)].map((ratio) => Math.round(ratio * 1e6) / 1e6)).toEqual([1, 16])
  expect(ticks).toEqual([1, 2, 4, 10])
  expect(ratioScale(1, 16, 0, 1600, 60).ticks).toEqual([1, 1.5, 2, 3, 4, 5, 6, 8, 10, 12, 15])
})

it('reads straight between the ratios tried on that axis', () => {
  // 4 √2 lies midway between 4 and 8.
  const found = atRatio({ points }, 4 * Math.SQRT2)
  expect(found.topSpeed).toBeCloseTo(75, 9)
  expect(found.sag).toBeCloseTo(0.1, 9)
  expect(found.switchC).toBeCloseTo(100, 9)
  expect(found.burnt).toBe(false)
  expect(atRatio({ points }, 4)).toMatchObject({ topSpeed: 100, burnt: false })
  expect(atRatio({ points }, 8).topSpeed).toBe(50)
})

it('does not make up what stands still or has burnt out', () => {
  expect(atRatio({ points }, 3)).toMatchObject({ sag: null, burnt: true })
  expect(points.map(isBurnt)).toEqual([true, false, false])
})

it('keys step by a per cent, jump to the edges, and stay on the axis', () => {
  const key = (name: string, at: number, shift = false) => ratioKey(name, shift, at, [2, 8], [3, 5])
  expect(key('ArrowRight', 4)).toBeCloseTo(4.04, 9)
  expect(key('ArrowLeft', 4, true)).toBeCloseTo(4 / 1.1, 9)
  expect([key('PageUp', 4), key('PageUp', 5), key('PageDown', 4), key('PageDown', 3)]).toEqual([5, 8, 3, 2])
  expect([key('Home', 4), key('End', 4), key('ArrowRight', 8), key('x', 4)]).toEqual([2, 8, 8, undefined])
})

it('a torque curve is read between its points and not beyond its end', () => {
  const curve = { speed: Float64Array.of(0, 10, 20), torque: Float64Array.of(4, 2, 1) }
  expect([0, 5, 15, 20, 21].map((speed) => onCurve(curve, speed))).toEqual([4, 3, 1.5, 1, null])
})

it('the job asks its mean torque and its surges', () => {
  const reading = read(example('appleMill'))
  if (!reading.ok) throw new Error('the example does not read')
  const asked = askedPoints(reading.job)
  // 4.3 lbf·ft on average at 350 rpm, with surges to 7: the summary of the machine says so.
  expect(
    asked
      .filter(({ name }) => name.startsWith('milling'))
      .map(({ torque }) => Math.round(torque * 7.3756) / 10),
  ).toEqual([4.3])
  expect(asked.find(({ name }) => name === 'surge')!.torque).toBeGreaterThan(
    asked.find(({ name }) => name.startsWith('milling'))!.torque,
  )
  expect(asked.every(({ speed }) => Math.abs(speed - (350 * Math.PI) / 30) < 1e-9)).toBe(true)
})

it('the cross-hair of the torque chart steps to whole rpm, jumps to what is asked, and says what it reads', () => {
  const rpm = Math.PI / 30
  const key = (name: string, at: number, shift = false) => {
    const to = torqueKey(name, shift, at * rpm, 1000 * rpm, [350 * rpm, 700 * rpm])
    return to === undefined ? undefined : Math.round((to / rpm) * 1e6) / 1e6
  }
  expect([key('ArrowRight', 352), key('ArrowLeft', 352), key('ArrowRight', 355)]).toEqual([355, 350, 360])
  expect([key('ArrowUp', 352, true), key('ArrowDown', 352, true)]).toEqual([400, 350])
  expect([key('PageUp', 0), key('PageUp', 350), key('PageUp', 700)]).toEqual([350, 700, 1000])
  expect([key('PageDown', 1000), key('PageDown', 700), key('PageDown', 350)]).toEqual([700, 350, 0])
  expect([key('Home', 5), key('End', 5), key('ArrowRight', 1000), key('ArrowLeft', 0)]).toEqual([
    0, 1000, 1000, 0,
  ])
  expect(key('x', 5)).toBeUndefined()
  const curve = { speed: Float64Array.of(0, 10, 20), torque: Float64Array.of(4, 2, 1) }
  const lines = [{ curve, look: '', label: '', name: 'all day' }]
  const units = { system: 'metric', temperature: '°C' } as const
  expect(torqueWords(lines, 5, units).replace(/\s/g, ' ')).toBe('all day: 3.0 N·m')
  expect(torqueWords(lines, 21, units)).toBe('all day: out of reach')
})
