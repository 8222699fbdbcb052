// The sheets as they are printed: the answer with its drawing, the traces with what they rest on, and the checklist.
import { html, nothing, type TemplateResult } from 'lit'
import { adviceWords, ALL_WELL } from '../../../sim/say/advice.ts'
import { answerOf } from '../../../sim/say/answer.ts'
import { keyNumbers, limitsOf } from '../../../sim/say/keyNumbers.ts'
import { limitsCard } from '../../../sim/say/limitsCard.ts'
import { cautions, restartWords } from '../../../sim/say/safety.ts'
import { GROUP_WORDS, wiringLead, wiringWords } from '../../../sim/say/wiring.ts'
import { GROUPS, wiringOf } from '../../../sim/wiring.ts'
import '../limitsCard.ts'
import { charts, drivePicture, figure, type Picture } from './charts.ts'
import type { Report } from './facts.ts'
import { FROM_WORDS, type InputGroup, type InputRow } from './inputs.ts'
import { titleBlock, titleLine } from './title.ts'

/** Two pages hold so much, however much a job holds: the rest is told by its number. */
const MOST = { findings: 12, variants: 6, inputs: 10, letters: 60 } as const

/** "And 40 more in the file." */
const more = (count: number, where = 'in the file'): TemplateResult | typeof nothing =>
  count > 0 ? html`<p class="note">And ${count} more ${where}.</p>` : nothing

function answer({ shown, units }: Report): TemplateResult {
  const { job, figures } = shown.result
  const { sentence, support } = answerOf(job, figures, units, shown.sure)
  const restarts = restartWords(figures)
  const limits = limitsOf(job, figures, units).filter((limit) => limit.limits)
  return html`<section class="answer">
    <div>
      <h2>${sentence}</h2>
      <p>${support}</p>
      ${restarts === null ? nothing : html`<p class="bad"><strong>${restarts}</strong></p>`}
      <p>${
        limits.length === 0
          ? 'Nothing limits it.'
          : html`What limits: ${limits.map(({ name, why }) => `${name} (${why})`).join(', ')}.`
      }</p>
    </div>
    <dl class="numbers">${keyNumbers(job, figures, units).map(
      ({ label, number, unit, note }) =>
        html`<div><dt>${label}</dt><dd><strong>${number}</strong> ${unit}</dd><dd class="note">${note}</dd></div>`,
    )}</dl>
  </section>`
}

function findings({ advice, units }: Report): TemplateResult {
  const told = advice ? adviceWords(advice, units) : []
  return html`<section class="findings">
    <h3>What to do about it</h3>
    ${
      advice === null
        ? html`<p>Not worked out for this print.</p>`
        : told.length === 0
          ? html`<p>${ALL_WELL}</p>`
          : html`<ol>${told
              .slice(0, MOST.findings)
              .map(
                ({ kind, headline, text, figure: number, note }) =>
                  html`<li><span class="kind">${kind}</span> <strong>${headline}</strong> ${text}${
                    number === '' ? nothing : html` <span class="note">${number} ${note}</span>`
                  }</li>`,
              )}</ol>${more(told.length - MOST.findings, 'under D')}`
    }
  </section>`
}

const before = ({ shown }: Report): TemplateResult =>
  html`<section class="cautions"><h3>Before you touch it</h3>
    <ul>${cautions(shown.result.job).map(({ what, so }) => html`<li><strong>${what}</strong> ${so}</li>`)}</ul>
  </section>`

/** Sheet 1: what, how sure, what to do, what to mind. */
export const answerSheet = (report: Report, day: string): TemplateResult =>
  sheet(html`
    ${titleBlock(report, day, '1 of 2')}
    ${answer(report)}
    <div class="pair">
      ${figure(drivePicture(report))}
      ${
        report.limits === null
          ? nothing
          : html`<limits-card .card=${limitsCard(`${report.name}, ${report.variant}`, report.limits, report.units)}></limits-card>`
      }
    </div>
    ${findings(report)}
    ${before(report)}`)

function variants({ rows, columns }: Report): TemplateResult {
  const answered = rows.filter(({ cells }) => cells.length > 0)
  return html`<table class="variants">
    <thead><tr><th scope="col">Variant</th>${columns.map(
      ({ label, unit }) => html`<th scope="col">${label}, ${unit}</th>`,
    )}</tr></thead>
    <tbody>${answered
      .filter(({ chosen }, n) => chosen || n < MOST.variants)
      .map(
        ({ name, chosen, cells }) =>
          html`<tr><th scope="row">${chosen ? html`<strong>${name}</strong>` : name}</th>${cells.map(({ text }) => html`<td>${text}</td>`)}</tr>`,
      )}</tbody>
  </table>${more(answered.length - MOST.variants - (answered.findIndex(({ chosen }) => chosen) >= MOST.variants ? 1 : 0))}`
}

const valueWords = ({ label, value, doubt }: InputRow): TemplateResult =>
  html`${label}: <strong>${value}</strong>${doubt === '' ? '' : ` (${doubt})`}`

/** A source as long as paper has room for. */
const brief = (source: string): string =>
  source.length > MOST.letters ? `${source.slice(0, MOST.letters - 1).trimEnd()}…` : source

/** Rows that come from the same place stand together, their source told once. */
function bySource(rows: readonly InputRow[]): readonly (readonly InputRow[])[] {
  const sourceOf = ({ from, source }: InputRow) => brief(source || FROM_WORDS[from])
  const groups = new Map<string, InputRow[]>()
  for (const row of rows) groups.set(sourceOf(row), [...(groups.get(sourceOf(row)) ?? []), row])
  return [...groups.values()]
}

function assumed({ heading, rows }: InputGroup): TemplateResult {
  const own = rows.filter(({ from }) => from !== 'usual')
  const usual = rows.filter(({ from }) => from === 'usual')
  return html`<section>
    <h4>${heading}</h4>
    ${bySource(own.slice(0, MOST.inputs)).map(
      (group) =>
        html`<p>${group.map((row, index) => html`${index > 0 ? '; ' : ''}${valueWords(row)}`)}. <span class="note">${sentence(brief(group[0].source || FROM_WORDS[group[0].from]))}</span></p>`,
    )}
    ${more(own.length - MOST.inputs)}
    ${
      usual.length === 0
        ? nothing
        : html`<p class="note">Usual values: ${usual.map(({ label, value }) => `${small(label)} ${value}`).join('; ')}.</p>`
    }
  </section>`
}

const small = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1)
/** A source as a sentence: "Invented." */
const sentence = (text: string): string =>
  `${text.charAt(0).toUpperCase()}${text.slice(1)}${/[.!?]$/.test(text) ? '' : '.'}`

/** One sheet of paper; what is in it is made smaller where it would not go on one. */
const sheet = (content: TemplateResult): TemplateResult =>
  html`<div class="sheet"><div class="fits">${content}</div></div>`

/** Paper has room for three of the charts. */
const isPrinted = ({ id }: Picture): boolean => id !== 'duty' && id !== 'ribbons'

/** The charts that are not printed, for who wants to save them. */
export const spareCharts = (report: Report): readonly TemplateResult[] =>
  charts(report)
    .filter((picture) => !isPrinted(picture))
    .map(figure)

/** Sheet 2: how it goes over time, beside its variants, and every input it rests on. */
export const tracesSheet = (report: Report, day: string): TemplateResult =>
  sheet(html`
    ${titleLine(report, day, 'Sheet 2 of 2')}
    ${charts(report).filter(isPrinted).map(figure)}
    ${variants(report)}
    <section class="assumed">
      <h3>What it rests on</h3> <span class="note">In brackets: between these 8 times in 10.</span>
      <div class="inputs">${report.inputs.map(assumed)}</div>
    </section>`)

/** The checklist: a page of its own, to take to the machine. */
export function checklistSheet(report: Report, day: string): TemplateResult {
  const { shown, reading, units, ticked } = report
  const { job, figures } = shown.result
  const all = wiringOf(job, reading.motor.bench, figures)
  const done = all.filter(({ name }) => ticked.includes(name)).length
  return sheet(html`
    ${titleLine(report, day, 'Safety checklist')}
    <h2>Wiring and safety</h2>
    <p class="bad"><strong>${wiringLead(job)}</strong> ${done} of ${all.length} seen to.</p>
    <div class="lists">${GROUPS.map((group) => {
      const own = all.filter((statement) => statement.group === group)
      return own.length === 0
        ? nothing
        : html`<section><h3>${GROUP_WORDS[group]}</h3><ul>${own.map((statement) => {
            const { what, so } = wiringWords(statement, units)
            return html`<li>${tickBox(ticked.includes(statement.name))}<p><strong>${what}</strong> ${
              statement.wrong ? html`<b class="bad">As it stands.</b> ` : nothing
            }${so} <span class="note">${statement.source}.</span></p></li>`
          })}</ul></section>`
    })}</div>`)
}

const tickBox = (on: boolean): TemplateResult =>
  html`<svg class="box" width="11" height="11" viewBox="0 0 11 11" role="img" aria-label=${on ? 'seen to' : 'open'}>
    <rect x="0.5" y="0.5" width="10" height="10" /><path d=${on ? 'M2 5.5 4.5 8.5 9 2.5' : ''} /></svg>`
