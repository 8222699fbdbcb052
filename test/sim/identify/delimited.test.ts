// Cells of delimited text against the reader of d3-dsv, on seeded tables, and what RFC 4180 says of quotes.
import { dsvFormat } from 'd3'
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { rowsIn } from '../../../sim/identify/delimited.ts'

const DELIMITERS = [';', '\t', ','] as const

it('reads plain and quoted cells as RFC 4180 has them', () => {
  expect(rowsIn('a,"b, ""c""\r\nd",\r\n"",e', ',')).toEqual([
    ['a', 'b, "c"\r\nd', ''],
    ['', 'e'],
  ])
  expect(rowsIn('a\n\nb\n', ',')).toEqual([['a'], [''], ['b']])
  expect(rowsIn('a;"b', ';')).toEqual([['a', 'b']])
})

it('reads what d3 reads', () => {
  const letters = fc.stringMatching(/^[a-c0-9 .;,\t"\r\n°]{0,6}$/)
  const quoted = letters.map((text) => `"${text.replaceAll('"', '""')}"`)
  const plain = fc.stringMatching(/^[a-c0-9 .°]{0,6}$/)
  const table = (delimiter: string) =>
    fc
      .array(fc.array(fc.oneof(quoted, plain), { minLength: 1, maxLength: 4 }), {
        minLength: 1,
        maxLength: 5,
      })
      .chain((rows) =>
        fc
          .tuple(fc.constantFrom('\n', '\r\n', '\r'), fc.boolean())
          .map(([end, last]) => rows.map((row) => row.join(delimiter)).join(end) + (last ? end : '')),
      )
      .filter((text) => text.trim() !== '')
  for (const delimiter of DELIMITERS)
    fc.assert(
      fc.property(table(delimiter), (text) => {
        expect(rowsIn(text, delimiter)).toEqual(dsvFormat(delimiter).parseRows(text))
      }),
      { seed: 1, numRuns: 1000 },
    )
})

it('reads a megabyte in one quote', () => {
  const long = `${'a""'.repeat(300_000)}`
  expect(rowsIn(`"${long}",b`, ',')).toEqual([[long.replaceAll('""', '"'), 'b']])
})
