// The trace as a table: units in the header, a number in every cell, and the trace's own values.
import { expect, it } from 'vitest'
import { csvLines } from '../../../sim/say/csv.ts'
import { job, traceOf } from '../../jobs.ts'

const given = job({ 'duty.repeatFor': '10 min' })
const trace = traceOf(given)
const [header, ...rows] = [...csvLines(given, trace)].join('').trimEnd().split('\n')
const names = header.split(',')
const cells = rows.map((row) => row.split(','))
const column = (name: string) => cells.map((row) => Number(row[names.indexOf(name)]))

it('names each column with its unit, each once', () => {
  expect(names[0]).toBe('time (s)')
  for (const name of names) expect(name).toMatch(/^[a-z ]+ \((s|rpm|A|V|N·m|°C|J)\)$/)
  expect(new Set(names).size).toBe(names.length)
})

it('has a row for each row of the trace, and a number in every cell', () => {
  expect(rows).toHaveLength(trace.time.length)
  for (const row of cells) {
    expect(row).toHaveLength(names.length)
    for (const cell of row) expect(cell).toMatch(/^-?\d+(\.\d+)?(e[+-]\d+)?$/)
  }
})

it('says what the trace says, speeds at the spindle divided by the ratio of 4', () => {
  const rpm = 30 / Math.PI
  const { columns, time } = trace
  for (const [name, wanted] of [
    ['time (s)', time],
    ['spindle speed (rpm)', columns.speed.map((w) => (w * rpm) / 4)],
    ['motor speed (rpm)', columns.speed.map((w) => w * rpm)],
    ['asked spindle speed (rpm)', columns.asked.map((w) => (w * rpm) / 4)],
    ['motor current (A)', columns.current],
    ['winding (°C)', columns.windingC],
    ['cutoff switch (°C)', columns.switchC],
    ['work of the cut so far (J)', columns.work],
  ] as const)
    column(name).forEach((value, row) => {
      // Six digits of a reading, a tenth of a millisecond of a time.
      const most = name === 'time (s)' ? 5.1e-5 : 5.1e-6 * Math.abs(wanted[row])
      if (!(Math.abs(value - wanted[row]) <= most)) throw new Error(`${name}, row ${row}: ${value}`)
    })
  expect(column('spindle speed (rpm)').some((value) => value > 300)).toBe(true)
})
