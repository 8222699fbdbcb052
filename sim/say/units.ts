// Which unit a dimension is shown in, by the reader's choice of units.
import type { Dimension } from '../quantity.ts'

/** Inches, pounds and horsepower or metric; and °C or °F, chosen apart, since switches are printed in °C. */
export interface Units {
  readonly system: 'us' | 'metric'
  readonly temperature: '°C' | '°F'
}

const METRIC: Record<Dimension, string> = {
  time: 's',
  'angular speed': 'rpm',
  'angular acceleration': 'rpm/s',
  torque: 'N·m',
  power: 'W',
  energy: 'Wh',
  length: 'mm',
  mass: 'kg',
  force: 'N',
  speed: 'm/s',
  feed: 'mm/min',
  voltage: 'V',
  current: 'A',
  resistance: 'Ω',
  inductance: 'mH',
  capacitance: 'µF',
  'motor constant': 'V/krpm',
  temperature: '°C',
  'temperature difference': 'K',
  share: '%',
  number: '',
  inertia: 'kg·m²',
  'viscous friction': 'N·m·s/rad',
  'heat capacity': 'J/K',
  'thermal conductance': 'W/K',
}

const US: Partial<Record<Dimension, string>> = {
  torque: 'lbf·ft',
  power: 'hp',
  length: 'in',
  mass: 'lb',
  force: 'lbf',
  speed: 'ft/min',
  feed: 'in/min',
  inertia: 'lb·ft²',
}

/** Symbol of the unit to show a dimension in; '' for plain numbers. */
export function unitFor(dimension: Dimension, units: Units): string {
  if (dimension === 'temperature') return units.temperature
  return (units.system === 'us' ? US[dimension] : undefined) ?? METRIC[dimension]
}
