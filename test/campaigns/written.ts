// Quantities written out as the text of a job, in metric or in inch and pound units, by factors of our own.
import type { Scenario } from '../../sim/scenario.ts'

/** A quantity in SI (°C for temperatures, a fraction for shares). */
export interface Drawn {
  readonly si: number
  readonly of: keyof typeof METRIC
}
/** A job as written, with quantities in place of texts. */
export interface Tree {
  readonly [name: string]: string | number | Drawn | Tree | readonly Tree[] | undefined
}

/** How a unit is written, what one is in SI, and where its zero lies in SI. */
type Unit = readonly [symbol: string, size: number, zero?: number]

// Exact by definition (the international yard and pound of 1959; the standard fall of the 3rd CGPM, 1901).
const INCH = 0.0254
const FOOT = 12 * INCH
const POUND = 0.45359237
const POUND_FORCE = POUND * 9.80665
const RPM = (2 * Math.PI) / 60

const METRIC = {
  time: ['s', 1],
  'angular speed': ['rad/s', 1],
  'angular acceleration': ['rad/s²', 1],
  torque: ['N·m', 1],
  power: ['W', 1],
  length: ['mm', 1e-3],
  voltage: ['V', 1],
  current: ['A', 1],
  resistance: ['Ω', 1],
  inductance: ['H', 1],
  'motor constant': ['V·s/rad', 1],
  temperature: ['°C', 1],
  share: ['%', 1e-2],
  number: ['', 1],
  inertia: ['kg·m²', 1],
  'viscous friction': ['N·m·s/rad', 1],
  'heat capacity': ['J/K', 1],
  'thermal conductance': ['W/K', 1],
} as const satisfies Record<string, Unit>

/** What an American workshop writes; what it has no unit of its own for is written in a multiple. */
const INCH_POUND: Readonly<Record<keyof typeof METRIC, readonly Unit[]>> = {
  time: [
    ['min', 60],
    ['h', 3600],
    ['ms', 1e-3],
  ],
  'angular speed': [['rpm', RPM]],
  'angular acceleration': [['rpm/s', RPM]],
  torque: [
    ['lbf·ft', POUND_FORCE * FOOT],
    ['lbf·in', POUND_FORCE * INCH],
    ['ozf·in', (POUND_FORCE / 16) * INCH],
  ],
  power: [['hp', 550 * FOOT * POUND_FORCE]],
  length: [
    ['in', INCH],
    ['ft', FOOT],
  ],
  voltage: [['mV', 1e-3]],
  current: [['mA', 1e-3]],
  resistance: [
    ['mΩ', 1e-3],
    ['kΩ', 1e3],
  ],
  inductance: [
    ['mH', 1e-3],
    ['µH', 1e-6],
  ],
  'motor constant': [
    ['V/krpm', 1 / (1000 * RPM)],
    ['ozf·in/A', (POUND_FORCE / 16) * INCH],
    ['N·m/A', 1],
  ],
  temperature: [['°F', 5 / 9, -160 / 9]],
  share: [['', 1]],
  number: [['', 1]],
  inertia: [
    ['lb·ft²', POUND * FOOT ** 2],
    ['lb·in²', POUND * INCH ** 2],
  ],
  'viscous friction': [['N·m·s/rad', 1]],
  'heat capacity': [['kJ/K', 1e3]],
  'thermal conductance': [['W/K', 1]],
}

const isDrawn = (value: unknown): value is Drawn =>
  typeof value === 'object' && value !== null && 'si' in value && 'of' in value

function written(value: unknown, unitOf: (drawn: Drawn) => Unit): unknown {
  if (isDrawn(value)) {
    const [symbol, size, zero = 0] = unitOf(value)
    return `${(value.si - zero) / size} ${symbol}`.trim()
  }
  if (Array.isArray(value)) return value.map((each) => written(each, unitOf))
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(Object.entries(value).map(([name, each]) => [name, written(each, unitOf)]))
}

/** The scenario in metric units. */
export const metric = (tree: Tree): Scenario => written(tree, (drawn) => METRIC[drawn.of]) as Scenario

/** The same in inch and pound units, by turns where there are several. */
export function inchPound(tree: Tree): Scenario {
  let turn = 0
  return written(tree, (drawn) => {
    // More than the whole is only read with its sign.
    if (drawn.of === 'share' && drawn.si > 1) return METRIC.share
    const units = INCH_POUND[drawn.of]
    return units[turn++ % units.length]
  }) as Scenario
}
