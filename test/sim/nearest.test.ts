// The word most likely meant.
import { expect, it } from 'vitest'
import { nearest } from '../../sim/nearest.ts'

const known = ['motorPulley', 'machinePulley', 'efficiency', 'air', 'airflow']

it.each([
  ['motorPuley', 'motorPulley'],
  ['MOTORPULLEY', 'motorPulley'],
  ['machinPuley', 'machinePulley'],
  ['eficency', 'efficiency'],
  ['ari', null],
  ['aur', 'air'],
  ['airflow', 'airflow'],
  ['gearbox', null],
  ['', null],
  ['q', null],
])('"%s" → %s', (word, meant) => {
  expect(nearest(word, known)).toBe(meant)
})

it('the first of two equally near is taken', () => {
  expect(nearest('cat', ['bat', 'hat'])).toBe('bat')
})
it('a name as long as a file costs no time', () => {
  expect(nearest('x'.repeat(1e6), known)).toBeNull()
  expect(nearest('air', [])).toBeNull()
})
