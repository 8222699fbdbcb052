// Entry of the page: styles, the first job, workers, and the page itself.
import './fonts.css'
import './tokens.css'
import './style/sheet.css'
import { createPool } from '../workers/seats/browser.ts'
import './app.ts'
import { startChecker } from './check.ts'
import { startCloseUp } from './closeUp.ts'
import { demos } from './demos.ts'
import { dropsOn } from './drop.ts'
import { opening, startAutosave } from './keep/autosave.ts'
import { carriesJob } from './keep/link.ts'
import { grant } from './effects.ts'
import { lessonIn } from './lessons.ts'
import { startRunner } from './runner.ts'
import { loadSettings } from './settings.ts'
import { startStudies } from './studies.ts'
import { createStore } from './store.ts'

const settings = loadSettings(() => localStorage, matchMedia('(prefers-color-scheme: dark)').matches)
const store = createStore(opening(() => localStorage, { settings }, demos[0]))
const pool = createPool()
const runner = startRunner(store, pool)
const checker = startChecker(store, pool)
startStudies(store, pool)
startCloseUp(store, pool)
const autosave = startAutosave(store, () => localStorage)

const page = document.createElement('dw-page')
page.store = store
page.grant = (wish) => void grant(store, runner, checker, autosave, wish)
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
