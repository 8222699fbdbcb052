// The cells of a log: numbers with point or comma, with or without their unit; times as numbers or by the clock.
import { tidy } from '../quantity/spelling.ts'

/** A number as it stands in a cell, and the text behind it: "23,4 °C" is 23.4 and "°C". */
export interface Cell {
  readonly value: number
  readonly unit: string
}

/** The number in a cell, or null where there is none. `comma`: a lone comma marks decimals, a lone point thousands. */
export function numberIn(cell: string, comma: boolean): Cell | null {
  const [, sign, run, power = '', unit = ''] =
    /^([+-]?) ?(\d[\d.,]*|[.,]\d+)(e[+-]?\d+)? ?(.*)$/i.exec(
      tidy(cell).replace(/(\d) (?=\d{3}(?!\d))/g, '$1'),
    ) ?? []
  if (run === undefined || /\d/.test(unit)) return null
  const value = Number(sign + plain(run, comma) + power)
  return Number.isFinite(value) ? { value, unit } : null
}

/** A run of digits with thousands marks taken out and a point for the decimals. */
function plain(run: string, comma: boolean): string {
  const last = Math.max(run.lastIndexOf(','), run.lastIndexOf('.'))
  if (last < 0) return run
  const mark = run[last]
  const other = mark === ',' ? '.' : ','
  const alone = run.indexOf(mark) === last
  const inThrees = /^\d{1,3}([.,]\d{3})+$/.test(run)
  const marksThousands = !alone || (!run.includes(other) && inThrees && (mark === ',') !== comma)
  if (marksThousands) return run.replaceAll(mark, '').replace(other, '.')
  return run.replaceAll(other, '').replace(mark, '.')
}

/** What a cell shows of the decimal mark: a comma that cannot mark thousands, a point that cannot, or neither. */
export function markIn(cell: string): 'comma' | 'point' | null {
  const [, whole, mark, part] = /^\s*[+\-−]?(\d*)([.,])(\d+)(?![\d.,])/.exec(cell) ?? []
  if (mark === undefined || (part.length === 3 && /^[1-9]\d{0,2}$/.test(whole))) return null
  return mark === ',' ? 'comma' : 'point'
}

/** A time by the clock, in its parts: 14:05 is [14, 5, null]; afternoon hours already added. */
export type Clock = readonly [number, number, number | null]

/** The clock time a cell ends with, a date before it left aside; null where there is none. */
export function clockIn(cell: string): Clock | null {
  const found =
    /(?:^|[^\d:])(\d{1,4}):([0-5]\d)(?::([0-5]\d(?:[.,]\d+)?))?\s*(?:([ap])\.?m\.?)?(?:Z|[+-]\d\d:?\d\d)?\s*$/i.exec(
      cell,
    )
  if (!found) return null
  const [, first, second, third, half] = found
  const hour = Number(first)
  const turned = half ? (hour % 12) + (half.toLowerCase() === 'p' ? 12 : 0) : hour
  return [turned, Number(second), third === undefined ? null : Number(third.replace(',', '.'))]
}
