import { it } from 'vitest'
import { oracle } from '../../checks/files.ts'
import { flatOut, look, plantWith, runTrial, settled, timeOf, ENDLESS, type Trial } from './lab.ts'
it('o1', () => {
  const { inputs, answers } = oracle<Record<string, number>, Record<string, number>>('O01')
  const changes = { supply: { volts: inputs.V }, winding: { resistance: inputs.R_ohm, inductance: inputs.L_H, constant: inputs.k }, rotor: { inertia: inputs.J, windage: inputs.b } }
  const times = [answers.t_i_peak_s, 0.05, answers.t63_s, 0.2]
  const { samples, trace } = runTrial({ changes, phases: [flatOut(1)], seconds: 1, samples: times })
  console.log(samples[1][1]/answers['w_at_0.05s']-1, samples[1][0]/answers['i_at_0.05s']-1,samples[3][1]/answers['w_at_0.2s']-1, samples[3][0]/answers['i_at_0.2s']-1, samples[0][0]/answers.i_peak_A-1, samples[2][1]/answers.w_ss_rad_s/(1-Math.exp(-1))-1, trace.effort, trace.ending)
  const p = plantWith(changes); const s = settled(p); console.log(s.i/answers.i_ss_A-1, s.w/answers.w_ss_rad_s-1)
})
it('o5', () => {
  const { inputs, answers } = oracle<Record<string, number>, Record<string, number>>('O05')
  const shift = 1/inputs.alpha20 - 255
  for (const key of Object.keys(answers)) {
    const m = /I=(.*)A_s/.exec(key); if (!m) continue
    const I = Number(m[1])
    const r = runTrial({ flowing: I, startC: inputs.Ta+shift, seconds: 6000, phases:[flatOut(6000)], changes: {
      controller: { currentLimit: I }, rotor: { inertia: ENDLESS }, supply: { volts: 1e4 },
      winding: { resistance: 255*inputs.R20*inputs.alpha20, inductance: 1 },
      heat: { air: inputs.Ta+shift, windingCapacity: inputs.C, windingToAir: inputs.G },
      cutoff: { fitted: 'manual reset', opensAt: inputs.Ttrip+shift } } })
    console.log(key, timeOf(r,'opens')/answers[key]-1, r.trace.effort, r.trace.ending)
  }
})
