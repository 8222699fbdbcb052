// How far a study is, with a way to stop it; why there is none, with a way to ask again. Styles: studyStyle.
import { html, nothing, type TemplateResult } from 'lit'
import { wish } from '../events.ts'
import type { StudyName, Work } from '../study/work.ts'

/** `doing`: what is being done, for example "Trying ratio after ratio"; `label` names the progress bar. */
export function studyLine(
  from: EventTarget,
  study: StudyName,
  work: Work<unknown>,
  stale: boolean,
  label: string,
  doing: string,
): TemplateResult | typeof nothing {
  const { working, result, halted, why } = work
  if (working)
    return html`<div class="ask">
      <span>${doing} …</span>
      <progress aria-label=${label} max=${working.of} value=${working.t}></progress>
      <button class="act" @click=${() => wish(from, { kind: 'stop study', study })}>Cancel</button>
    </div>`
  const words =
    why !== null
      ? `It came to nothing: ${why}.`
      : halted === null
        ? ''
        : result === null
          ? 'Stopped.'
          : stale
            ? 'Stopped. This is of other inputs than those chosen now.'
            : ''
  if (words === '') return nothing
  return html`<div class="ask">
    <span>${words}</span>
    <button class="act" @click=${() => wish(from, { kind: 'want study', study })}>Work it out</button>
  </div>`
}
