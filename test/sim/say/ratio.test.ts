// The words of a ratio study, on studies made up for them.
import { describe, expect, it } from 'vitest'
import { beltSentence, inward, presentSentence, windowSentence } from '../../../sim/say/ratio.ts'
import { ratioLines, shownPoints } from '../../../sim/say/ratioReport.ts'
import { builtStages } from '../../../sim/drive/limits.ts'
import type { RatioPoint, RatioStudy } from '../../../sim/studies/ratio.ts'
import type { Fault } from '../../../sim/studies/ratio/trial.ts'
import { job } from '../../jobs.ts'

const units = { system: 'metric', temperature: '°C' } as const
const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ')

const point = (ratio: number, faults: readonly Fault[], changes: Partial<RatioPoint> = {}): RatioPoint => ({
  ratio,
  faults,
  beltFaults: [],
  stages: [],
  topSpeed: 500 / ratio,
  lowestAllDay: null,
  allDay: 5,
  sag: 0.1,
  slowest: 30,
  hottestWindingC: 100,
  hottestSwitchC: 90,
  firstOpening: null,
  peakAmps: 10,
  machinePulley: ratio * 0.06,
  ...changes,
})
const study = (changes: Partial<RatioStudy>): RatioStudy => ({
  ok: true,
  asked: { fastest: (350 * Math.PI) / 30, speed: (350 * Math.PI) / 30, torque: 6 },
  present: point(4, []),
  points: [point(2, ['sags']), point(4, []), point(8, ['reach'])],
  duty: null,
  window: null,
  pairs: [],
  steps: [],
  twoStages: [],
  toothed: false,
  ...changes,
})
const window = {
  low: { ratio: 3.62, beyond: 3.6, why: ['sags'] },
  high: { ratio: 5.68, beyond: 5.7, why: ['reach'] },
} as const

describe('the window', () => {
  it('names its edges, rounded to the side that works, and what sets each', () => {
    expect(plain(windowSentence(study({ duty: window, window }), units))).toBe(
      'Works from 3.7 : 1 to 5.6 : 1. Below, it sags more than you accept; above, it cannot reach 350 rpm.',
    )
    expect([inward(3.7, 'low'), inward(3.61, 'low'), inward(5.69, 'high')]).toEqual([3.7, 3.7, 5.6])
  })
  it('says where nothing was tried, and tells a narrow one by its middle', () => {
    const open = { ...window, low: { ratio: 0.5, beyond: null, why: [] } }
    expect(plain(windowSentence(study({ duty: window, window: open }), units))).toMatch(
      /^Works from 0\.5 : 1 to 5\.6 : 1\. Below that nothing was tried; above, /,
    )
    const narrow = { ...window, low: { ratio: 5.65, beyond: 5.64, why: ['hot', 'sags'] } } as const
    expect(plain(windowSentence(study({ duty: narrow, window: narrow }), units))).toBe(
      'Works at about 5.7 : 1. Below, the winding gets too hot, and it sags more than you accept; above, it cannot reach 350 rpm.',
    )
  })
  it('where none works, says what all ratios have in common, or the two ends', () => {
    const all = [point(2, ['opens', 'sags']), point(8, ['opens'])]
    expect(plain(windowSentence(study({ points: all }), units))).toBe(
      'No ratio from 2 : 1 to 8 : 1 works. At every one of them the cutoff opens.',
    )
    const ends = [point(2, ['hot']), point(8, ['reach'])]
    expect(plain(windowSentence(study({ points: ends }), units))).toBe(
      'No ratio from 2 : 1 to 8 : 1 works. Towards 2 : 1 the winding gets too hot; towards 8 : 1 it cannot reach 350 rpm.',
    )
  })
  it('where the belt is what bars it, says so', () => {
    const barred = point(4, [], { beltFaults: [{ kind: 'wrap', stage: 0, value: 1.9, limit: 2.09 }] })
    expect(plain(windowSentence(study({ duty: window, points: [barred] }), units))).toBe(
      'Ratios from 3.7 : 1 to 5.6 : 1 would do the job, but not with this belt in one stage: the belt wraps less than 120° of the small pulley.',
    )
  })
})

it('the drive as it is', () => {
  const said = (present: RatioPoint) => plain(presentSentence(study({ present }), units))
  expect(said(point(4, [], { lowestAllDay: 20 }))).toBe(
    'The 4 : 1 it has now works. It holds the cut’s mean torque of 6.0 N·m all day from 191 rpm up.',
  )
  expect(said(point(4, [], { lowestAllDay: 0 }))).toMatch(/all day at any speed\.$/)
  expect(said(point(4, ['opens', 'hot']))).toBe(
    'At the 4 : 1 it has now the cutoff opens, and the winding gets too hot. It cannot hold the cut’s mean torque of 6.0 N·m without rests at any speed.',
  )
})

it.each([
  ['touch', 0.2, 0.25, 'The pulleys need 250 mm between centres, and there is 200 mm.'],
  ['wrap', 1.9, 2.0944, 'The belt wraps only 109° of the small pulley; it wants 120°.'],
  [
    'small driving',
    0.05,
    0.071,
    'The driving pulley, 50 mm, is under the 71 mm that this belt bends round for long.',
  ],
  ['rim', 35, 33, 'The rims run 35 m/s; cast pulleys stand 33 m/s.'],
  ['balance', 31, 30, 'The belt runs 31 m/s; over 30 m/s pulleys need balancing.'],
  ['load', 206, 30, 'The belt’s tight strand pulls with 206 N; such a belt stands about 30 N for long.'],
  ['steep', 8, 6, 'One stage of 8 : 1 is steep; about 6 : 1 is usual.'],
] as const)('%s, in a sentence', (kind, value, limit, wanted) => {
  expect(plain(beltSentence({ kind, stage: 0, value, limit }, 1, units))).toBe(wanted)
  expect(plain(beltSentence({ kind, stage: 1, value, limit }, 2, units))).toContain('(stage 2)')
})

it('a table shows the present ratio and both edges, and of what crowds round an edge nothing else', () => {
  const ratios = [2, 3.5, 3.6, 3.61, 3.62, 3.7, 4, 5.6, 5.68, 5.7, 8]
  const points = ratios.map((ratio) => point(ratio, []))
  const shown = shownPoints(study({ points, present: points[6], duty: window }))
  expect(shown.map(({ ratio }) => ratio)).toEqual([2, 3.62, 4, 5.68, 8])
})

it('a belt’s limits that no tried ratio shows are called its limits; a driven pulley is called driven', () => {
  const none = study({ duty: window, points: [point(4, ['hot']), point(6, [])] })
  expect(plain(windowSentence(none, units))).toBe(
    'Ratios from 3.7 : 1 to 5.6 : 1 would do the job, but not with this belt in one stage: its limits are passed.',
  )
  const small = { kind: 'small driven', stage: 0, value: 0.05, limit: 0.071 } as const
  expect(plain(beltSentence(small, 1, units))).toBe(
    'The driven pulley, 50 mm, is under the 71 mm that this belt bends round for long.',
  )
})

describe('the report of a made-up study', () => {
  const lines = (changes: Partial<RatioStudy>) => ratioLines('Title', study(changes), units).map(plain)
  const stage = builtStages(job().parts.belt, 100)[0]
  const pair = (changes: Partial<RatioPoint>) => ({
    ...{ driving: 0.0635, driven: 0.254, ratio: 4, length: null, centres: null, buys: 1, changes: {} },
    trial: point(8, [], { hottestWindingC: 90, ...changes }),
    variant: { name: 'x', changes: {} },
  })

  it('beside a jackshaft a pair is the last stage’s, and its ratio that of both', () => {
    expect(lines({ pairs: [pair({ stages: [stage, stage] })] }).at(-1)).toBe(
      '  Last stage 63.5 mm to 254 mm: 4 : 1 in both stages; hottest winding 90 °C, sag 10 %; one pulley to buy',
    )
    expect(lines({ pairs: [pair({ stages: [stage] })] }).at(-1)).toBe(
      '  63.5 mm to 254 mm: 4 : 1; hottest winding 90 °C, sag 10 %; one pulley to buy',
    )
  })

  it('where no speed was ever held there is no sag to tell', () => {
    const never = point(4, [], { sag: null, slowest: null })
    const told = lines({ present: never, points: [never], pairs: [pair({ sag: null })] })
    expect(told.find((line) => line.includes('works') && line.startsWith('  4 : 1'))).toMatch(/ — {2,}100 °C/)
    expect(told.at(-1)).toMatch(/; hottest winding 90 °C; one pulley to buy$/)
  })

  it('a step that does not do it says why, one that does what it comes to', () => {
    const step = (n: number, faults: readonly Fault[]) => ({
      ...{ driving: 0.05, driven: 0.1, step: n, inUse: n === 1, ratio: 2, length: 1, longer: 0 },
      trial: point(2, faults),
      variant: { name: 'x', changes: {} },
    })
    const told = lines({ steps: [step(1, ['opens', 'sags']), step(2, [])] })
    expect(told).toContain('  Step 1 (in use): 50 mm to 100 mm, 2 : 1; the cutoff opens')
    expect(told).toContain('  Step 2: 50 mm to 100 mm, 2 : 1; works; hottest winding 100 °C, sag 10 %')
  })
})
