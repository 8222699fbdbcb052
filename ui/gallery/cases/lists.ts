// Answer, variants, grid, findings, circuits and the notes over the sheet, in their states.
import { html } from 'lit'
import type { Advice } from '../../../sim/advise.ts'
import { read } from '../../../sim/read.ts'
import { BLANK } from '../../change/blank.ts'
import { takeUp } from '../../change/job.ts'
import type { GridAsked } from '../../change/gridAsked.ts'
import { AS_FOUND, chosenOf, type State } from '../../store.ts'
import type { GridShown, Work } from '../../study/work.ts'
import { formOf, shownJob } from '../../view.ts'
import '../../zone/advice.ts'
import '../../zone/answer.ts'
import '../../zone/circuit.ts'
import '../../zone/grid.ts'
import '../../zone/notes.ts'
import '../../zone/variants.ts'
import '../../zone/workingNote.ts'
import { columns, variantRows } from '../../zone/variantRows.ts'
import { type Case, type Group, work } from '../case.ts'
import { jobOf, scenarioOf, stateOf, studies } from '../data.ts'
import type { MadeName } from '../made.ts'

const PROBLEM = {
  path: 'plate.speed',
  wrong: '40 000 rpm is more than brushes stand (about 10 000).',
  wouldDo: 'Did you mean 4 000?',
}

type Turned = (state: State) => State
const working: Turned = (state) => {
  const id = chosenOf(state).id
  const key = state.results.get(id)?.key ?? ''
  return {
    ...state,
    asked: new Map(),
    slow: true,
    working: new Map([[id, { key, t: 5400, of: 10800, since: Number.POSITIVE_INFINITY }]]),
  }
}
const first: Turned = (state) => ({ ...working(state), results: new Map() })
const empty: Turned = (state) => ({
  ...takeUp(state, BLANK),
  readings: new Map([[AS_FOUND, read(BLANK)]]),
})
const stopped: Turned = (state) => ({
  ...state,
  asked: new Map(),
  stopped: 'Stopped. Previous result kept.',
})
const wrong: Turned = (state) => ({
  ...state,
  readings: new Map(state.readings).set(chosenOf(state).id, { ok: false, problems: [PROBLEM] }),
})
const newer: Turned = (state) => ({
  ...state,
  notice: {
    words: 'This link was not opened.',
    problems: [
      {
        path: 'format',
        wrong: 'The file is of format 9; this page reads format 1.',
        wouldDo: 'Reload the page.',
      },
    ],
  },
})

interface Look {
  readonly name?: MadeName
  readonly chosen?: number
  readonly turned?: Turned
}
const turnedOf = (units: State['settings']['units'], { name = 'mill', chosen = 0, turned }: Look): State => {
  const state = stateOf(name, units, chosen)
  return turned ? turned(state) : state
}

const answer = (id: string, title: string, look: Look = {}): Case => ({
  ...{ id, title },
  draw(units) {
    const state = turnedOf(units, look)
    const reading = state.readings.get(chosenOf(state).id)
    return html`<answer-zone .shown=${shownJob(state)} .at=${600} .form=${formOf(state)}
      .job=${reading?.ok ? reading.job : null}></answer-zone>`
  },
})

const variants = (id: string, title: string, look: Look = {}): Case => ({
  ...{ id, title },
  draw(units) {
    const state = turnedOf(units, look)
    return html`<variants-zone .rows=${variantRows(state)} .columns=${columns(state)} .units=${units}></variants-zone>`
  },
})

const notes = (id: string, title: string, turned: Turned): Case => ({
  ...{ id, title },
  draw(units) {
    const state = turnedOf(units, { turned })
    return html`<page-notes .state=${state}></page-notes><working-note .state=${state}></working-note>`
  },
})

const advice = (id: string, title: string, made: Work<Advice>, stale = false): Case => ({
  ...{ id, title },
  draw: (units) => html`<advice-zone .work=${made} ?stale=${stale} .units=${units}></advice-zone>`,
})

const { grid } = studies
const partly: GridShown = {
  ...grid,
  points: grid.points.map((point, n) =>
    n > 14 ? undefined : n % 6 === 0 ? { ok: false, problem: PROBLEM } : point,
  ),
}
const ASKED: GridAsked = {
  x: { path: grid.spec.x.path, range: '3..30 in' },
  y: { path: grid.spec.y.path, range: '1..9 lbf·ft' },
  figure: 'firstOpening',
}
const cells = (id: string, title: string, made: Work<GridShown>, change: Partial<GridAsked> = {}): Case => ({
  ...{ id, title },
  draw: (units) =>
    html`<grid-zone .work=${made} .asked=${{ ...ASKED, ...change }} .scenario=${scenarioOf('mill')} .units=${units}></grid-zone>`,
})

const SUPPLIES = ['battery', 'pwm', 'phase control with choke', 'phase control', 'bare bridge', 'ac'] as const
const circuit = (id: string, title: string, changes: Readonly<Record<string, string>>): Case => ({
  ...{ id, title },
  draw: (units) => html`<circuit-figure .job=${jobOf('mill', changes)} .units=${units}></circuit-figure>`,
})

export const lists: readonly Group[] = [
  {
    title: 'Answer',
    cases: [
      answer('answer-no', 'No'),
      answer('answer-yes', 'Yes', { chosen: 1 }),
      answer('answer-burnt', 'It burns out', { name: 'burnt' }),
      answer('answer-empty', 'Nothing given yet', { turned: empty }),
      answer('answer-first', 'Nothing answered yet', { turned: first }),
      answer('answer-previous', 'Of the inputs before', { turned: stopped }),
      answer('answer-wrong', 'A value is refused', { turned: wrong }),
    ],
  },
  {
    title: 'Notes over the sheet',
    cases: [
      notes('note-first', 'Working out the first answer', first),
      notes('note-working', 'Working out the next', working),
      notes('note-stopped', 'Stopped', stopped),
      notes('note-wrong', 'A value is refused', wrong),
      notes('note-newer', 'A file was not opened', newer),
    ],
  },
  {
    title: 'Variants',
    cases: [
      variants('variants', 'All answered'),
      variants('variants-working', 'Working', { chosen: 1, turned: working }),
      variants('variants-first', 'None answered', { turned: first }),
      variants('variants-previous', 'Of the inputs before', { chosen: 2, turned: stopped }),
      variants('variants-wrong', 'A value is refused', { chosen: 1, turned: wrong }),
    ],
  },
  {
    title: 'Two inputs at once',
    cases: [
      cells('grid', 'All there', work.done(grid)),
      cells('grid-heat', 'Of the winding’s heat', work.done(grid), { figure: 'hottestWinding' }),
      cells('grid-partly', 'As it fills, some refused', work.again(partly)),
      cells('grid-empty', 'Not asked', { ...work.empty, wanted: false }),
      cells('grid-refused', 'A range that is refused', work.done(grid), {
        x: { path: grid.spec.x.path, range: 'wide' },
      }),
      cells('grid-failed', 'Came to nothing', work.failed),
    ],
  },
  {
    title: 'What to do about it',
    cases: [
      advice('advice-danger', 'Danger first', work.done(studies.advice.deadly)),
      advice('advice-damage', 'It would come to harm', work.done(studies.advice.mill)),
      advice('advice-note', 'Only something to measure', work.done(studies.advice.well)),
      advice('advice-none', 'Nothing to say', work.done({ ...studies.advice.well, findings: [] })),
      advice('advice-working', 'Working', work.working),
      advice('advice-again', 'Working, the older one still there', work.again(studies.advice.mill), true),
      advice('advice-stale', 'Stopped, of other inputs', work.stale(studies.advice.mill), true),
      advice('advice-failed', 'Came to nothing', work.failed),
    ],
  },
  {
    title: 'Circuit',
    cases: [
      ...SUPPLIES.map((kind) =>
        circuit(`circuit-${kind.replaceAll(' ', '-')}`, `Supply: ${kind}`, { 'supply.kind': kind }),
      ),
      circuit('circuit-no-cutoff', 'No cutoff', { 'cutoff.fitted': 'none' }),
    ],
  },
]
