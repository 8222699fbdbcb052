// P77: NEC Table 430.247, full-load amperes of DC motors; and between its rows and columns.
import { describe, expect, it } from 'vitest'
import { NEC_430_247, necAmperes } from '../../../sim/handbook/necAmperes.ts'
import { publishedCase } from '../../checks/files.ts'
import { near } from '../physics/lab.ts'

type Numbers = Record<string, number>

// NEC Table 430.247; values read in a public source file that encodes the table.
const { published, recomputed } = publishedCase<unknown, Record<string, Numbers>, Numbers>('P77')
const hpOf = (text: string): number => {
  const [whole, over = 1] = text.split('/').map(Number)
  return whole / over
}

describe.each([90, 120, 180] as const)('P77: %d V', (volts) => {
  const rows = Object.entries(published[`${volts}V`]).map(([hp, amps]) => [hpOf(hp), amps] as const)

  it('has the published rows, and no others', () => {
    expect(NEC_430_247[volts]).toEqual(rows.toSorted(([a], [b]) => a - b))
  })

  it.each(rows)('%d hp: %d A', (hp, amps) => {
    expect(necAmperes(hp, volts)).toBe(amps)
  })
})

it('P77: efficiencies that its amperes imply, with 746 W to the horsepower', () => {
  const implied = (hp: number, volts: number) => (746 * hp) / (volts * necAmperes(hp, volts)!)
  near(implied(1, 90), recomputed.implied_efficiency_1hp_90V, 1e-9)
  near(implied(2, 120), recomputed.implied_efficiency_2hp_120V, 1e-9)
  near(implied(2, 180), recomputed.implied_efficiency_2hp_180V, 1e-9)
  near(implied(3, 180), recomputed.implied_efficiency_3hp_180V, 1e-9)
})

describe('between and beyond', () => {
  it('rows are joined by straight lines', () => {
    near(necAmperes(1.25, 120)!, (9.5 + 13.2) / 2, 1e-12)
    near(necAmperes(1.6, 120)!, 13.2 + 0.2 * (17 - 13.2), 1e-12)
  })
  it('the nearest column is scaled by volts', () => {
    near(necAmperes(1, 110)!, (9.5 * 120) / 110, 1e-12)
    near(necAmperes(1, 100)!, (12.2 * 90) / 100, 1e-12)
    near(necAmperes(1, 150)!, (6.1 * 180) / 150, 1e-12)
    near(necAmperes(1, 72)!, (12.2 * 90) / 72, 1e-12)
  })
  it.each([
    [1, 48],
    [1, 71],
    [1, 260],
    [0.2, 120],
    [3.1, 120],
    [1.5, 90],
  ])('%d hp at %d V: the table has nothing near', (hp, volts) => {
    expect(necAmperes(hp, volts)).toBeNull()
  })
})
