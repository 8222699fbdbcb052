// The conversion factors of the project, and no others.

// Exact by definition: the international foot, inch and pound (1959) and the standard fall of 1901 (NIST SP 811, B.8).
export const foot = 0.3048
export const inch = 0.0254
export const mile = 5280 * foot
export const pound = 0.45359237
export const ounce = pound / 16
export const g = 9.80665
export const poundForce = pound * g
export const ounceForce = ounce * g
/** 550 foot pounds-force a second. */
export const horsepower = 550 * foot * poundForce
/** 75 metre kilograms-force a second. */
export const metricHorsepower = 75 * g
