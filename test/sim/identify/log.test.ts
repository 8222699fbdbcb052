// Warm-up logs as people keep them: names, units, commas, clocks, gaps; and what is refused, with its reason.
import { describe, expect, it } from 'vitest'
import { type Log, readLog } from '../../../sim/identify/log.ts'
import { kindOf } from '../../../sim/identify/logHeader.ts'

/** The log of a text. Throws where it is refused. */
function logOf(text: string): Log & { notes: readonly string[] } {
  const read = readLog(text)
  if (!read.ok) throw new Error(`${read.wrong} ${read.wouldDo}`)
  return { ...read.log, notes: read.notes }
}
const refusal = (text: string) => {
  const read = readLog(text)
  if (read.ok) throw new Error('was read')
  return read
}
const rows = (lines: readonly string[]) => lines.join('\n')
const SIX = ['0,20,8,1500', '1,22,8,1500', '2,24,8,1500', '3,26,8,1500', '4,28,8,1500', '5,30,8,1500']
const rpm = (value: number) => (value * Math.PI) / 30

describe('names of columns', () => {
  it.each([
    ['Time', 'time', null],
    ['t (s)', 'time', 's'],
    ['t_min', 'time', 'min'],
    ['minutes', 'time', 'min'],
    ['min', 'time', 'min'],
    ['elapsed time hh:mm:ss', 'time', null],
    ['Zeit [min]', 'time', 'min'],
    ['can', 'frame', null],
    ['case temp (F)', 'frame', '°F'],
    ['frame', 'frame', null],
    ['body', 'frame', null],
    ['housing temp', 'frame', null],
    ['T_can [°C]', 'frame', '°C'],
    ['T (°C)', 'frame', '°C'],
    ['°F', 'frame', '°F'],
    ['temp2', 'frame', null],
    ['ohms', 'ohms', 'Ω'],
    ['R', 'ohms', null],
    ['R (mΩ)', 'ohms', 'mΩ'],
    ['winding', 'ohms', null],
    ['winding temp °C', 'winding', '°C'],
    ['armature resistance', 'ohms', null],
    ['ambient °C', 'air', '°C'],
    ['amps', 'amps', 'A'],
    ['A', 'amps', 'A'],
    ['motor current (mA)', 'amps', 'mA'],
    ['rpm', 'speed', 'rpm'],
    ['Motor speed, rad/s', 'speed', 'rad/s'],
    ['volts', 'volts', 'V'],
    ['U (V)', 'volts', 'V'],
  ])('%s', (header, kind, unit) => {
    expect(kindOf(header)).toEqual({ kind, unit })
  })

  it.each(['spindle rpm', 'date', 'notes', 'the quick brown fox', ''])('“%s” is none', (header) => {
    expect(kindOf(header)).toBeNull()
  })

  it('of two alike the first is used, and the other told', () => {
    const log = logOf(
      rows(['min,can,case,amps', ...SIX.map((row) => row.replace(/,1500/, ''))]).replaceAll(',8', ',99,8'),
    )
    expect(log.frameC[0]).toBe(20)
    expect(log.notes.join()).toContain('case')
    expect(log.place).toBe('can')
  })

  it('a second “T” beside the time is a temperature', () => {
    expect([...logOf(rows(['t,T,I,n', ...SIX])).frameC]).toEqual([20, 22, 24, 26, 28, 30])
  })
})

describe('numbers and units', () => {
  it('commas, °F, amps, rpm to SI', () => {
    const log = logOf(rows(['minutes,can (°F),amps,rpm', ...SIX.map((row) => row.replace(',20,', ',68,'))]))
    expect(log.time[5]).toBe(300)
    expect(log.frameC[0]).toBeCloseTo(20, 12)
    expect(log.amps[0]).toBe(8)
    expect(log.speed[0]).toBeCloseTo(rpm(1500), 12)
    expect(log.volts.every(Number.isNaN)).toBe(true)
  })

  it('semicolons and decimal commas, thousands with a point', () => {
    const log = logOf(
      rows([
        'Zeit (min);Gehäuse °C;Strom (A);Drehzahl',
        ...[0, 1, 2, 3, 4, 5].map((n) => `${n},5;2${n},25;8,1;1.500`),
      ]),
    )
    expect(log.frameC[3]).toBe(23.25)
    expect(log.amps[0]).toBe(8.1)
    expect(log.speed[0]).toBeCloseTo(rpm(1500), 12)
    expect(log.time[1]).toBe(60)
  })

  it('three digits behind a comma follow the rest of the file', () => {
    const ohms = (cells: string) =>
      logOf(
        rows([
          `min;${cells.split(';').length > 1 ? 'ohms;amps' : 'ohms'}`,
          ...[0, 1, 2, 3, 4, 5].map((n) => `${n};${cells}`),
        ]),
      ).ohms[0]
    expect(ohms('1,234')).toBe(1.234)
    expect(ohms('1,234;8.5')).toBe(1234)
  })

  it('quoted cells with decimal commas between commas', () => {
    const log = logOf(rows(['min,can,amps', ...[0, 1, 2, 3, 4, 5].map((n) => `${n},"2${n},5","8,25"`)]))
    expect(log.frameC[2]).toBe(22.5)
    expect(log.amps[2]).toBe(8.25)
  })

  it('tabs, a line of units, lines above the header, units in the cells', () => {
    const log = logOf(
      rows([
        '# log of 3 May, my motor',
        'shop cool',
        'time\tframe\tamps\trpm',
        'min\t°F\tA\trpm',
        ...[0, 1, 2, 3, 4, 5].map((n) => `${n}\t${n === 0 ? '20 °C' : 68 + n}\t8 A\t1,500`),
      ]),
    )
    expect(log.frameC[0]).toBe(20)
    expect(log.frameC[1]).toBeCloseTo(20 + 5 / 9, 12)
    expect(log.speed[0]).toBeCloseTo(rpm(1500), 12)
  })

  it('time without a unit is read as the unit that makes a warm-up of it, and told', () => {
    const log = (times: number[]) => logOf(rows(['time,can', ...times.map((t, n) => `${t},${20 + n}`)]))
    expect(log([0, 300, 600, 900, 1200, 1500]).time[1]).toBe(300)
    expect(log([0, 5, 10, 15, 20, 25]).time[1]).toBe(300)
    // Hours, as J. B. Gupta's Ex 46 has them.
    expect(log([0.2, 0.4, 0.6, 1, 1.5, 2, 3]).time[1]).toBeCloseTo(720, 9)
    expect(log([0, 5, 10, 15, 20, 25]).notes.join()).toContain('read as min')
  })
})

describe('clocks', () => {
  const times = (cells: string[], header = 'time') =>
    logOf(rows([`${header},can °C`, ...cells.map((cell, n) => `${cell},${20 + n}`)])).time

  it.each([
    ['minutes and seconds', ['0:00', '0:30', '1:00', '1:30', '2:00', '61:30'], 3690],
    ['hours and minutes of the day', ['9:55', '10:00', '10:05', '10:10', '10:15', '11:00'], 3900],
    [
      'hours, minutes, seconds',
      ['0:00:00', '0:00:30', '0:01', '0:01:30', '0:02:00', '1:00:05'].with(2, '0:01:00'),
      3605,
    ],
    ['past midnight', ['23:50:00', '23:55:00', '0:00:00', '0:05:00', '0:10:00', '0:15:00'], 1500],
    ['afternoon', ['11:58 AM', '12:01 PM', '12:10 PM', '12:30 PM', '12:59 PM', '1:02 PM'], 3840],
    [
      'with the date',
      [
        '2024-05-01 09:00:00',
        '2024-05-01 09:01:00',
        '2024-05-01T09:02:00Z',
        '2024-05-01 09:03:00',
        '2024-05-01 09:04:00',
        '2024-05-01 09:05:00.5',
      ],
      300.5,
    ],
  ])('%s', (_, cells, last) => {
    expect(times(cells).at(-1)).toBeCloseTo(last, 9)
  })

  it('the header may say which', () => {
    expect(times(['1:00', '1:10', '1:20', '1:30', '1:40', '1:50'], 'time hh:mm').at(-1)).toBe(3000)
    expect(times(['10:00', '10:10', '10:20', '10:30', '10:40', '10:50'], 'time mm:ss').at(-1)).toBe(50)
  })
})

describe('gaps', () => {
  it('rows without time, amps or temperature are left out and counted; ohms may be blank', () => {
    const log = logOf(
      rows([
        'min,can,amps,ohms',
        '0,20,8,1.1',
        '1,,8,',
        '2,24,,',
        ',26,8,',
        '4,28,8,',
        '5,30,8,',
        '6,-,8,',
        '7,32,8,',
        '8,33,8,',
        '9,34,8,1.3',
      ]),
    )
    expect(log.rows).toBe(6)
    expect(log.notes.join()).toContain('4 rows with gaps')
    expect([...log.time]).toEqual([0, 240, 300, 420, 480, 540])
    expect(log.ohms[0]).toBe(1.1)
    expect(log.ohms[1]).toBeNaN()
  })

  it('blank amps before the first and after the last, and at 0 rpm, are nothing', () => {
    const log = logOf(
      rows([
        'min,can,amps,rpm',
        '0,20,,',
        '1,22,8,1500',
        '2,24,8,1500',
        '3,24,,0',
        '4,26,8,1500',
        '5,25,,',
        '6,24,,',
        '7,23,,',
      ]),
    )
    expect([...log.amps]).toEqual([0, 8, 8, 0, 8, 0, 0, 0])
    expect(log.notes.filter((note) => note.startsWith('Amps are blank'))).toHaveLength(2)
  })

  it('a time that goes back is told and left out; a muddle is refused', () => {
    const log = logOf(rows(['min,can,amps,rpm', ...SIX, '2,25,8,1500', '6,31,8,1500']))
    expect([...log.time]).toEqual([0, 60, 120, 180, 240, 300, 360])
    expect(log.notes.join()).toContain('back at reading 7')
    expect(refusal(rows(['min,can,amps,rpm', ...SIX, ...SIX])).wrong).toContain('back and forth')
  })
})

describe('refused, with a reason', () => {
  it.each([
    ['too much: 50 MB', 'time,can\n'.padEnd(50_000_000, '0,20\n'), '50 million'],
    ['a spreadsheet’s own file', 'PK\u0003\u0004\u0014\u0000\u0006', 'binary'],
    ['bytes', `time,can\n${'\u0000\u0001\u0002'.repeat(50)}`, 'binary'],
    ['bytes read as text', '\ufffd\ufffd\ufffd\u0010', 'binary'],
    ['nothing', ' \n', 'empty'],
    ['no header', rows(SIX), 'names its columns'],
    ['no time', rows(['can,amps', ...SIX.map((row) => row.slice(2, 6))]), 'time'],
    ['no temperature', rows(['min,amps', ...SIX.map((row) => row.slice(0, 3))]), 'neither can'],
    ['too few rows', rows(['min,can,amps,rpm', ...SIX.slice(0, 2)]), '2 usable rows'],
  ])('%s', (_, text, reason) => {
    const { wrong, wouldDo } = refusal(text)
    expect(wrong).toContain(reason)
    expect(wouldDo).not.toBe('')
  })
})
