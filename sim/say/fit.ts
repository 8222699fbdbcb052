// A fitted warm-up in words: each heat number with its band, how well the curve lies, and the lines for the job file.
import type { Fit } from '../identify/fit.ts'
import { HEAT_NUMBERS, type HeatNumber } from '../identify/heatPath.ts'
import { writeQuantity } from '../quantity.ts'
import { bandWords, MOTOR_NUMBERS } from './motor.ts'
import { brief, grouped, NBSP, told } from './number.ts'
import { type Units, unitFor } from './units.ts'

export interface FitLine {
  readonly name: HeatNumber
  readonly label: string
  readonly value: string
  readonly band: string
  readonly settled: string
}

const found = ({ numbers }: Fit) =>
  HEAT_NUMBERS.flatMap((name) => {
    const one = numbers[name]
    return one ? [{ name, one }] : []
  })

/** Every number that shows in the log, a line each. */
export const fitLines = (fit: Fit, units: Units): readonly FitLine[] =>
  found(fit).map(({ name, one }) => {
    const { label, dimension } = MOTOR_NUMBERS[name]
    return {
      name,
      label,
      value: `${brief(one.value)}${NBSP}${unitFor(dimension, units)}`,
      band: bandWords({ ...one, from: 'measured', how: '' }, dimension, units),
      settled: one.settled ? 'settled by the log' : 'kept in the usual proportion',
    }
  })

/** How well the curve lies, in a sentence. */
export function missWords({ frameMiss, windingMiss }: Fit, units: Units): string {
  const miss = (kelvin: number) =>
    `${grouped(units.temperature === '°F' ? 1.8 * kelvin : kelvin, 1)}${NBSP}${units.temperature === '°F' ? '°F' : 'K'}`
  const parts = [
    frameMiss === null ? '' : `the can by ${miss(frameMiss)}`,
    windingMiss === null ? '' : `the winding by ${miss(windingMiss)}`,
  ].filter((part) => part !== '')
  return `The curve misses ${parts.join(' and ')} (root mean square).`
}

/** What the log settled and what not, in a sentence. */
export function settledWords(fit: Fit): string {
  const all = found(fit)
  const names = (settled: boolean): string =>
    all
      .filter(({ one }) => one.settled === settled)
      .map(({ name }) => MOTOR_NUMBERS[name].label.toLowerCase())
      .join(', ')
  const [known, open] = [names(true), names(false)]
  if (open === '') return 'The log settles every number.'
  if (known === '')
    return 'The log settles only the whole of what the motor stores and gives off; the parts keep their usual proportions.'
  return `The log settles ${known}. In their usual proportion stay ${open}.`
}

/** Hottest the winding came to on the curve. */
export const hottestWords = ({ windingC, frameC }: Fit, units: Units): string => {
  const top = (column: Float64Array): number =>
    column.reduce((most, value) => Math.max(most, value), -Infinity)
  return `On the curve the winding came to ${told(top(windingC), 'temperature', units)} and the frame to ${told(top(frameC), 'temperature', units)}.`
}

const three = (value: number, unit: string): string => writeQuantity(Number(value.toPrecision(3)), unit)

/** The heat inputs of a job file as the fit has them: for a person to paste, or a page to put in. */
export function heatInputs(
  fit: Fit,
  log: string,
): Readonly<Record<string, { value: string; source: string; low: string; high: string }>> {
  const source = `measured: fitted to ${log.slice(-100)}`
  return Object.fromEntries(
    found(fit).map(({ name, one }) => {
      const unit = MOTOR_NUMBERS[name].dimension === 'heat capacity' ? 'J/K' : 'W/K'
      return [
        name,
        {
          value: three(one.value, unit),
          source: one.settled ? source : `${source}, in the usual proportion`,
          low: three(one.low, unit),
          high: three(one.high, unit),
        },
      ]
    }),
  )
}
