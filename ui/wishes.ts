// Wishes that only change the state: each to its own function. Those that reach out of the page are in effects.ts.
import { addReading, editBench, removeReading } from './change/bench.ts'
import { addBeltStep, removeBeltStep } from './change/beltSteps.ts'
import { changeGrid } from './change/grid.ts'
import { changeCut, changeWork, withOtherSpeed } from './change/cuts.ts'
import { changeSurge, edit } from './change/inputs.ts'
import { replaced } from './change/job.ts'
import { addOldStep, editOld, removeOldStep } from './change/oldMotor.ts'
import { usePattern } from './change/pattern.ts'
import { addStep, removeStep } from './change/steps.ts'
import { type ReadLogged, useHeat } from './change/warmUp.ts'
import { choose, copy, remove, rename, tryOut } from './change/variants.ts'
import { stationOf } from './edit/groups.ts'
import type { Wish } from './events.ts'
import { noted, redo, undo } from './keep/history.ts'
import type { State } from './store.ts'
import { stopStudy, wantStudy } from './studies.ts'

/** The state with its log changed, if there is one. */
const logged = (state: State, change: Partial<ReadLogged>): State =>
  state.logged?.kind === 'read' ? { ...state, logged: { ...state.logged, ...change } } : state

/** The state after a wish; the same one where the wish is none of the state's. */
export const granted = (state: State, wish: Wish): State => {
  if (wish.kind === 'undo') return undo(state)
  if (wish.kind === 'redo') return redo(state)
  return noted(state, changed(state, wish), (wish.kind === 'edit' && wish.during) || null)
}

function changed(state: State, wish: Wish): State {
  switch (wish.kind) {
    case 'edit':
      return (
        editOld(state, wish.path, wish.text) ??
        editBench(state, wish.path, wish.text) ??
        edit(state, withOtherSpeed(state, wish.path, wish.text))
      )
    case 'add belt step':
      return addBeltStep(state)
    case 'remove belt step':
      return removeBeltStep(state, wish.index)
    case 'add old step':
      return addOldStep(state)
    case 'remove old step':
      return removeOldStep(state, wish.index)
    case 'add reading':
      return addReading(state, wish.of)
    case 'remove reading':
      return removeReading(state, wish.of, wish.index)
    case 'held speed':
      return logged(state, { held: wish.text, fit: null })
    case 'fit again':
      return logged(state, { fit: null })
    case 'show log':
      return logged(state, { shown: wish.on })
    case 'forget log':
      return { ...state, logged: null }
    case 'use heat':
      return useHeat(state)
    case 'add step':
      return addStep(state)
    case 'duty pattern':
      return usePattern(state, wish.type)
    case 'remove step':
      return removeStep(state, wish.index)
    case 'cut kind':
      return changeCut(state, wish.index, wish.cut)
    case 'work':
      return changeWork(state, wish.index, wish.work)
    case 'surge':
      return changeSurge(state, wish.index, wish.on)
    case 'choose':
      return choose(state, wish.id)
    case 'copy':
      return copy(state)
    case 'remove':
      return remove(state, wish.id)
    case 'rename':
      return rename(state, wish.id, wish.name)
    case 'try':
      return tryOut(state, wish.name, wish.changes)
    case 'forget undo':
      return { ...state, undo: null }
    case 'open station':
      return { ...state, station: wish.station, target: null }
    case 'go to field': {
      const station = stationOf(wish.path)
      return station
        ? { ...state, station, target: { path: wish.path, n: (state.target?.n ?? 0) + 1 } }
        : state
    }
    case 'units':
      return { ...state, settings: { ...state.settings, units: wish.units } }
    case 'theme':
      return { ...state, settings: { ...state.settings, theme: wish.theme } }
    case 'size':
      return { ...state, settings: { ...state.settings, size: wish.size } }
    case 'moment':
      return wish.t === state.moment ? state : { ...state, moment: wish.t }
    case 'window':
      return { ...state, window: [wish.from, wish.to] }
    case 'job':
      return replaced(state, wish.scenario)
    case 'tick': {
      const rest = state.ticked.filter((name) => name !== wish.name)
      return { ...state, ticked: wish.on ? [...rest, wish.name] : rest }
    }
    case 'close lesson':
      return { ...state, lesson: null }
    case 'dismiss':
      return { ...state, notice: null, stopped: null }
    case 'grid':
      return changeGrid(state, wish)
    case 'limits cut':
      return { ...state, limitsCut: wish.phase }
    case 'want study':
      return wantStudy(state, wish.study)
    case 'stop study':
      return stopStudy(state, wish.study)
    case 'undo':
    case 'redo':
    case 'open file':
    case 'open log':
    case 'example log':
    case 'save':
    case 'print':
    case 'copy link':
    case 'open link':
    case 'open lesson':
    case 'open kept':
    case 'throw away':
    case 'cancel':
    case 'again':
    case 'check':
    case 'cancel check':
      return state
  }
}
