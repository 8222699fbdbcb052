// The words of a comparison: the sentence, what is stronger, the plates, the table.
import { describe, expect, it } from 'vitest'
import type { Comparison, Met } from '../../../sim/rival/compare.ts'
import { against, compare } from '../../../sim/rival/compare.ts'
import { fromUnit } from '../../../sim/quantity.ts'
import { compareSentence, dutyWords, platesWords, verdictWords } from '../../../sim/say/compare.ts'
import { compareReport } from '../../../sim/say/compareReport.ts'
import { compareRows } from '../../../sim/say/compareRows.ts'
import { job } from '../../jobs.ts'
import { oldMotor } from '../rival/old.ts'
import { METRIC, US } from './units.ts'

const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ')
const lbft = (value: number) => fromUnit(value, 'lbf·ft')
const rpm = (value: number) => fromUnit(value, 'rpm')
const mill = job({})
const rival = oldMotor({ power: '3/4 hp', speed: '1725 rpm', steps: [{ spindle: '350 rpm' }] })

/** A comparison with chosen torques, lbf·ft: words are tested, not motors. */
function made(changes: { speed?: number; top?: number } = {}): Comparison {
  const old = { allDay: 10.7, minutes: 13, seconds: 26, start: 15.3, duty: 10.7 }
  const motor = { allDay: 1.3, minutes: 13.1, seconds: 31.2, start: 33, duty: 5.9 }
  const inSi = <T extends Record<string, number>>(torques: T) =>
    Object.fromEntries(Object.entries(torques).map(([name, value]) => [name, lbft(value)])) as T
  const met: Met = {
    speed: rpm(changes.speed ?? 350),
    step: rival.steps[0],
    old: inSi(old),
    motor: { ...inSi(motor), limit: 'current' },
    allDay: [
      { cooling: 'shaft fan', torque: lbft(5.7) },
      { cooling: 'blower', torque: lbft(7) },
      { cooling: 'none', torque: lbft(1.3) },
    ],
    against: {
      allDay: against(motor.allDay, old.allDay),
      minutes: against(motor.minutes, old.minutes),
      seconds: against(motor.seconds, old.seconds),
      start: against(motor.start, old.start),
    },
  }
  const asked = { name: 'milling', torque: lbft(5.9), speed: rpm(350), seconds: 300, cycle: 480 }
  return { rival, met: [met], plates: null, asked, top: rpm(changes.top ?? 1100) }
}

describe('the sentence', () => {
  it('says both at the spindle', () => {
    expect(plain(compareSentence(made(), US))).toBe(
      'At 350 rpm the old ¾ hp motor held 10.7 lbf·ft all day. This one holds 5.7 with the fan and 1.3 without.',
    )
    expect(plain(compareSentence(made(), METRIC))).toBe(
      'At 350 rpm the old 559 W motor held 14.5 N·m all day. This one holds 7.7 with the fan and 1.8 without.',
    )
  })
  it('or that the speed is out of reach', () => {
    expect(plain(compareSentence(made({ top: 300 }), US))).toBe(
      'At 350 rpm the old ¾ hp motor held 10.7 lbf·ft all day. This one does not reach 350 rpm through its belt: its top is 300 rpm.',
    )
  })
  it('at the step nearest to what the job asks', () => {
    const slow = made().met[0]
    const two: Comparison = { ...made(), met: [{ ...slow, speed: rpm(900) }, slow] }
    expect(plain(compareSentence(two, US))).toMatch(/^At 350 rpm/)
  })
  it('and the duty beside it', () => {
    expect(plain(dutyWords(made(), US))).toBe('Milling averages 5.9 lbf·ft, 5 min in 8 min.')
    expect(dutyWords({ ...made(), asked: null }, US)).toBe('')
  })
})

it('stronger, weaker and as strong, by how much', () => {
  const { met, top } = made()
  expect(plain(verdictWords(met[0], mill, top, US))).toBe(
    'At 350 rpm this motor, without a fan, is stronger for seconds (by 20 %) and from standstill (2.2 times as much); ' +
      'weaker all day (by 88 %); as strong for minutes.',
  )
})

it('the plates, geared to the same speed', () => {
  const bigger = job({ 'plate.power': '1 hp', 'plate.speed': '6000 rpm' })
  const third = oldMotor({ power: '1/3 hp', speed: '1725 rpm' })
  // JOB (f): 1.19 and 1.38 N·m; geared 3.48:1, three times the third of a horsepower.
  expect(plain(platesWords(compare(bigger, third), bigger, METRIC))).toBe(
    'By the plates this motor’s 746 W at 6 000 rpm is 1.2 N·m at its shaft, the old one’s 249 W at 1 725 rpm is 1.4 N·m. ' +
      'Geared 3.5 : 1 to the same 1 725 rpm, this one comes to 4.1 N·m.',
  )
})

it('the table: a row for each time, with every cooling', () => {
  const rows = compareRows(made().met[0], mill, rival, US)
  expect(rows.map(({ label, old, motor }) => plain(`${label}|${old}|${motor}`))).toEqual([
    'All day|10.7|1.3',
    '  with the fan||5.7',
    '  with a blower||7.0',
    'For this duty|10.7|5.9',
    '5 min|13.0|13.1',
    '10 s|26.0|31.2',
    'Standing|15.3|33.0',
  ])
})

it('the report says where the old motor’s torques are from, and never compares horsepower', () => {
  const report = plain(compareReport('Mill', made(), mill, US))
  expect(report).toMatch(/Standing: NEMA MG 1, 12\.32\.2, from memory/)
  expect(report).toMatch(/at least this/)
  expect(report).toMatch(/The machine’s own drag, .* is taken off both/)
})
