// Every unit there is, with the words people type for it. Sources of the factors: factors.ts.
import {
  foot,
  g,
  horsepower,
  inch,
  metricHorsepower,
  mile,
  ounceForce,
  ounce,
  pound,
  poundForce,
} from './factors.ts'
import { type Dimension, type Entry, unit } from './unit.ts'
import { celsius, eitherWay, fahrenheit, inches, ounces, pounds } from './words.ts'

// Speeds in a straight line and feeds are both told so.
const perSecond = unit('m/s', 'm/s m/sec meters/second metres/second')
const perMinute = unit('m/min', 'm/min metre/min meter/min metres/min meters/min', { over: 60 })

/** Dimension → its name, examples and units. */
export const table: Readonly<Record<Dimension, Entry>> = {
  time: {
    name: 'a time',
    examples: ['90 s', '15 min'],
    units: [
      unit('s', 's sec secs second seconds'),
      unit('ms', 'ms msec millisecond milliseconds', { over: 1000 }),
      unit('min', 'min mins minute minutes m', { times: 60 }),
      unit('h', 'h hr hrs hour hours', { times: 3600 }),
      unit('d', 'd day days', { times: 86400 }),
    ],
  },
  'angular speed': {
    name: 'a turning speed',
    examples: ['4000 rpm', '420 rad/s'],
    units: [
      unit('rad/s', 'rad/s rad/sec rads1 radian/s radians/s radians/second'),
      unit('rpm', 'rpm rev/min revs/min r/min 1/min /min min1 u/min tr/min turns/min revolutions/minute', {
        times: Math.PI,
        over: 30,
      }),
    ],
  },
  'angular acceleration': {
    name: 'a rate of speeding up',
    examples: ['900 rpm/s', '95 rad/s²'],
    units: [
      unit('rad/s²', 'rad/s2 rad/sec2 rad/s/s radians/s2'),
      unit('rpm/s', 'rpm/s rpm/sec rpm/second rev/min/s r/min/s', { times: Math.PI, over: 30 }),
    ],
  },
  torque: {
    name: 'a torque',
    examples: ['4.2 lbf·ft', '5.7 N·m'],
    units: [
      unit('N·m', 'nm newtonmeter newtonmeters newtonmetre newtonmetres'),
      unit('lbf·ft', eitherWay(pounds, 'ft foot feet'), { times: poundForce * foot }),
      unit('lbf·in', eitherWay(pounds, inches), { times: poundForce * inch }),
      unit('ozf·in', eitherWay(ounces, inches), { times: ounceForce * inch }),
      unit('kgf·m', 'kgfm kgm kpm mkg mkgf mkp', { times: g }),
    ],
  },
  power: {
    name: 'a power',
    examples: ['1.5 hp', '1100 W'],
    units: [
      unit('W', 'w watt watts'),
      unit('kW', 'kw kilowatt kilowatts', { times: 1000 }),
      unit('hp', 'hp bhp horsepower', { times: horsepower }),
      unit('PS', 'ps cv metrichp hpmetric metrichorsepower', { times: metricHorsepower }),
    ],
  },
  energy: {
    name: 'an energy',
    examples: ['500 J', '0.2 kWh'],
    units: [
      unit('J', 'j joule joules ws'),
      unit('kJ', 'kj kilojoule kilojoules', { times: 1000 }),
      unit('Wh', 'wh watthour watthours', { times: 3600 }),
      unit('kWh', 'kwh kilowatthour kilowatthours', { times: 3.6e6 }),
    ],
  },
  length: {
    name: 'a length',
    examples: ['2.5 in', '63 mm'],
    units: [
      unit('m', 'm meter meters metre metres'),
      unit('mm', 'mm millimeter millimeters millimetre millimetres', { over: 1000 }),
      unit('cm', 'cm centimeter centimeters centimetre centimetres', { over: 100 }),
      unit('in', `${inches} " ''`, { times: inch }),
      unit('ft', "ft foot feet '", { times: foot }),
    ],
  },
  mass: {
    name: 'a mass',
    examples: ['12 lb', '5.5 kg'],
    units: [
      unit('kg', 'kg kgs kilo kilos kilogram kilograms kilogramme kilogrammes'),
      unit('g', 'g gram grams gramme grammes', { over: 1000 }),
      unit('lb', 'lb lbs lbm pound pounds', { times: pound }),
      unit('oz', 'oz ounce ounces', { times: ounce }),
    ],
  },
  force: {
    name: 'a force',
    examples: ['20 lbf', '90 N'],
    units: [
      unit('N', 'n newton newtons'),
      unit('lbf', `${pounds} poundforce poundsforce`, { times: poundForce }),
      unit('kgf', 'kgf kp kilopond kilogramforce', { times: g }),
    ],
  },
  speed: {
    name: 'a straight-line speed',
    examples: ['4000 ft/min', '20 m/s'],
    units: [
      perSecond,
      perMinute,
      unit('ft/min', 'ft/min fpm sfm sfpm feet/min feet/minute', { times: foot / 60 }),
      unit('mph', 'mph mi/h mile/h miles/hour milesperhour', { times: mile / 3600 }),
      unit('km/h', 'km/h kmh km/hr kph kmph', { times: 1000, over: 3600 }),
    ],
  },
  feed: {
    name: 'a feed',
    examples: ['12 in/min', '300 mm/min'],
    units: [
      perSecond,
      unit('mm/min', 'mm/min mmpm millimeters/minute millimetres/minute', { over: 60_000 }),
      unit('in/min', 'in/min ipm inch/min inches/min inches/minute', { times: inch / 60 }),
      perMinute,
      unit('mm/s', 'mm/s mm/sec', { over: 1000 }),
      unit('ft/min', 'ft/min fpm feet/min feet/minute', { times: foot / 60 }),
    ],
  },
  voltage: {
    name: 'a voltage',
    examples: ['90 V'],
    units: [unit('V', 'v volt volts vdc vac'), unit('mV', 'mv millivolt millivolts', { over: 1000 })],
  },
  current: {
    name: 'a current',
    examples: ['13 A'],
    units: [
      unit('A', 'a amp amps ampere amperes adc aac'),
      unit('mA', 'ma milliamp milliamps milliampere milliamperes', { over: 1000 }),
    ],
  },
  resistance: {
    name: 'a resistance',
    examples: ['0.8 Ω', '800 mΩ'],
    units: [
      unit('Ω', 'ω ohm ohms'),
      unit('mΩ', 'mω mohm mohms milliohm milliohms', { over: 1000 }),
      unit('kΩ', 'kω kohm kohms kilohm kilohms', { times: 1000 }),
    ],
  },
  inductance: {
    name: 'an inductance',
    examples: ['4 mH'],
    units: [
      unit('H', 'h henry henrys henries'),
      unit('mH', 'mh millihenry millihenrys millihenries', { over: 1000 }),
      unit('µH', 'µh uh microhenry microhenrys microhenries', { over: 1e6 }),
    ],
  },
  capacitance: {
    name: 'a capacitance',
    examples: ['1000 µF'],
    units: [
      unit('F', 'f farad farads'),
      // "MFD" on old American capacitors is the microfarad: common practice, no source.
      unit('µF', 'µf uf mfd microfarad microfarads', { over: 1e6 }),
      unit('mF', 'mf millifarad millifarads', { over: 1000 }),
    ],
  },
  'motor constant': {
    name: 'a motor constant',
    examples: ['0.21 V·s/rad', '22 V/krpm'],
    units: [
      unit('V·s/rad', 'vs/rad v/rad/s v/rad/sec vsec/rad vs'),
      unit('N·m/A', 'nm/a nm/amp'),
      unit('V/krpm', 'v/krpm v/1000rpm v/1000r/min v/1000min1 volts/krpm volts/1000rpm mv/rpm', {
        times: 30,
        over: 1000 * Math.PI,
      }),
      unit('ozf·in/A', 'ozfin/a ozfin/amp ozin/a ozin/amp', { times: ounceForce * inch }),
      unit('rpm/V', 'rpm/v rpm/volt', { times: 30, over: Math.PI, inverse: true }),
    ],
  },
  temperature: {
    name: 'a temperature',
    examples: ['40 °C', '104 °F'],
    units: [unit('°C', celsius), unit('°F', fahrenheit, { times: 5, over: 9, zero: 32 })],
  },
  'temperature difference': {
    name: 'a temperature difference',
    examples: ['5 K', '9 °F'],
    units: [
      unit('K', `k kelvin kelvins δ°c δc ${celsius}`),
      unit('Δ°F', `δ°f δf ${fahrenheit}`, { times: 5, over: 9 }),
    ],
  },
  share: {
    name: 'a share',
    examples: ['30 %', '0.3'],
    units: [unit('', ''), unit('%', '% percent pct', { over: 100 })],
  },
  number: { name: 'a plain number', examples: ['4', '2.5'], units: [unit('', '')] },
  inertia: {
    name: 'a moment of inertia',
    examples: ['0.002 kg·m²', '7 lb·in²'],
    units: [
      unit('kg·m²', 'kgm2'),
      unit('g·cm²', 'gcm2', { over: 1e7 }),
      unit('kg·cm²', 'kgcm2', { over: 1e4 }),
      unit('lb·ft²', 'lbft2 lbsft2 lbmft2', { times: pound * foot * foot }),
      unit('lb·in²', 'lbin2 lbsin2 lbmin2', { times: pound * inch * inch }),
    ],
  },
  'viscous friction': {
    name: 'a drag that grows with speed',
    examples: ['0.0004 N·m·s/rad'],
    units: [unit('N·m·s/rad', 'nms/rad nms nm/rad/s')],
  },
  'heat capacity': {
    name: 'a heat capacity',
    examples: ['900 J/K'],
    units: [unit('J/K', 'j/k j/°c j/c j/degc'), unit('kJ/K', 'kj/k kj/°c kj/c kj/degc', { times: 1000 })],
  },
  'thermal conductance': {
    name: 'a heat flow for each degree',
    examples: ['1.5 W/K'],
    units: [unit('W/K', 'w/k w/°c w/c w/degc')],
  },
}
