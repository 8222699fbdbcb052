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
  expect(loadSettings(storage, true)).toEqual(left)
})

it('follows the system’s theme until told otherwise, and does without storage', () => {
  expect(loadSettings(memory(), true).theme).toBe('dark')
  expect(loadSettings(shut, false)).toEqual({
    units: { system: 'us', temperature: '°C' },
    theme: 'light',
    size: 'plain',
  })
  expect(() => saveSettings(shut, loadSettings(shut, false))).not.toThrow()
})

it('takes nothing from storage that it did not put there', () => {
  const storage = memory()
  storage().setItem('dutywright settings', '{"system":"<img>","theme":7')
  expect(loadSettings(storage, false).units.system).toBe('us')
})
