// Breakers that sockets are wired for, and what they are loaded with for hours.

/** Loads of hours are held to this share of a breaker (common practice; your code decides). */
export const LONG_LOAD = 0.8

/** Outlet volts up to which American sockets are usual (common practice). */
const AMERICAN = 150
/** Breakers of single sockets, A: American to 30 on 10 AWG, elsewhere to 32 (NEC table 210.21(B)(3), IEC 60309; from memory). */
const USUAL = { american: [15, 20, 30], other: [16, 32] } as const

const usualFor = (lineVolts: number): readonly number[] =>
  lineVolts <= AMERICAN ? USUAL.american : USUAL.other

/** The largest breaker that a socket of these outlet volts is wired for, A. */
export const largestUsual = (lineVolts: number): number => Math.max(...usualFor(lineVolts))

/** The smallest breaker that carries `amps` for hours; null: none of a usual socket does. A */
export const usualBreaker = (lineVolts: number, amps: number): number | null =>
  usualFor(lineVolts).find((size) => amps <= LONG_LOAD * size) ?? null
