// Zone B in its states: opening, never, sagging, surges close up, one line, two hours, broken off, slipping, a log over it.
import { html } from 'lit'
import { readLog } from '../../../sim/identify/log.ts'
import { exampleLog } from '../../demos.ts'
import { chosenOf } from '../../store.ts'
import { linesOf } from '../../view.ts'
import '../../zone/overTime.ts'
import '../../zone/warmUpFit.ts'
import type { Case, Group } from '../case.ts'
import { stateOf, studies } from '../data.ts'
import type { MadeName } from '../made.ts'

const read = readLog(exampleLog.text)
if (!read.ok) throw new Error('the example log reads')
const { log } = read

interface Look {
  readonly chosen?: number
  readonly at: number
  readonly window?: readonly [number, number]
  readonly alone?: boolean
  readonly logged?: boolean
}

const time = (id: string, title: string, name: MadeName, look: Look): Case => ({
  ...{ id, title },
  draw(units) {
    const state = stateOf(name, units, look.chosen)
    const chosen = chosenOf(state).id
    const lines = linesOf(state).filter((line) => !look.alone || line.id === chosen)
    const [from, to] = look.window ?? state.window
    return html`<over-time .shown=${lines} .units=${units} .at=${look.at} .windowFrom=${from} .windowTo=${to}
      .log=${look.logged ? log : null} .duty=${state.results.get(chosen)?.job.duty ?? null}></over-time>`
  },
})

export const times: Group = {
  title: 'Over time',
  cases: [
    time('time-opens', 'The cutoff opens and recloses', 'mill', { at: 1400 }),
    time('time-open', 'While the cutoff is open', 'mill', { at: 2000 }),
    time('time-never', 'A variant that never opens', 'mill', { at: 1400, chosen: 1 }),
    time('time-sags', 'A variant that cannot keep its speed, and opens often', 'mill', {
      at: 700,
      chosen: 2,
    }),
    time('time-close', 'Close enough to see each surge', 'mill', { at: 1500, window: [1440, 1680] }),
    time('time-alone', 'One line', 'mill', { at: 1400, alone: true }),
    time('time-hours', 'Two hours', 'saw', { at: 2000 }),
    time('time-burnt', 'Broken off: the winding burns out', 'burnt', { at: 600 }),
    time('time-slips', 'The belt slips', 'slipping', { at: 400 }),
    time('time-log', 'A warm-up log over the prediction', 'mill', { at: 900, alone: true, logged: true }),
    {
      id: 'time-fit',
      title: 'The fit of a warm-up log',
      draw: (units) => html`<warm-up-fit .log=${log} .fit=${studies.fit} .units=${units}></warm-up-fit>`,
    },
  ],
}
