// Wishes that reach out of the page: a file opened or saved, work cancelled or checked; and settings remembered.
import { harmless } from '../sim/harmless.ts'
import type { Problem } from '../sim/problem.ts'
import { LARGEST_FILE, type ReadFile, read, readFile } from '../sim/read.ts'
import { replaced, toSave } from './change/job.ts'
import { fitted, type Logged, takeLog } from './change/warmUp.ts'
import { exampleLog } from './demos.ts'
import { tooLarge } from '../sim/identify/log.ts'
import type { Checker } from './check.ts'
import type { Wish } from './events.ts'
import type { Autosave } from './keep/autosave.ts'
import { download, fileName } from './keep/download.ts'
import { jobIn, linkTo } from './keep/link.ts'
import { noted } from './keep/history.ts'
import { printReport } from './print/print.ts'
import type { Runner } from './runner.ts'
import { lessonJob } from './lessons.ts'
import { logText } from './logText.ts'
import { saveSettings } from './settings.ts'
import type { State, Store } from './store.ts'
import { granted } from './wishes.ts'

/** Does what a wish asks. */
export async function grant(
  store: Store,
  runner: Runner,
  checker: Checker,
  autosave: Autosave,
  wish: Wish,
): Promise<void> {
  const { settings } = store.state
  store.change((state) => granted(state, wish))
  if (store.state.settings !== settings) saveSettings(() => localStorage, store.state.settings)
  if (wish.kind === 'cancel') runner.cancel()
  else if (wish.kind === 'again') runner.again()
  else if (wish.kind === 'check') checker.start()
  else if (wish.kind === 'cancel check') checker.cancel()
  else if (wish.kind === 'save') save(store.state)
  else if (wish.kind === 'print') await printReport()
  else if (wish.kind === 'copy link') await copyLink(store)
  else if (wish.kind === 'open link') {
    const opened = takenFrom(
      await jobIn(wish.hash),
      'That link was not opened. The job on this page is untouched.',
    )
    store.change((state) => noted(state, opened(state)))
  } else if (wish.kind === 'open lesson') {
    const { name } = wish
    const opened = takenFrom(
      await lessonJob(name),
      'That lesson was not opened. The job on this page is untouched.',
    )
    store.change((state) => noted(state, { ...opened(state), lesson: { name } }))
  } else if (wish.kind === 'open kept') autosave.open(wish.slot)
  else if (wish.kind === 'throw away') autosave.throwAway(wish.slot)
  else if (wish.kind === 'open file') {
    const opened = await opening(wish.file)
    store.change((state) => noted(state, opened(state)))
  } else if (wish.kind === 'open log') await openLog(store, wish.file)
  else if (wish.kind === 'example log') showLog(store, takeLog(exampleLog.file, exampleLog.text))
  if (store.state.logged?.kind === 'read' && store.state.logged.fit === null) fitSoon(store)
}

/** What taking up a stranger's job does to the state: another job in it, or a notice saying why not. */
function takenFrom(found: ReadFile, words: string): (state: State) => State {
  const refused = (problems: readonly Problem[]) => (state: State) => ({
    ...state,
    // What was opened before is not what this is about.
    undo: null,
    notice: { words, problems },
  })
  if (!found.ok) return refused(found.problems)
  const checked = read(found.scenario)
  if (!checked.ok) return refused(checked.problems)
  return (state) => replaced(state, found.scenario)
}

/** What opening a file does to the state. */
async function opening(file: File): Promise<(state: State) => State> {
  // By its size first: a film is not read into memory to find out that it is not a job.
  const text = file.size > LARGEST_FILE * 3 ? 'x'.repeat(LARGEST_FILE + 1) : await file.text().catch(() => '')
  return takenFrom(readFile(text), 'That file was not opened. The job on this page is untouched.')
}

/** Puts a link to the job on the clipboard; where that is not allowed, shows it to be copied by hand. */
async function copyLink(store: Store): Promise<void> {
  const { origin, pathname } = location
  const link = `${origin}${pathname}${await linkTo(toSave(store.state))}`
  const words = 'Link copied. It holds the whole job; nothing is sent anywhere until you send it.'
  try {
    await navigator.clipboard.writeText(link)
    store.change((state) => ({ ...state, notice: { words, problems: [] } }))
  } catch {
    const problems = [{ path: '', wrong: link, wouldDo: '' }]
    store.change((state) => ({
      ...state,
      notice: { words: 'Copy this link. It holds the whole job.', problems },
    }))
  }
}

/** Reads a log file and puts it on the page. */
async function openLog(store: Store, file: File): Promise<void> {
  const large = tooLarge(file.size)
  const name = harmless(file.name)
  if (large) return showLog(store, { kind: 'refused', file: name, ...large })
  const bytes = await file.arrayBuffer().catch(() => new ArrayBuffer(0))
  showLog(store, takeLog(name, logText(bytes)))
}

const showLog = (store: Store, logged: Logged): void => store.change((state) => ({ ...state, logged }))

/** Fits once the page has said that it will: a fit holds everything up for a moment. */
function fitSoon(store: Store): void {
  const asked = store.state.logged
  requestAnimationFrame(() =>
    setTimeout(() => {
      if (store.state.logged === asked) store.change(fitted)
    }),
  )
}

/** Hands the job to the browser as a file to save. */
function save(state: State): void {
  const text = `${JSON.stringify(toSave(state), null, 2)}\n`
  download(fileName(state.scenario.name, 'json'), new Blob([text], { type: 'application/json' }))
}
