// How long a capacitor stays dangerous after the plug is out.
import { mainsPeak } from '../parts/supply.ts'

/** Volts that may be touched (IEC 60204-1, 6.2.4). V */
export const TOUCHABLE_VOLTS = 60
/** Capacitors hold 20 % more than is printed (common practice). */
const LARGE_CAPACITOR = 1.2

/** Seconds in which a capacitor (F) falls from `volts` to 60 V through a resistor (Ω): R C ln(V/60). */
export const dischargeTime = (capacitance: number, resistance: number, volts: number): number =>
  volts <= TOUCHABLE_VOLTS ? 0 : resistance * capacitance * Math.log(volts / TOUCHABLE_VOLTS)

/** The same at its worst behind a rectifier on mains of `lineVolts`: mains 10 % high, 20 % more capacitance than printed. */
export const longestDischarge = (capacitance: number, resistance: number, lineVolts: number): number =>
  dischargeTime(LARGE_CAPACITOR * capacitance, resistance, mainsPeak(lineVolts))
