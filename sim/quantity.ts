// Text ⇄ SI for every dimension: what the rest of the project knows of units. Factors live in quantity/factors.ts.
import { type Dimension, inUnit, toSi, type Unit } from './quantity/unit.ts'
import { table } from './quantity/units.ts'

export { type Parsed, parseQuantity } from './quantity/parse.ts'
export type { Dimension } from './quantity/unit.ts'

const dimensions = Object.keys(table) as Dimension[]

// A plain share and a plain number both have the symbol '': the later one, number, is kept.
const known = new Map<string, { unit: Unit; dimension: Dimension }>(
  dimensions.flatMap((dimension) => table[dimension].units.map((unit) => [unit.symbol, { unit, dimension }])),
)

const lookUp = (symbol: string) => {
  const found = known.get(symbol)
  if (!found) throw new Error(`“${symbol}” is not the symbol of a unit`)
  return found
}

/** SI (temperatures °C, shares of 1) → the number in a unit, given by its symbol. */
export const toUnit = (value: number, unit: string): number => inUnit(value, lookUp(unit).unit)

/** The number in a unit, given by its symbol → SI (temperatures °C, shares of 1). */
export const fromUnit = (value: number, unit: string): number => toSi(value, lookUp(unit).unit)

/** Symbols of the units of a dimension, the SI one first; '' is the unit of plain shares and numbers. */
export const unitsOf = (dimension: Dimension): readonly string[] =>
  table[dimension].units.map(({ symbol }) => symbol)

/** The dimension a unit symbol belongs to; 'number' for ''. */
export const dimensionOf = (unit: string): Dimension => lookUp(unit).dimension

/**
 * SI → the shortest text in that unit that parses back to the same number, or to its neighbour where no text does.
 * A value that is not finite in the unit is written as "?".
 */
export function writeQuantity(value: number, unit: string): string {
  const exact = toUnit(value, unit)
  if (!Number.isFinite(exact)) return `? ${unit}`.trim()
  let best = exact
  let error = Number.POSITIVE_INFINITY
  for (let digits = 1; digits <= 17 && error > 0; digits++) {
    const candidate = Number(exact.toPrecision(digits))
    const off = Math.abs(fromUnit(candidate, unit) - value)
    if (off < error) [best, error] = [candidate, off]
  }
  return `${best} ${unit}`.trim()
}
