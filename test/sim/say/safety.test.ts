// The cautions go with the supply and the cutoff there is, and a restart is said where there is one.
import { expect, it } from 'vitest'
import { cautions, restartWords } from '../../../sim/say/safety.ts'
import { job } from '../../jobs.ts'
import { figuresOf } from './figures.ts'

const said = (changes: Parameters<typeof job>[0]) => cautions(job(changes)).map(({ what }) => what)

it('mains kill, capacitors stay charged, belts take fingers, and it is an estimate', () => {
  const all = cautions(job())
    .map(({ what, so }) => `${what} ${so}`.replaceAll('\u00a0', ' '))
    .join('\n')
  for (const words of [
    'mains kills',
    'choke',
    'under 60 V',
    'fingers',
    'restarts the machine',
    'not a rating',
    'electrician',
  ])
    expect(all).toContain(words)
})

it('a battery has its own danger, and a cutoff that stays open does not restart anything', () => {
  expect(said({ 'supply.kind': 'battery' }).join()).not.toContain('mains')
  expect(said({ 'cutoff.fitted': 'manual reset' })).toHaveLength(4)
  expect(said({ 'cutoff.fitted': 'self-reset' })).toHaveLength(5)
})

it('a restart is said where the cutoff recloses in the job', () => {
  expect(restartWords(figuresOf('opens'))).toContain('restarts')
  expect(restartWords(figuresOf('opens once and stays'))).toBeNull()
  expect(restartWords(figuresOf('fine'))).toBeNull()
})
