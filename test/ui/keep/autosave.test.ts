// The shelf: what is changed is kept with its undo, comes back, and survives damage, a full store and a second tab.
import { afterEach, beforeEach, expect, it, vi } from 'vitest'
import type { Wish } from '../../../ui/events.ts'
import {
  APART,
  type Autosave,
  DAMAGED,
  FULL,
  LOST,
  NEWER,
  opening,
  REST,
  startAutosave,
} from '../../../ui/keep/autosave.ts'
import { createStore, type State, type Store } from '../../../ui/store.ts'
import { granted } from '../../../ui/wishes.ts'
import { example, state } from '../demo.ts'

/** A browser's storage, of so many characters. */
function memory(room = 5_000_000) {
  const held = new Map<string, string>()
  const size = () => [...held].reduce((sum, [key, text]) => sum + key.length + text.length, 0)
  const storage = {
    get length() {
      return held.size
    },
    key: (n: number) => [...held.keys()][n] ?? null,
    getItem: (key: string) => held.get(key) ?? null,
    removeItem: (key: string) => void held.delete(key),
    clear: () => held.clear(),
    setItem(key: string, text: string) {
      const before = held.get(key)
      held.set(key, text)
      if (size() <= room) return
      if (before === undefined) held.delete(key)
      else held.set(key, before)
      throw new DOMException('full', 'QuotaExceededError')
    },
  }
  return { held, storage: storage as Storage }
}

interface Tab {
  readonly store: Store
  readonly autosave: Autosave
  do(...wishes: Wish[]): void
}
const settings = state().settings
/** The page opened on a storage. */
function tab(storage: Storage): Tab {
  const store = createStore(opening(() => storage, { settings }, example('appleMill')))
  const autosave = startAutosave(store, () => storage)
  return {
    store,
    autosave,
    do(...wishes) {
      for (const wish of wishes) store.change((now) => granted(now, wish))
      vi.advanceTimersByTime(REST)
    },
  }
}
const air = (text: string): Wish => ({ kind: 'edit', path: 'heat.air', text })
const airOf = ({ store }: Tab) => store.state.scenario.heat?.air
const shape = ({ scenario, variants, chosen }: State) => ({
  scenario,
  variants: variants.map(({ name, changes }) => ({ name, changes })),
  chosen: variants.findIndex(({ id }) => id === chosen),
})
const keyOf = (held: Map<string, string>, kind: string) =>
  [...held.keys()].find((key) => key.startsWith(`dutywright ${kind} `))!

beforeEach(() => void vi.useFakeTimers())
afterEach(() => void vi.useRealTimers())

it('what was changed is there again, with its variants, its choice and its undo', () => {
  const { storage } = memory()
  const first = tab(storage)
  first.do(air('31 °C'), { kind: 'copy' }, air('33 °C'), { kind: 'undo' })
  const again = tab(storage)
  expect(shape(again.store.state)).toEqual(shape(first.store.state))
  again.do({ kind: 'undo' }, { kind: 'undo' })
  expect(shape(again.store.state)).toEqual(shape(state()))
  again.do({ kind: 'redo' }, { kind: 'redo' }, { kind: 'redo' })
  expect(again.store.state.variants.at(-1)?.changes).toEqual({ 'heat.air': '33 °C' })
})

it('an example nobody has changed is not kept', () => {
  const { storage, held } = memory()
  tab(storage).do({ kind: 'choose', id: 'variant 1' })
  expect(held.size).toBe(0)
})

it('several jobs are listed, opened and thrown away', () => {
  const { storage } = memory()
  const page = tab(storage)
  page.do(air('31 °C'))
  page.do({ kind: 'job', scenario: example('bandSaw') }, { kind: 'edit', path: 'name', text: 'My saw' })
  const { shelf } = page.store.state
  expect(shelf.map(({ name }) => name).sort()).toEqual(['My saw', 'Orchard workshop apple mill'])
  const mill = shelf.find(({ name }) => name !== 'My saw')!
  page.autosave.open(mill.slot)
  expect(airOf(page)).toBe('31 °C')
  page.autosave.throwAway(shelf.find(({ name }) => name === 'My saw')!.slot)
  expect(page.store.state.shelf.map(({ slot }) => slot)).toEqual([mill.slot])
})

it('a damaged job is set aside, and the last good copy shown', () => {
  const { storage, held } = memory()
  tab(storage).do(air('31 °C'))
  tab(storage).do(air('35 °C'))
  const key = keyOf(held, 'job')
  held.set(key, held.get(key)!.slice(0, 500))
  const again = tab(storage)
  expect(airOf(again)).toBe('31 °C')
  expect(again.store.state.notice).toEqual(DAMAGED)
  expect(keyOf(held, 'damaged')).toBeDefined()
  again.do(air('36 °C'))
  expect(airOf(tab(storage))).toBe('36 °C')
})

it('damaged with no good copy: an example, and a word', () => {
  const { storage, held } = memory()
  tab(storage).do(air('31 °C'))
  held.set(keyOf(held, 'job'), '{"version":1,"now":{"job":{"format":1,')
  const again = tab(storage)
  expect(again.store.state.scenario).toEqual(state().scenario)
  expect(again.store.state.notice).toEqual(LOST)
})

it('a full store drops the undo before the job, and says so where there is no room at all', () => {
  const { storage, held } = memory(6_000)
  const page = tab(storage)
  page.do(air('31 °C'), air('32 °C'))
  expect(page.store.state.notice).toBeNull()
  expect(airOf(tab(storage))).toBe('32 °C')
  held.delete(keyOf(held, 'good'))
  held.set('somebody else', 'x'.repeat(6_000 - [...held].join('').length))
  page.do({ kind: 'edit', path: 'about', text: 'y'.repeat(1900) })
  expect(page.store.state.notice).toEqual(FULL)
  expect(airOf(tab(storage))).toBe('32 °C')
})

it('two tabs on one job: neither writes over the other', () => {
  const { storage } = memory()
  tab(storage).do(air('31 °C'))
  const [one, two] = [tab(storage), tab(storage)]
  one.do(air('41 °C'))
  two.do(air('42 °C'))
  expect(two.store.state.notice).toEqual(APART)
  one.do(air('43 °C'))
  expect(one.store.state.notice).toBeNull()
  expect(two.store.state.slot).not.toBe(one.store.state.slot)
  one.autosave.open(two.store.state.slot)
  expect(airOf(one)).toBe('42 °C')
})

it('without storage the page works', () => {
  const shut = () => {
    throw new DOMException('no', 'SecurityError')
  }
  const store = createStore(opening(shut, { settings }, example('appleMill')))
  startAutosave(store, shut)
  store.change((now) => granted(now, air('31 °C')))
  vi.advanceTimersByTime(REST)
  expect(store.state.scenario.heat?.air).toBe('31 °C')
})

it('a tab killed between any two writes of a save: the job is there, before the change or after it, and nothing is damaged', () => {
  const { storage, held } = memory()
  tab(storage).do(air('31 °C'))
  const before = new Map(held)
  const seen = new Set<unknown>()
  for (let writes = 0; writes < 6; writes++) {
    held.clear()
    for (const [key, text] of before) held.set(key, text)
    let left = writes
    // Once the tab is dead, none of its writes arrives.
    const dying = new Proxy(storage, {
      get(target, name) {
        if (name === 'setItem')
          return (key: string, text: string) => {
            if (left-- > 0) target.setItem(key, text)
          }
        if (name === 'removeItem') return (key: string) => left > 0 && target.removeItem(key)
        return Reflect.get(target, name)
      },
    })
    tab(dying).do(air('35 °C'))
    const again = tab(storage)
    expect(again.store.state.notice).toBeNull()
    seen.add(airOf(again))
  }
  expect(seen).toEqual(new Set(['31 °C', '35 °C']))
})

it('a job kept by a newer version stays untouched, and the last good copy is worked on beside it', () => {
  const { storage, held } = memory()
  tab(storage).do(air('31 °C'))
  tab(storage).do(air('35 °C'))
  const key = keyOf(held, 'job')
  const newer = held.get(key)!.replace('"format":1', '"format":2')
  held.set(key, newer)
  const again = tab(storage)
  expect(airOf(again)).toBe('31 °C')
  expect(again.store.state.notice).toEqual(NEWER)
  again.do(air('36 °C'))
  expect(held.get(key)).toBe(newer)
  expect(airOf(tab(storage))).toBe('36 °C')
})

it('one of a newer version with no good copy: an example, and a word', () => {
  const { storage, held } = memory()
  tab(storage).do(air('31 °C'))
  const key = keyOf(held, 'job')
  held.set(key, held.get(key)!.replace('"format":1', '"format":2'))
  for (const each of [...held.keys()]) if (each.includes('good')) held.delete(each)
  const again = tab(storage)
  expect(again.store.state.scenario).toEqual(state().scenario)
  expect(again.store.state.notice).toEqual(NEWER)
})

it('names of prototypes for a place or within a record do nothing', () => {
  const { storage, held } = memory()
  tab(storage).do(air('31 °C'))
  const text = held.get(keyOf(held, 'job'))!
  for (const name of ['__proto__', 'constructor', 'toString']) {
    held.set('dutywright last', name)
    held.set(`dutywright job ${name}`, text.replace('{"version"', `{"${name}":{"polluted":1},"version"`))
    const page = tab(storage)
    page.do(air('33 °C'))
    expect(airOf(tab(storage))).toBe('33 °C')
    expect(({} as Record<string, unknown>).polluted).toBeUndefined()
  }
})
