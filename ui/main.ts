// Entry of the page: styles, the first job, workers, and the page itself.
import './fonts.css'
import './tokens.css'
import './style/sheet.css'
import './print/print.css'
import { createPool } from '../workers/seats/browser.ts'
import './app.ts'
import { dropsOn } from './drop.ts'
import type { Wish } from './events.ts'
import { BLANK } from './change/blank.ts'
import { takeUp } from './change/job.ts'
import { offerExample } from './example.ts'
import { demoIn, FIRST, firstDemo } from './firstDemo.ts'
import { opening, startAutosave } from './keep/autosave.ts'
import { carriesJob } from './keep/link.ts'
import { lessonIn } from './lessons.ts'
import { startRunner } from './runner.ts'
import { browserText, largerBy, loadSettings } from './settings.ts'
import { createStore, type State } from './store.ts'

const text = browserText(document.body)
const settings = loadSettings(() => localStorage, {
  dark: matchMedia('(prefers-color-scheme: dark)').matches,
  text,
})
const isDemo = demoIn(location.hash) === FIRST
const store = createStore(
  isDemo ? takeUp({ settings, made: 0 }, firstDemo) : opening(() => localStorage, { settings }, BLANK),
)
const pool = createPool()
const runner = startRunner(store, pool)
const autosave = startAutosave(store, () => localStorage)

/** The rest begins with the first answer, or with the first wish. Wishes are granted in the order they are made. */
let beginning: Promise<(wish: Wish) => Promise<void>> | undefined
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
page.larger = largerBy(text)
page.grant = (wish) => void begun().then((grant) => grant(wish))
document.body.replaceChildren(page)
dropsOn(document.body, page.grant)

const clearAddress = () => history.replaceState(null, '', location.pathname + location.search)
/** An example stays in the address until it is changed: from then on it is kept, and comes back without. */
let unchanged: Pick<State, 'scenario' | 'variants' | 'ticked'> | null = isDemo ? store.state : null
store.subscribe(() => {
  const { scenario, variants, ticked } = store.state
  const same =
    scenario === unchanged?.scenario && variants === unchanged.variants && ticked === unchanged.ticked
  if (!unchanged || same) return
  unchanged = null
  if (demoIn(location.hash) !== null) clearAddress()
})

/** What an address asks for is taken up; a job leaves the address: what is edited after would be lost by a reload. */
const openLink = async () => {
  const { hash } = location
  const lesson = lessonIn(hash)
  const demo = demoIn(hash)
  if (!lesson && demo === null && !carriesJob(hash)) return
  if (carriesJob(hash)) clearAddress()
  page.expecting = true
  const grant = await begun()
  if (lesson) await grant({ kind: 'open lesson', name: lesson })
  else if (carriesJob(hash)) await grant({ kind: 'open link', hash })
  else {
    const scenario = (await import('./demos.ts')).demoNamed(demo ?? '')
    if (scenario) await grant({ kind: 'job', scenario })
    unchanged = scenario ? store.state : null
  }
  page.expecting = false
  lookForEmpty()
}
addEventListener('hashchange', () => void openLink())
if (!isDemo) void openLink()
const lookForEmpty = offerExample(store, pool, () => !page.expecting)
