// What a plate is told about itself: for each complaint one case and one that just passes.
import { describe, expect, it } from 'vitest'
import { complaints } from '../../../sim/identify/complaints.ts'
import { publishedCase } from '../../checks/files.ts'
import { areTold, mill, plain, spin } from './complaintCases.ts'
import { BAND_SAW, BOWL_LATHE, known, motor, said } from './motors.ts'

describe('plates that are believed', () => {
  it('the apple mill and the bowl lathe', () => {
    expect(complaints(mill())).toEqual([])
    expect(complaints(motor(BOWL_LATHE))).toEqual([])
  })

  it('the band saw asks more cooling than two kilograms have, and nothing else', () => {
    expect(said(motor(BAND_SAW))).toEqual([
      'The continuous line does not fit a motor this size: it asks for 3.1 times the cooling of a usual motor of 2 kg. 1.6 times is taken. Check the continuous power and the mass; warm it up and log it to know.',
    ])
  })

  it('one that prints neither mass nor continuous line is not held to a usual mass', () => {
    const plate = { volts: '120 V', amps: '7.28 A', power: '736 W', speed: '2488 rpm' }
    expect(complaints(motor(plate))).toEqual([])
    const { thermal } = known(motor(plate)).motor
    expect(thermal.used).not.toBe(thermal.asked)
  })

  it('every row of NEC Table 430.247 at a common speed', () => {
    const { published } = publishedCase<unknown, Record<string, Record<string, number>>>('P77')
    const rows = Object.entries(published).flatMap(([volts, column]) =>
      Object.entries(column).map(([hp, amps]) => ({ volts: volts.replace('V', ' V'), hp, amps })),
    )
    expect(rows).toHaveLength(21)
    for (const { volts, hp, amps } of rows) {
      const [whole, over = 1] = hp.split('/').map(Number)
      // The resistance of some would be more than 25 %: full-load amps of the least efficient.
      const wrong = complaints(
        motor({ volts, amps: `${amps} A`, power: `${whole / over} hp`, speed: '1750 rpm' }),
      ).filter(({ path }) => path !== 'plate.speed')
      expect(wrong, `${hp} hp ${volts}`).toEqual([])
    }
  })
})

areTold([
  {
    name: 'more power than goes in',
    path: 'plate.power',
    wrong: /^1\.91 hp out is a lot for what goes in: 120 V at 13 A is 2\.09 hp, so 91\.3 % comes out\./,
    bad: [{ power: '1.91 hp', ...plain }],
    good: [{ power: '1.87 hp', ...plain }],
  },
  {
    name: 'little power for what goes in',
    path: 'plate.power',
    wrong: /^1 hp out is little for what goes in: 120 V at 13 A is 2\.09 hp, so 47\.8 % comes out\./,
    bad: [{ power: '1 hp', ...plain }],
    good: [{ power: '1.06 hp', ...plain }],
  },
  {
    name: 'more continuous power than its amps give',
    path: 'plate.continuousAmps',
    wrong: /^0\.9 hp out is a lot for what goes in: 120 V at 6 A is 0\.966 hp, so 93\.2 % comes out\./,
    bad: [{ continuousAmps: '6 A' }],
    good: [{ continuousAmps: '6.5 A' }],
  },
  {
    // JOB.md f: they disagree by 37 %.
    name: 'watts beside horsepower',
    path: 'plate.printedWatts',
    wrong:
      /^The plate says 2\.75 hp and 1490 W, which is 2 hp: they differ by 37 %\. The watts are used\. The horsepower is likely a peak\./,
    bad: [{ volts: '130 V', power: '2.75 hp', printedWatts: '1492 W' }],
    good: [{ volts: '130 V', power: '2.09 hp', printedWatts: '1492 W' }],
  },
  {
    name: 'amps that no such motor takes, by NEC Table 430.247',
    path: 'plate.amps',
    wrong: /^20 A is unusual for 1\.6 hp at 120 V: the NEC table \(430\.247\) gives 14 A\./,
    bad: [{ amps: '20 A', ...plain }],
    good: [{ amps: '19.4 A', ...plain }],
  },
  {
    name: 'a continuous power too small to be one',
    path: 'plate.continuousPower',
    wrong: /^The plate’s 1\.6 hp is 2\.58 times its continuous 0\.62 hp\./,
    bad: [{ continuousPower: '0.62 hp', mass: '4 kg' }],
    good: [{ continuousPower: '0.64 hp', mass: '4 kg' }],
  },
  {
    name: 'continuous power and peak swapped',
    path: 'plate.continuousPower',
    wrong: /^The plate’s 1\.6 hp is 0\.8 times its continuous 2 hp\. .*swapped\?/,
    bad: [{ continuousPower: '2 hp' }],
    good: [{ continuousPower: '1.59 hp' }],
  },
  {
    name: 'continuous amps too small',
    path: 'plate.continuousAmps',
    wrong: /^The plate’s 13 A is 3\.25 times its continuous 4 A\./,
    bad: [{ continuousPower: undefined, continuousAmps: '4 A' }],
    good: [{ continuousPower: undefined, continuousAmps: '5.3 A', mass: '3.5 kg' }],
  },
  {
    name: 'a winding that would take too much',
    path: 'plate.speed',
    wrong: /^The winding would take 26\.\d % of the plate’s 120 V \(2\.42 Ω at 13 A\)\..*Measure the ohms/,
    bad: [{ power: '1.3 hp', ...plain }],
    good: [{ power: '1.33 hp', ...plain }],
  },
  {
    name: 'a winding that would take hardly anything',
    path: 'plate.speed',
    wrong: /^The winding would take 4\.3\d % of the plate’s 120 V \(0\.4 Ω at 13 A\)\. .*Check the ohms/,
    bad: [{}, { ohms: ['0.4 Ω'] }],
    good: [{}, { ohms: ['0.5 Ω'] }],
  },
  {
    name: 'a continuous line too small for the mass',
    path: 'plate.continuousPower',
    wrong:
      /does not fit a motor this size: it asks for 0\.31 times the cooling of a usual motor of 20 kg\. 0\.6 times/,
    bad: [{ mass: '20 kg' }],
    good: [{ mass: '7 kg' }],
  },
  {
    name: 'a plate power too small for the mass',
    path: 'plate.mass',
    wrong: /^60 % of plate power all day does not fit a motor this size: it asks for 0\.33 times .* 20 kg\./,
    bad: [{ continuousPower: undefined, mass: '20 kg' }],
    good: [{ continuousPower: undefined, mass: '7 kg' }],
  },
  {
    name: 'no rpm',
    path: 'plate.speed',
    wrong: /^No rpm on the plate: 5000 rpm is taken, likely 3750 to 6750 rpm\./,
    bad: [{ speed: undefined }],
    good: [
      { speed: undefined, continuousPower: undefined },
      { ...spin(26), ohms: ['1.25 Ω'] },
    ],
  },
  {
    name: 'no amps',
    path: 'plate.amps',
    wrong: /^No amps on the plate: 12\.9 A is taken, likely 11\.8 to 14\.6 A\. From an efficiency of 77 %\./,
    bad: [{ amps: undefined }],
    good: [{}],
  },
  {
    name: 'no power',
    path: 'plate.power',
    wrong: /^No power on the plate: 1200 W is taken, likely 1060 to 1310 W\./,
    bad: [{ power: undefined, continuousPower: undefined }],
    good: [{ power: undefined, continuousPower: undefined }, { ohms: ['1.25 Ω'] }],
  },
  {
    name: 'no volts',
    path: 'plate.volts',
    wrong: /^No volts on the plate: 119 V is taken, likely 109 to 135 V\./,
    bad: [{ volts: undefined }],
    good: [{}],
  },
])
