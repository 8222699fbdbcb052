// Choices of units for tests, and special spaces made visible.
import type { Units } from '../../../sim/say/units.ts'

export const US: Units = { system: 'us', temperature: '°C' }
export const METRIC: Units = { system: 'metric', temperature: '°C' }
export const FAHRENHEIT: Units = { system: 'us', temperature: '°F' }

/** No-break space as ~, narrow no-break space as _: in a test they would look like any other. */
export const visible = (text: string): string => text.replaceAll('\u00a0', '~').replaceAll('\u202f', '_')
