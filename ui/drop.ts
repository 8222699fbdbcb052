// A job file dropped anywhere on the page is opened.
import type { Wish } from './events.ts'

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
    grant({ kind: 'open file', file })
  })
}
