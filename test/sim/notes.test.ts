// What is worth saying of a job that is run all the same: each note with its numbers, and just short of it none.
import { describe, expect, it } from 'vitest'
import { read } from '../../sim/read.ts'
import { type Changes, scenario } from '../jobs.ts'

const notesAt = (path: string, changes: Changes) => {
  const reading = read(scenario(changes))
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems))
  return reading.notes.filter((note) => note.path === path).map(({ wrong, wouldDo }) => `${wrong} ${wouldDo}`)
}

describe('a cutoff', () => {
  it('that nobody mentioned is taken to be there, and that is said; one that is named is not', () => {
    expect(notesAt('cutoff.fitted', { 'cutoff.fitted': null, 'cutoff.opensAt': '110 °C' })).toEqual([
      'Nothing is said of a cutoff: one that opens at 110 °C and recloses by itself is taken to be fitted and wired. Say which it is. If there is none, or its leads hang loose, nothing stops the heat.',
    ])
    expect(notesAt('cutoff.fitted', {})).toEqual([])
    expect(notesAt('cutoff.fitted', { 'cutoff.fitted': 'none' })).toEqual([])
  })
})

describe('compensation', () => {
  const COMPENSATION = 'controller.compensation'
  // Copper at 5 °C has 240/255 of its ohms at 20 °C.
  it('over nine tenths of the coldest winding’s resistance makes the speed hunt', () => {
    const cold = (share: string) => notesAt(COMPENSATION, { [COMPENSATION]: share, 'heat.air': '5 °C' })
    expect(cold('86 %')).toEqual([
      'The controller makes up for 91 % of the coldest winding’s resistance: speed will hunt. Turn it down under 90 %.',
    ])
    expect(cold('84 %')).toEqual([])
    expect(notesAt(COMPENSATION, { [COMPENSATION]: '100 %', 'controller.holds': 'speed feedback' })).toEqual(
      [],
    )
  })
})

describe('a spindle', () => {
  const step = (more: Changes) => [{ name: 'cut', lasts: '5 min', ...more }]
  it('too slow for the model to count the whole cut: tanh(10 rpm in rad/s) = 78 %', () => {
    const slow = (more: Changes) => notesAt('duty.phases.0.speed', { 'duty.phases': step(more) })
    expect(slow({ speed: '10 rpm', torque: '3 N·m' })).toEqual([
      'At 10 rpm the spindle is so slow that only 78 % of the cut’s torque is counted. The model fades a cut out below about 20 rpm: give more torque, or take the answer as too kind.',
    ])
    expect(slow({ speed: '21 rpm', torque: '3 N·m' })).toEqual([])
    expect(slow({ speed: '10 rpm', torque: '0 N·m' })).toEqual([])
    expect(slow({ speed: '10 rpm', power: '3 W' })).toEqual([])
    expect(slow({ torque: '0 N·m' })).toEqual([])
  })

  it('faster than the volts allow: (120 − 1.5) V at 26.2 V/krpm are 4520 rpm at the motor, 1130 at 4 : 1', () => {
    const fast = (speed: string) => notesAt('duty.phases.0.speed', { 'duty.phases': step({ speed }) })
    expect(fast('1200 rpm')).toEqual([
      'For 1200 rpm at the spindle the motor would have to turn 4800 rpm, and 120 V takes it to about 4520 rpm. At this ratio the spindle gets to about 1130 rpm. Ask for less, or gear it down less.',
    ])
    expect(fast('1100 rpm')).toEqual([])
  })
})
