// The heat scale: a temperature's colour, absolute in °C, from the theme's own tokens.

/** Stops of the scale, °C; each has a token --heat-… */
export const HEAT_STOPS_C = [20, 60, 90, 120, 160] as const

/** CSS colour of a temperature (°C): linear in sRGB between the stops, held at the ends. */
export function heatColour(temperatureC: number): string {
  const last = HEAT_STOPS_C.length - 1
  const upper = HEAT_STOPS_C.findIndex((stop) => temperatureC <= stop)
  if (upper === 0 || Number.isNaN(temperatureC)) return `var(--heat-${HEAT_STOPS_C[0]})`
  if (upper < 0) return `var(--heat-${HEAT_STOPS_C[last]})`
  const from = HEAT_STOPS_C[upper - 1]
  const to = HEAT_STOPS_C[upper]
  const share = ((temperatureC - from) / (to - from)) * 100
  return `color-mix(in srgb, var(--heat-${to}) ${share.toFixed(1)}%, var(--heat-${from}))`
}

/** The scale as a CSS gradient to the right, for its key. */
export function heatGradient(): string {
  const low = HEAT_STOPS_C[0]
  const range = HEAT_STOPS_C[HEAT_STOPS_C.length - 1] - low
  const stops = HEAT_STOPS_C.map(
    (stop) => `var(--heat-${stop}) ${(((stop - low) / range) * 100).toFixed(1)}%`,
  )
  return `linear-gradient(to right in srgb, ${stops.join(', ')})`
}
