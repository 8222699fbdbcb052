// A file dropped anywhere on the page is opened: a table as a warm-up log, anything else as a job.
import type { Wish } from './events.ts'

/** Names of tables, and of spreadsheets, which the log reader sends back with a word of advice. */
const TABLE = /\.(csv|tsv|txt|log|dat|xlsx?|ods|numbers)$/i

export function dropsOn(target: HTMLElement, grant: (wish: Wish) => void): void {
  const carriesFile = (event: DragEvent) => event.dataTransfer?.types.includes('Files') === true
  target.addEventListener('dragover', (event) => {
    if (!carriesFile(event)) return
    event.preventDefault()
    target.classList.add('dropping')
  })
  target.addEventListener('dragleave', (event) => {
    if (event.relatedTarget === null) target.classList.remove('dropping')
  })
  target.addEventListener('drop', (event) => {
    target.classList.remove('dropping')
    const file = event.dataTransfer?.files[0]
    if (!file) return
    event.preventDefault()
    const forLogs = event
      .composedPath()
      .some((place) => place instanceof HTMLElement && place.dataset.drop === 'log')
    grant({ kind: forLogs || TABLE.test(file.name) ? 'open log' : 'open file', file })
  })
}
