// Settings come back as they were left, and a browser without storage is no obstacle.
import { expect, it } from 'vitest'
import { loadSettings, type Settings, saveSettings } from '../../ui/settings.ts'

function memory(): () => Storage {
  const kept = new Map<string, string>()
  const storage = {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  }
  return () => storage as Storage
}
const shut = () => {
  throw new Error('storage is shut')
}

it('comes back', () => {
  const storage = memory()
  const left: Settings = { units: { system: 'metric', temperature: '°F' }, theme: 'light', size: 'large' }
  saveSettings(storage, left)
  expect(loadSettings(storage, { dark: true, text: 16 })).toEqual(left)
})

it('follows the system’s theme until told otherwise, and does without storage', () => {
  expect(loadSettings(memory(), { dark: true, text: 16 }).theme).toBe('dark')
  expect(loadSettings(shut, { dark: false, text: 16 })).toEqual({
    units: { system: 'us', temperature: '°C' },
    theme: 'light',
    size: 'plain',
  })
  expect(() => saveSettings(shut, loadSettings(shut, { dark: false, text: 16 }))).not.toThrow()
})

it('takes nothing from storage that it did not put there', () => {
  const storage = memory()
  storage().setItem('dutywright settings', '{"system":"<img>","theme":7')
  expect(loadSettings(storage, { dark: false, text: 16 }).units.system).toBe('us')
})

it('text that the browser sets large is large here, unless somebody chose', () => {
  const storage = memory()
  expect(loadSettings(storage, { dark: false, text: 24 }).size).toBe('large')
  expect(loadSettings(storage, { dark: false, text: 18 }).size).toBe('plain')
  saveSettings(storage, { ...loadSettings(storage, { dark: false, text: 24 }), size: 'plain' })
  expect(loadSettings(storage, { dark: false, text: 24 }).size).toBe('plain')
})
