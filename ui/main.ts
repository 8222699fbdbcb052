// Entry of the page: styles, the first job, workers, and the page itself.
import './fonts.css'
import './tokens.css'
import './style/sheet.css'
import './print/print.css'
import { createPool } from '../workers/seats/browser.ts'
import './app.ts'
import { dropsOn } from './drop.ts'
import type { Wish } from './events.ts'
import { firstDemo } from './firstDemo.ts'
import { opening, startAutosave } from './keep/autosave.ts'
import { carriesJob } from './keep/link.ts'
import { lessonIn } from './lessons.ts'
import { startRunner } from './runner.ts'
import { loadSettings } from './settings.ts'
import { createStore } from './store.ts'

const settings = loadSettings(() => localStorage, {
  dark: matchMedia('(prefers-color-scheme: dark)').matches,
  text: Number.parseFloat(getComputedStyle(document.documentElement).fontSize),
})
const store = createStore(opening(() => localStorage, { settings }, firstDemo))
const pool = createPool()
const runner = startRunner(store, pool)
const autosave = startAutosave(store, () => localStorage)

/** The rest begins with the first answer, or with the first wish. Wishes are granted in the order they are made. */
let beginning: Promise<(wish: Wish) => void> | undefined
const begun = () => {
  beginning ??= import('./begin.ts').then(({ begin }) => begin(store, pool, runner, autosave))
  return beginning
}
const forget = store.subscribe(() => {
  if (store.state.results.size === 0) return
  forget()
  void begun()
})

const page = document.createElement('dw-page')
page.store = store
page.grant = (wish) => void begun().then((grant) => grant(wish))
document.body.replaceChildren(page)
dropsOn(document.body, page.grant)

/** A job in the address is taken up, and leaves the address: what is edited after would be lost by a reload. */
const openLink = () => {
  const { hash } = location
  const lesson = lessonIn(hash)
  if (lesson) return page.grant({ kind: 'open lesson', name: lesson })
  if (!carriesJob(hash)) return
  history.replaceState(null, '', location.pathname + location.search)
  page.grant({ kind: 'open link', hash })
}
addEventListener('hashchange', openLink)
openLink()
