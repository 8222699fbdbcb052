// Every unit is read however people spell it.
import { describe, expect, it } from 'vitest'
import { type Dimension, fromUnit, unitsOf } from '../../../sim/quantity.ts'
import { table } from '../../../sim/quantity/units.ts'
import { read } from './asked.ts'

const dimensions = Object.keys(table) as Dimension[]

/** Dimension → symbol → every way it is typed here. */
const spellings: Partial<Record<Dimension, Record<string, string>>> = {
  time: {
    s: 's|S|sec|secs|sec.|second|seconds',
    ms: 'ms|msec|milliseconds|Milliseconds',
    min: 'min|MIN|mins|min.|minute|minutes|m',
    h: 'h|H|hr|hrs|hour|hours',
    d: 'd|day|days',
  },
  'angular speed': {
    'rad/s': 'rad/s|rad / s|rad/sec|rad·s⁻¹|radians/second',
    rpm: 'rpm|RPM|r.p.m.|rev/min|r/min|revs/min|1/min|min-1|min⁻¹|U/min|tr/min|revolutions/minute',
  },
  'angular acceleration': {
    'rad/s²': 'rad/s²|rad/s2|rad/s^2|rad/s/s',
    'rpm/s': 'rpm/s|RPM/sec|rpm/second',
  },
  torque: {
    N·m: 'N·m|Nm|N-m|N m|N*m|N.m|N⋅m|N×m|nm|NM|newton-metres|newton meters',
    lbf·ft:
      'lbf·ft|lbf ft|lbf-ft|ft-lbf|ft lb|ft·lb|ft-lb|ft-lbs|ft.lb.|lb-ft|lb·ft|lb ft|FT-LB|foot-pounds|pound-feet',
    lbf·in: 'lbf·in|in-lb|in-lbs|in·lbf|lb-in|lb in.|inch-pounds|pound inches',
    ozf·in: 'ozf·in|oz-in|oz·in|in-oz|OZ-IN|ounce-inches',
    kgf·m: 'kgf·m|kgf m|kg-m|kg·m|kgm|kpm|mkg',
  },
  power: {
    W: 'W|w|watt|watts|Watts',
    kW: 'kW|kw|KW|Kw|kilowatts',
    hp: 'hp|HP|Hp|h.p.|horsepower|Horsepower|bhp',
    PS: 'PS|ps|CV|metric hp|hp (metric)',
  },
  energy: { J: 'J|joules|Ws', kJ: 'kJ|KJ', Wh: 'Wh|W·h|watt-hours', kWh: 'kWh|KWH|kW h' },
  length: {
    m: 'm|M|metre|meters',
    mm: 'mm|MM|millimetres',
    cm: 'cm|centimeters',
    in: `in|in.|IN|inch|inches|"|''|″|”|′′`,
    ft: "ft|ft.|FT|foot|feet|'|′|’",
  },
  mass: { kg: 'kg|KG|kgs|kilos|kilogrammes', g: 'g|gram|grams', lb: 'lb|lbs|LB|lbm|pounds', oz: 'oz|ounces' },
  force: { N: 'N|n|newtons', lbf: 'lbf|lb|lbs|lb-f|pounds', kgf: 'kgf|kp' },
  speed: {
    'm/s': 'm/s|m/sec',
    'm/min': 'm/min|metre/min|meters/min',
    'ft/min': 'ft/min|fpm|FPM|sfm|feet/minute',
    mph: 'mph|MPH|mi/h',
    'km/h': 'km/h|kph|km/hr',
  },
  feed: {
    'm/s': 'm/s|m/sec',
    'mm/min': 'mm/min|millimetres/minute',
    'in/min': 'in/min|ipm|inches/min',
    'm/min': 'm/min|metre/min',
    'mm/s': 'mm/s|mm/sec',
    'ft/min': 'ft/min|fpm',
  },
  voltage: {
    V: 'V|v|volt|volts|Volts|VDC|V DC|Vdc|V.D.C.|VAC',
    mV: 'mV|mv|millivolts|Millivolts|MILLIVOLTS',
  },
  current: { A: 'A|a|amp|amps|AMPS|ampere|A DC', mA: 'mA|ma|milliamps' },
  resistance: {
    Ω: 'Ω|\u2126|ω|ohm|ohms|Ohm|OHMS',
    mΩ: 'mΩ|m\u2126|mohm|milliohms|mOhm',
    kΩ: 'kΩ|KΩ|kohm|kilohms',
  },
  inductance: { H: 'H|henry|henries', mH: 'mH|mh|millihenries', µH: 'µH|\u03bcH|uH|UH|microhenries' },
  capacitance: { F: 'F|farads', µF: 'µF|\u03bcF|uF|UF|MFD|mfd|microfarads', mF: 'mF|millifarads' },
  'motor constant': {
    'V·s/rad': 'V·s/rad|Vs/rad|V-s/rad|V/(rad/s)|V s/rad|V·s',
    'N·m/A': 'N·m/A|Nm/A|N-m/A|Nm/Amp',
    'V/krpm': 'V/krpm|V/kRPM|V/1000 rpm|V/1000rpm|V/1000 r/min|V/1000 min⁻¹|mV/rpm',
    'ozf·in/A': 'ozf·in/A|oz-in/A|oz·in/amp',
    'rpm/V': 'rpm/V|RPM/V|rpm/volt',
  },
  temperature: {
    '°C': '°C|C|c|deg C|degC|º C|˚C|℃|celsius|degrees C|° C',
    '°F': '°F|F|f|deg F|degF|ºF|℉|fahrenheit|degrees F',
  },
  'temperature difference': { K: 'K|k|kelvins|°C|C|deg C|Δ°C', 'Δ°F': 'Δ°F|\u2206°F|°F|F|deg F' },
  share: { '%': '%|percent|per cent|pct' },
  inertia: {
    'kg·m²': 'kg·m²|kg m2|kg m^2|kg-m²|kgm²|kg*m^2',
    'g·cm²': 'g·cm²|gcm2|g cm^2|g-cm²',
    'kg·cm²': 'kg·cm²|kgcm2|kg cm^2|kg-cm²',
    'lb·ft²': 'lb·ft²|lb-ft2|lb ft^2|lbm·ft²|LB-FT²',
    'lb·in²': 'lb·in²|lb-in2|lb in^2',
  },
  'viscous friction': { 'N·m·s/rad': 'N·m·s/rad|Nms/rad|N m s/rad|Nm/(rad/s)|N·m·s' },
  'heat capacity': { 'J/K': 'J/K|J/°C|J/C', 'kJ/K': 'kJ/K|kJ/°C' },
  'thermal conductance': { 'W/K': 'W/K|W/°C|W/C|w/k' },
}

describe('units', () => {
  const cases = Object.entries(spellings).flatMap(([dimension, units]) =>
    Object.entries(units).flatMap(([symbol, words]) =>
      words.split('|').map((word) => [word, symbol, dimension as Dimension] as const),
    ),
  )

  it.each(cases)('12.5 %s is in %s', (word, symbol, dimension) => {
    const value = dimension.startsWith('temperature') ? expect.any(Number) : fromUnit(12.5, symbol)
    expect(read(`12.5 ${word}`, dimension)).toEqual([value, symbol])
    expect(read(`12.5${word.startsWith('1/') ? ' ' : ''}${word}`, dimension)).toEqual([value, symbol])
  })

  it('the list above has every symbol, and each is read as itself', () => {
    for (const dimension of dimensions)
      for (const symbol of unitsOf(dimension)) {
        expect(read(`1 ${symbol}`, dimension)).toEqual([expect.any(Number), symbol])
        if (symbol !== '') expect(Object.keys(spellings[dimension] ?? {})).toContain(symbol)
      }
  })

  it('every word of the table is read, in lower case and as capitals where no capital M misleads', () => {
    for (const dimension of dimensions)
      for (const unit of table[dimension].units)
        for (const word of unit.words) {
          const blank = /^\d/.test(word) ? ' ' : ''
          const typed = word === 'mf' ? 'mF' : word
          expect(read(`0.3${blank}${typed}`, dimension), word).toEqual([expect.any(Number), unit.symbol])
        }
  })

  it('no word belongs to two units of a dimension', () => {
    for (const dimension of dimensions) {
      const words = table[dimension].units.flatMap((unit) => unit.words)
      expect(words).toHaveLength(new Set(words).size)
    }
  })

  it('temperatures and differences keep their zero points apart', () => {
    expect(read('248 °F', 'temperature')).toEqual([120, '°F'])
    expect(read('-40 F', 'temperature')).toEqual([-40, '°F'])
    expect(read('9 °F', 'temperature difference')).toEqual([5, 'Δ°F'])
    expect(read('5 °C', 'temperature difference')).toEqual([5, 'K'])
  })

  it('m is a minute among times and a metre among lengths; lb a force among forces and a mass among masses', () => {
    expect(read('5 m', 'time')).toEqual([300, 'min'])
    expect(read('5 m', 'length')).toEqual([5, 'm'])
    expect(read('1 lb', 'force')).toEqual([fromUnit(1, 'lbf'), 'lbf'])
    expect(read('1 lb', 'mass')).toEqual([fromUnit(1, 'lb'), 'lb'])
  })
})
