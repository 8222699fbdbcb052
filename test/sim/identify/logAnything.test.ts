// Any text as a log: columns of one length with time running forward, or two sentences; never an exception.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readLog } from '../../../sim/identify/log.ts'

describe('any text', () => {
  const header = fc.constantFrom('time', 'min', 'can', '°F', 'amps', 'rpm', 'ohms', 'R', 't', 'x', '"', '')
  const cell = fc.oneof(
    fc.double({ noNaN: true }).map(String),
    fc.constantFrom('', '-', '1,5', '1.234,5', '12:30', '12:30:10 pm', '"', 'OL', '1e999', '−4'),
    fc.string({ maxLength: 6 }),
  )
  const mark = fc.constantFrom(',', ';', '\t')
  const joined = (by: string, table: readonly (readonly string[])[]) =>
    table.map((cells) => cells.join(by)).join('\n')
  const anything = fc
    .tuple(
      mark,
      fc.array(header, { maxLength: 5 }),
      fc.array(fc.array(cell, { maxLength: 6 }), { maxLength: 12 }),
    )
    .map(([by, top, body]) => joined(by, [top, ...body]))
  const reading = fc.oneof(
    { weight: 9, arbitrary: fc.integer({ min: 0, max: 200 }).map(String) },
    { weight: 1, arbitrary: cell },
  )
  const likely = fc
    .tuple(
      mark,
      fc.array(header, { maxLength: 3 }),
      fc.array(fc.array(reading, { minLength: 2, maxLength: 6 }), { minLength: 5, maxLength: 20 }),
    )
    .map(([by, top, body]) =>
      joined(by, [['min', 'can', 'amps', ...top], ...body.map((cells, n) => [String(n), ...cells])]),
    )

  it('gives columns of one length in which time runs forward, or two sentences', () => {
    let read = 0
    fc.assert(
      fc.property(fc.oneof(anything, likely, fc.string({ maxLength: 300 })), (text) => {
        const found = readLog(text)
        if (!found.ok) {
          expect(found.wrong).toMatch(/[.?]$/)
          expect(found.wouldDo).toMatch(/\.$/)
          return
        }
        read++
        const { log } = found
        expect(log.time[0]).toBe(0)
        for (const name of ['frameC', 'windingC', 'ohms', 'airC', 'amps', 'speed', 'volts'] as const)
          expect(log[name]).toHaveLength(log.rows)
        log.time.forEach((t, n) => {
          expect(Number.isFinite(t) && (n === 0 || t >= log.time[n - 1])).toBe(true)
        })
      }),
      { seed: 4711, numRuns: 3000 },
    )
    expect(read).toBeGreaterThan(500)
  })
})
