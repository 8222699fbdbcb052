// A duty for tests of work and rest: loading, a cut, a rest; and a cutoff that opens early.
import type { Changes } from '../../jobs.ts'

/** The duty with this cut and rest. */
export const steps = (cut: Changes, rest = '3 min') => ({
  duty: {
    phases: [
      { name: 'loading', lasts: '1 min', speed: '350 rpm' },
      { name: 'cutting', lasts: '4 min', speed: '350 rpm', ...cut },
      { name: 'rest', lasts: rest },
    ],
    repeatFor: '2 h',
  },
})
export const early = { 'cutoff.opensAt': '55 °C', 'cutoff.reclosesAt': '40 °C' }
