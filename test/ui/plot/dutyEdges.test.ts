// The duty's edges: where each step ends, what a drag or a key makes of it, and how it is written down.
import { expect, it } from 'vitest'
import { parseQuantity } from '../../../sim/quantity.ts'
import { read } from '../../../sim/read.ts'
import { edgesOf, lengthAt, lengthBy, lengthText } from '../../../ui/plot/dutyEdges.ts'
import { example } from '../demo.ts'

const reading = read(example('appleMill'))
if (!reading.ok) throw new Error('the demo does not read')
const { duty } = reading.job
const edges = edgesOf(duty)

it('knows every step of the first cycle', () => {
  expect(edges.map(({ name, from, seconds }) => [name, from, seconds])).toEqual([
    ['loading', 0, 120],
    ['rest', 120, 60],
    ['milling', 180, 300],
  ])
  expect(edgesOf({ ...duty, phases: Array(13).fill(duty.phases[0]) })).toEqual([])
})

it('lands on ten seconds, never shorter, never longer than a day', () => {
  const milling = edges[2]
  expect(lengthAt(milling, 180 + 234)).toBe(230)
  expect(lengthAt(milling, 100)).toBe(10)
  expect(lengthAt(milling, 1e9)).toBe(86_400)
  expect(lengthBy(milling, 60)).toBe(360)
  expect(lengthBy({ ...milling, seconds: 63 }, 10)).toBe(70)
  expect(lengthBy({ ...milling, seconds: 63 }, -10)).toBe(60)
  expect(lengthBy(milling, Number.NEGATIVE_INFINITY)).toBe(10)
})

it.each([[10], [60], [130], [3600], [5400], [86_400]])(
  '%d s is written so that it reads as itself',
  (seconds) => {
    expect(parseQuantity(lengthText(seconds), 'time')).toMatchObject({ ok: true, value: seconds })
  },
)
