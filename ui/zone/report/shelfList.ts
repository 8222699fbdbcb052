// The jobs kept in this browser: opened, or removed after asking once.
import { html, nothing, type TemplateResult } from 'lit'
import { wish } from '../../events.ts'
import type { Listed } from '../../keep/shelf.ts'

const whenOf = (saved: number): string =>
  new Date(saved).toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' })

/** `asking`: the job whose removal waits for a yes; `ask` changes it. */
export function shelfList(
  from: EventTarget,
  {
    shelf,
    slot,
    asking,
    ask,
  }: {
    readonly shelf: readonly Listed[]
    readonly slot: string
    readonly asking: string | null
    readonly ask: (slot: string | null) => void
  },
): TemplateResult {
  if (shelf.length === 0)
    return html`<p class="note">None yet. A job is kept here by itself as soon as you change it.</p>`
  return html`<ul class="shelf">${shelf.map((each) => {
    const name = each.name || 'A job'
    const here = each.slot === slot
    return html`<li>
      <span><strong>${name}</strong> <span class="note">${here ? 'on the page now, ' : ''}${whenOf(each.saved)}</span></span>
      ${
        asking === each.slot
          ? html`<span class="sure">Remove it for good?
              <button class="bad" aria-label="Remove ${name} for good" @click=${() => {
                wish(from, { kind: 'throw away', slot: each.slot })
                ask(null)
              }}>Remove</button>
              <button @click=${() => ask(null)}>Keep</button></span>`
          : here
            ? nothing
            : html`<button aria-label="Open ${name}" @click=${() => wish(from, { kind: 'open kept', slot: each.slot })}>Open</button>
              <button aria-label="Remove ${name}" @click=${() => ask(each.slot)}>Remove</button>`
      }
    </li>`
  })}</ul>`
}
