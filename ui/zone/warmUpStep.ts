// The last step of the bench: a warm-up log dropped in, the heat numbers that fit it, and the button that takes them.
import { html, LitElement, nothing } from 'lit'
import { customElement, property } from 'lit/decorators.js'
import type { Fit } from '../../sim/identify/fit.ts'
import type { Refusal } from '../../sim/identify/fitAdvice.ts'
import { fitLines, hottestWords, missWords } from '../../sim/say/fit.ts'
import { inputAt } from '../../sim/scenario.ts'
import type { Logged, ReadLogged } from '../change/warmUp.ts'
import type { FormState } from '../edit/field.ts'
import { fieldStyle } from '../edit/fieldStyle.ts'
import { wish } from '../events.ts'
import { base, buttons } from '../style/base.ts'
import { warmUpStyle } from './warmUpStyle.ts'
import './warmUpFit.ts'

@customElement('warm-up-step')
export class WarmUpStep extends LitElement {
  static styles = [base, buttons, fieldStyle, warmUpStyle]

  @property({ attribute: false }) logged: Logged | null = null
  @property({ attribute: false }) form!: FormState
  @property({ type: Boolean }) inUse = false
  @property({ type: Boolean }) stale = false

  private chosen = (event: Event) => {
    const box = event.currentTarget as HTMLInputElement
    const file = box.files?.[0]
    if (file) wish(this, { kind: 'open log', file })
    box.value = ''
  }

  private drop() {
    const { logged } = this
    return html`<div class="drop" data-drop="log">
      <p>${logged ? 'Drop another log here, or' : 'Drop the log here as CSV, or'}</p>
      <label class="button file"><input class="unseen" type="file" @change=${this.chosen}
        accept=".csv,.tsv,.txt,.log,text/csv,text/plain" />choose a file</label>
      ${
        logged
          ? html`<button class="link" @click=${() => wish(this, { kind: 'forget log' })}>Take ${logged.file} away</button>`
          : html`<button class="link" @click=${() => wish(this, { kind: 'example log' })}>Look at an invented one</button>`
      }
    </div>`
  }

  /** Why there is no log, or no fit. */
  private refusal(file: string, { wrong, wouldDo }: Omit<Refusal, 'ok'>) {
    return html`<div class="refused" role="alert">
      <p><strong>${file}</strong> ${wrong}</p>
      <p>${wouldDo}</p>
    </div>`
  }

  private held({ log, held }: ReadLogged) {
    if (!log.speed.every(Number.isNaN) || !log.volts.every(Number.isNaN)) return nothing
    return html`<div class="held">
      <label for="held">Motor speed it was held at</label>
      <div class="frame">
        <input id="held" type="text" autocomplete="off" .value=${held} @change=${(event: Event) =>
          wish(this, { kind: 'held speed', text: (event.currentTarget as HTMLInputElement).value })} />
        <span class="unit">rpm</span>
      </div>
    </div>`
  }

  private list(title: string, sentences: readonly string[]) {
    return sentences.length === 0
      ? nothing
      : html`<div class="list"><h4>${title}</h4><ul>${sentences.map((each) => html`<li class="note">${each}</li>`)}</ul></div>`
  }

  private again(words: string) {
    return html`<p class="note again">${words}
      <button class="link" @click=${() => wish(this, { kind: 'fit again' })}>Fit again</button></p>`
  }

  private numbers(fit: Fit) {
    return html`<table>
      <thead><tr><th scope="col">Heat number</th><th scope="col">Fitted</th><th scope="col">Likely</th></tr></thead>
      <tbody>
        ${fitLines(fit, this.form.units).map(
          ({ label, value, band, settled }) => html`<tr>
            <th scope="row">${label}<span class="note">${settled}</span></th><td>${value}</td><td>${band}</td>
          </tr>`,
        )}
      </tbody>
    </table>`
  }

  private fitted(logged: ReadLogged, fit: Fit) {
    const { units, asked, variant } = this.form
    const cooling = inputAt(asked, 'heat.cooling')
    const options = cooling?.field.kind === 'choice' ? cooling.field.options : {}
    const words = (options[cooling?.text ?? ''] ?? '').split(':')[0].toLowerCase()
    return html`<div class="fit">
      <div class="said">
        <p>${missWords(fit, units)} ${hottestWords(fit, units)}</p>
        ${this.numbers(fit)}
        ${
          this.inUse
            ? html`<p class="used"><strong>These heat numbers are in use.</strong></p>`
            : html`<button class="main" @click=${() => wish(this, { kind: 'use heat' })}>Use these heat numbers</button>`
        }
        ${
          this.stale
            ? this.again('The motor has changed since.')
            : html`<p class="note">Taken as a run of ${variant === null ? 'the job as found' : `“${variant}”`}: ${words}. If it was another,
                choose that variant and fit again.</p>`
        }
      </div>
      <div class="beside">
        <warm-up-fit .log=${logged.log} .fit=${fit} .units=${units}></warm-up-fit>
        ${this.list('Worth a look', [...logged.notes, ...fit.notes])} ${this.list('To record next', fit.next)}
      </div>
    </div>`
  }

  private read(logged: ReadLogged) {
    const { fit, file } = logged
    return html`${this.held(logged)}
      ${
        fit === null
          ? html`<p class="note" role="status">Fitting ${file} …</p>`
          : fit.ok
            ? this.fitted(logged, fit)
            : html`${this.refusal(file, fit)} ${this.stale ? this.again('The job has changed since.') : nothing}
              ${this.list('Worth a look', logged.notes)}`
      }`
  }

  render() {
    const { logged } = this
    return html`<div class="ask">
        <div class="how">
          <h3>Warm-up</h3>
          <p class="note">Put a thermometer on the can and load the motor steadily. Write down time, can temperature,
            amps at one motor lead and rpm, once a minute, until it gains less than 1 K in 5 minutes; then switch off and go on for
            20 minutes. Cold and hot ohms of the winding make it better. The heat numbers are fitted to it, in place
            of a pattern.</p>
        </div>
        ${this.drop()}
      </div>
      ${logged?.kind === 'refused' ? this.refusal(logged.file, logged) : nothing}
      ${logged?.kind === 'read' ? this.read(logged) : nothing}`
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'warm-up-step': WarmUpStep
  }
}
