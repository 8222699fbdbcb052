// Entry of the page: styles, the first job, workers, and the page itself.
import './fonts.css'
import './tokens.css'
import './style/sheet.css'
import { createPool } from '../workers/seats/browser.ts'
import './app.ts'
import { takeUp } from './change/job.ts'
import { startChecker } from './check.ts'
import { demos } from './demos.ts'
import { dropsOn } from './drop.ts'
import { grant } from './effects.ts'
import { startRunner } from './runner.ts'
import { loadSettings } from './settings.ts'
import { startStudies } from './studies.ts'
import { createStore } from './store.ts'

const settings = loadSettings(() => localStorage, matchMedia('(prefers-color-scheme: dark)').matches)
const store = createStore(takeUp({ settings, made: 0 }, demos[0]))
const pool = createPool()
const runner = startRunner(store, pool)
const checker = startChecker(store, pool)
startStudies(store, pool)

const page = document.createElement('dw-page')
page.store = store
page.grant = (wish) => void grant(store, runner, checker, wish)
document.body.replaceChildren(page)
dropsOn(document.body, page.grant)
