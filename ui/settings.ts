// What the page remembers of the reader between visits: units, theme, text size. Without storage it simply forgets.
import type { Units } from '../sim/say/units.ts'

export type Theme = 'light' | 'dark'
export type Size = 'plain' | 'large'

export interface Settings {
  readonly units: Units
  readonly theme: Theme
  readonly size: Size
}

const PLACE = 'dutywright settings'

/** What is remembered; where nothing is, inches and °C, and the theme of the system. */
export function loadSettings(storage: () => Storage, darkSystem: boolean): Settings {
  const found = stored(storage)
  return {
    units: {
      system: found.system === 'metric' ? 'metric' : 'us',
      temperature: found.temperature === '°F' ? '°F' : '°C',
    },
    theme: found.theme === 'dark' || (found.theme !== 'light' && darkSystem) ? 'dark' : 'light',
    size: found.size === 'large' ? 'large' : 'plain',
  }
}

function stored(storage: () => Storage): Record<string, unknown> {
  try {
    const found: unknown = JSON.parse(storage().getItem(PLACE) ?? '{}')
    return typeof found === 'object' && found !== null ? { ...found } : {}
  } catch {
    return {}
  }
}

/** Remembers the settings, if the browser lets us. */
export function saveSettings(storage: () => Storage, { units, theme, size }: Settings): void {
  try {
    storage().setItem(PLACE, JSON.stringify({ ...units, theme, size }))
  } catch {
    // Storage is shut or full: the page works all the same.
  }
}
