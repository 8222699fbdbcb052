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

/** What the browser and its system are set to: a dark theme; the size of their text, px (16 is plain). */
export interface System {
  readonly dark: boolean
  readonly text: number
}

/** Text of the system from which ours is large too, px. */
const LARGE_TEXT = 19

/** How much larger text may get: of our own, and where the browser's is larger yet. */
const [LARGER, LARGEST] = [1.25, 2]

/** Size of the browser's own text, px: that of text nothing has been said of, whatever our sheets say. */
export function browserText(body: HTMLElement): number {
  const probe = document.createElement('span')
  probe.style.fontSize = 'medium'
  body.append(probe)
  const size = Number.parseFloat(getComputedStyle(probe).fontSize)
  probe.remove()
  return size
}

/** How many times its plain size large text has, where the browser's is `text` px. */
export const largerBy = (text: number): number => Math.min(LARGEST, Math.max(LARGER, text / 16))

/** What is remembered; where nothing is, inches and °C, and theme and text size of the system. */
export function loadSettings(storage: () => Storage, system: System): Settings {
  const found = stored(storage)
  return {
    units: {
      system: found.system === 'metric' ? 'metric' : 'us',
      temperature: found.temperature === '°F' ? '°F' : '°C',
    },
    theme: found.theme === 'dark' || (found.theme !== 'light' && system.dark) ? 'dark' : 'light',
    size: found.size === 'large' || (found.size !== 'plain' && system.text >= LARGE_TEXT) ? 'large' : 'plain',
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
