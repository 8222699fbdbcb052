// An induction motor from its plate: poles, torque from power and speed, and the least torques of the standard.
import { describe, expect, it } from 'vitest'
import {
  along,
  BREAKDOWN,
  DESIGN_B,
  FULL_LOAD_RPM,
  LOCKED_ROTOR,
  PULL_UP,
} from '../../../sim/handbook/induction.ts'
import { SINGLE_PHASE_BREAKDOWN } from '../../../sim/handbook/inductionSinglePhase.ts'
import { fromUnit, toUnit } from '../../../sim/quantity.ts'
import { turningField } from '../../../sim/rival/induction.ts'
import { near } from '../physics/lab.ts'
import { induction } from './old.ts'

const rpm = (speed: number) => fromUnit(speed, 'rpm')
const three = (power: string, speed = '1725 rpm') => induction({ kind: 'three-phase', power, speed })
const single = (power: string, speed = '1725 rpm') => induction({ power, speed })

describe('NEMA MG 1 12.38 and 12.39, from memory: least torques of three-phase motors over full load', () => {
  it.each([
    ['1 hp', 2.75, 3],
    ['1.5 hp', 2.5, 2.8],
    ['2 hp', 2.35, 2.7],
    ['3 hp', 2.15, 2.5],
  ])('4 poles, %s', (power, locked, breakdown) => {
    const motor = three(power)
    expect(motor.poles).toBe(4)
    near(motor.locked / motor.fullLoad, locked, 1e-12)
    near(motor.breakdown / motor.fullLoad, breakdown, 1e-12)
  })

  it('straight between rows, held beyond them', () => {
    const rows = [
      [1, 3],
      [2, 2],
    ] as const
    expect([0.5, 1, 1.25, 2, 9].map((hp) => along(rows, hp))).toEqual([3, 3, 2.75, 2, 2])
  })
})

describe('EASA handbook (NEMA MG 10, Table 2-1): design B of all sizes', () => {
  const all = ([2, 4, 6, 8] as const).flatMap((poles) =>
    [1 / 4, 1 / 3, 1 / 2, 3 / 4, 1, 1.5, 2, 3, 5, 7.5, 10, 15, 20].map(
      (hp) => [poles, hp, three(`${hp} hp`, `${FULL_LOAD_RPM.rows[60][poles]} rpm`)] as const,
    ),
  )
  const within = (share: number, [low, high]: readonly [number, number]) => {
    expect(share).toBeGreaterThanOrEqual(low)
    expect(share).toBeLessThanOrEqual(high * (1 + 1e-12))
  }
  it.each(all)('%d poles, %d hp: locked 70–275 %, breakdown 175–300 %', (poles, _, motor) => {
    expect(motor.poles).toBe(poles)
    within(motor.locked / motor.fullLoad, DESIGN_B.locked)
    within(motor.breakdown / motor.fullLoad, DESIGN_B.breakdown)
  })
  it('ranges as the handbook prints them', () => {
    expect([DESIGN_B.locked, DESIGN_B.breakdown, DESIGN_B.slip]).toEqual([[0.7, 2.75], [1.75, 3], 0.05])
  })
  it('pull-up 65–190 % (the same table on another public page, source incomplete), never over locked rotor', () => {
    for (const poles of [2, 4, 6, 8] as const) {
      expect(PULL_UP.rows[poles].map(([hp]) => hp)).toEqual(LOCKED_ROTOR.rows[poles].map(([hp]) => hp))
      expect(BREAKDOWN.rows[poles].map(([hp]) => hp)).toEqual(LOCKED_ROTOR.rows[poles].map(([hp]) => hp))
      PULL_UP.rows[poles].forEach(([, value], n) => {
        within(value, [0.65, 1.9])
        expect(value).toBeLessThan(LOCKED_ROTOR.rows[poles][n][1])
      })
    }
  })
  it('larger motors have less in hand, as its footnote says', () => {
    for (const table of [LOCKED_ROTOR, BREAKDOWN, PULL_UP])
      for (const rows of Object.values(table.rows))
        rows.slice(1).forEach(([, value], n) => {
          expect(value).toBeLessThanOrEqual(rows[n][1])
        })
  })
})

describe('single-phase, NEMA MG 1 12.32, from memory', () => {
  it('1/3 hp 1725 rpm: breakdown 31.5 oz·ft, locked 57 oz·ft', () => {
    const motor = single('1/3 hp')
    near(toUnit(motor.breakdown, 'lbf·ft') * 16, 31.5, 1e-12)
    near(toUnit(motor.locked, 'lbf·ft') * 16, 57, 1e-12)
  })
  it('5 hp 1740 rpm: breakdown 19 lbf·ft, locked 33', () => {
    const motor = single('5 hp', '1740 rpm')
    near(toUnit(motor.breakdown, 'lbf·ft'), 19, 1e-12)
    near(toUnit(motor.locked, 'lbf·ft'), 33, 1e-12)
  })
  it('a range begins where that of the next smaller horsepower ends: torque grows with every row', () => {
    for (const rows of Object.values(SINGLE_PHASE_BREAKDOWN.rows))
      rows.slice(1).forEach(([hp, torque], n) => {
        expect(hp).toBeGreaterThan(rows[n][0])
        expect(torque).toBeGreaterThan(rows[n][1])
      })
  })
  it('a small three-phase motor has 140 % of it (12.37, from memory)', () => {
    near(three('3/4 hp').breakdown, 1.4 * single('3/4 hp').breakdown, 1e-12)
  })
  it('half way between two rows it lies between them, and on 50 Hz by the speed higher', () => {
    expect(single('0.6 hp').breakdown).toBeGreaterThan(single('1/2 hp').breakdown)
    expect(single('0.6 hp').breakdown).toBeLessThan(single('3/4 hp').breakdown)
    near(single('1/2 hp', '1425 rpm').breakdown / single('1/2 hp').breakdown, 60 / 50, 1e-12)
  })
})

it('service factor: 1.35 at 1/3 hp, 1.25 at 3/4, 1.15 from 1 hp at four poles (a public table of NEMA MG 1 12.51); as printed; 1 on 50 Hz', () => {
  expect(['1/3 hp', '3/4 hp', '1 hp', '5 hp'].map((power) => single(power).serviceFactor)).toEqual([
    1.35, 1.25, 1.15, 1.15,
  ])
  expect(induction({ power: '1 hp', speed: '1725 rpm', serviceFactor: '1' }).serviceFactor).toBe(1)
  expect(single('3/4 hp', '1425 rpm').serviceFactor).toBe(1)
})

describe('poles from the full-load speed (synchronous speed 120 f / poles; plate speeds are common practice)', () => {
  const plates = ([60, 50] as const).flatMap((hertz) =>
    ([2, 4, 6, 8] as const).map((poles) => [FULL_LOAD_RPM.rows[hertz][poles], hertz, poles] as const),
  )
  it.each([
    ...plates,
    [1140, 60, 6],
    [3520, 60, 2],
    [1750, 60, 4],
    [1050, 60, 6],
    // 12 % under the field of six poles on 50 Hz, 2 % under that of eight on 60 Hz.
    [880, 60, 8],
    [1490, 50, 4],
    [2900, 50, 2],
  ] as const)('%d rpm: %d Hz, %d poles', (speed, hertz, poles) => {
    const field = turningField(rpm(speed))!
    expect(field).toMatchObject({ hertz, poles })
    near(field.synchronous, rpm((120 * hertz) / poles), 1e-12)
  })
  it.each([1800, 1500, 1000, 2300, 4000, 500])(
    '%d rpm is no speed of a loaded motor of the mains',
    (speed) => {
      expect(turningField(rpm(speed))).toBeNull()
    },
  )
  it('mains that are given are taken', () => {
    expect(turningField(rpm(1725), [50])).toBeNull()
    expect(turningField(rpm(1425), [60])).toBeNull()
  })
})
