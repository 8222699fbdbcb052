// The plant against a circuit simulator: a start-up, a warm-up and whole duty cycles of the same equations as circuits.
import { describe, expect, it } from 'vitest'
import { referenceJob } from '../../../scenarios/referenceRuns.ts'
import { STATE } from '../../../sim/plant.ts'
import { finish, run } from '../../../sim/run.ts'
import { references } from '../../checks/files.ts'
import { type Changes, ENDLESS } from './lab.ts'
import { simulate } from './spice.ts'
import { plantNetlist } from './spicePlant.ts'
import { flatOut, runTrial } from './trial.ts'

/** ngspice's own accuracy with these options, and straight lines between its points, is better than 1e-4. */
const OPTIONS = '.options reltol=1e-7 abstol=1e-9 vntol=1e-9'

describe('start-up: resistance, inductance, back-EMF, inertia as a capacitor', () => {
  // Numbers invented. Brush drop, dry friction and the cut keep their smooth knees, so that the equations are the same.
  const R = 0.9
  const L = 0.003
  const k = 0.28
  const changes: Changes = {
    supply: { volts: 120, resistance: 0.2 },
    winding: { resistance: R, inductance: L, constant: k, brushDrop: 1.5 },
    rotor: { inertia: 0.004, flywheel: 0.002, dryFriction: 0.25, windage: 0.0006 },
    belt: { machinePulley: 3, efficiency: 0.9 },
    machine: { inertia: 0.018, drag: 0.4, windage: 0.01 },
  }
  const inertia = 0.004 + 0.002 + 0.018 / 9
  const spindle = '(v(w)/3)'
  const netlist = `start-up
${OPTIONS}
v1 in 0 dc 120
rs in s 0.2
r1 s a ${R}
l1 a b ${L} ic=0
vs b c dc 0
bb c d v=1.5*tanh(i(vs)/0.05)
be d 0 v=${k}*v(w)
bt 0 w i=${k}*i(vs)-0.25*tanh(v(w)/0.5)-0.0006*v(w)-(5*tanh${spindle}+0.4*tanh(${spindle}/0.5)+0.01*${spindle})/(3*0.9)
cw w 0 ${inertia} ic=0
.tran 1e-4 0.3 0 5e-5 uic
.end
`
  const times = [0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.3]

  it('current and speed within 0.005 A and 0.005 rad/s', async () => {
    const spice = await simulate(netlist)
    const { samples } = runTrial({
      changes,
      phases: [flatOut(1, { kind: 'torque', torque: 5 })],
      seconds: 1,
      samples: times,
    })
    times.forEach((t, n) => {
      expect(Math.abs(samples[n][STATE.current] - spice('i(vs)', t)), `current at ${t} s`).toBeLessThan(0.005)
      expect(Math.abs(samples[n][STATE.speed] - spice('v(w)', t)), `speed at ${t} s`).toBeLessThan(0.005)
    })
    // It started, and the current went high and came down.
    expect(spice('i(vs)', 0.01)).toBeGreaterThan(60)
    expect(spice('v(w)', 0.3)).toBeGreaterThan(250)
  })
})

describe('warm-up: two nodes with copper that heats more as it warms', () => {
  // Held still at 7.5 A. Volts stand for °C, amps for W, farads for J/K; the air is a source of 25 V.
  const i = 7.5
  const changes: Changes = {
    supply: { volts: 1e3, formFactor: 1.2 },
    controller: { currentLimit: i },
    winding: { resistance: 1.1, brushDrop: 1.5 },
    rotor: { inertia: ENDLESS },
    heat: {
      air: 25,
      windingCapacity: 350,
      frameCapacity: 2500,
      windingToFrame: 1.5,
      windingToAir: 0.3,
      frameToAir: 1.2,
      brushShare: 0.3,
    },
    cutoff: { fitted: 'none', windingShare: 0.4, lag: 45 },
  }
  const netlist = `warm-up
${OPTIONS}
va air 0 dc 25
bw 0 tw i=${1.2 ** 2}*${i * i}*1.1*(235+v(tw))/255+0.3*1.5*${i}
bm 0 tm i=0.7*1.5*${i}
rwm tw tm ${1 / 1.5}
rwa tw air ${1 / 0.3}
rma tm air ${1 / 1.2}
cw tw 0 350 ic=25
cm tm 0 2500 ic=25
bs 0 ts i=0.4*v(tw)+0.6*v(tm)-v(ts)
cs ts 0 45 ic=25
.tran 1 2400 0 2 uic
.end
`
  const times = [10, 60, 300, 900, 2400]

  it('winding, frame and switch within 0.002 K', async () => {
    const spice = await simulate(netlist)
    const { samples } = runTrial({
      changes,
      flowing: i,
      startC: 25,
      phases: [flatOut(2400)],
      seconds: 2400,
      samples: times,
    })
    times.forEach((t, n) => {
      expect(Math.abs(samples[n][STATE.windingC] - spice('v(tw)', t)), `winding at ${t} s`).toBeLessThan(
        0.002,
      )
      expect(Math.abs(samples[n][STATE.frameC] - spice('v(tm)', t)), `frame at ${t} s`).toBeLessThan(0.002)
      expect(Math.abs(samples[n][STATE.switchC] - spice('v(ts)', t)), `switch at ${t} s`).toBeLessThan(0.002)
    })
    expect(spice('v(tw)', 2400)).toBeGreaterThan(130)
  })
})

describe('whole duty cycles as circuits: electrical, mechanical, thermal, with ramp, limiter, cutoff (more: test/campaigns/circuit.ts)', () => {
  it.each(['shaft-fan', 'stall-at-limit', 'coast-restart', 'lumpy-supply'])(
    '%s, 10 minutes',
    async (name) => {
      const reference = references.runs.find((one) => one.name === name)!
      const spice = await simulate(
        plantNetlist({ ...references.base, ...reference.plant }, reference.phases, 600),
      )
      const times = Array.from({ length: 20 }, (_, n) => 600 * ((n + 0.9) / 20))
      const { samples } = finish(run(referenceJob(references.base, reference, 'precise'), { samples: times }))
      times.forEach((t, n) => {
        // Edges take it a millisecond, and it steps to 1e-4.
        for (const [node, state, allowed] of [
          ['tw', STATE.windingC, 0.02],
          ['tm', STATE.frameC, 0.02],
          ['ts', STATE.switchC, 0.02],
          ['w', STATE.speed, 0.2],
          ['i', STATE.current, 0.05],
        ] as const)
          expect(Math.abs(samples[n][state] - spice(`v(${node})`, t)), `${node} at ${t} s`).toBeLessThan(
            allowed,
          )
      })
    },
  )

  it('the cutoff opens when ours does', async () => {
    const reference = references.runs.find(({ name }) => name === 'stall-at-limit')!
    const [[, opens], [, recloses]] = reference.expected.events
    const spice = await simulate(
      plantNetlist({ ...references.base, ...reference.plant }, reference.phases, recloses + 10),
    )
    expect(spice('v(closed)', opens - 1)).toBeGreaterThan(0.99)
    expect(spice('v(closed)', opens + 1)).toBeLessThan(0.01)
    expect(spice('v(closed)', recloses - 1)).toBeLessThan(0.01)
    expect(spice('v(closed)', recloses + 1)).toBeGreaterThan(0.99)
  })
})
