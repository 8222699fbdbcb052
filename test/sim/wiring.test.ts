// The wiring checklist: what bears on which supply, the computed times and speeds, and a source beside every statement.
import { describe, expect, it } from 'vitest'
import { read, readFile } from '../../sim/read.ts'
import { wiringWords } from '../../sim/say/wiring.ts'
import { type Scenario, withChange } from '../../sim/scenario.ts'
import { wiringOf } from '../../sim/wiring.ts'
import { runaway } from '../../sim/drive/runaway.ts'
import { stopTime } from '../../sim/wiring/stopping.ts'
import { example } from '../ui/demo.ts'

const changed = (name: string, changes: Record<string, string | null>) => {
  const scenario = Object.entries(changes).reduce<Scenario>(
    (all, [path, text]) => withChange(all, path, text),
    example(name),
  )
  const found = read(scenario)
  if (!found.ok) throw new Error(JSON.stringify(found.problems))
  return found
}
const listed = (name: string, changes: Record<string, string | null> = {}) => {
  const { job, motor } = changed(name, changes)
  return wiringOf(job, motor.bench, null)
}
const names = (list: ReturnType<typeof listed>) => list.map(({ name }) => name)
const said = (list: ReturnType<typeof listed>, wanted: string) => {
  const statement = list.find(({ name }) => name === wanted)
  if (!statement) throw new Error(`nothing is said of ${wanted}`)
  const { what, so } = wiringWords(statement, { system: 'us', temperature: '°C' })
  return `${what} ${so}`.replaceAll('\u00a0', ' ').replaceAll('\u202f', '')
}

it('a supply from the mains is live, a battery is not: each gets its own list', () => {
  const mill = names(listed('appleMill'))
  const saw = names(listed('bandSaw'))
  expect(mill).toEqual(
    expect.arrayContaining(['notIsolated', 'noEarthedMeter', 'residual', 'earth', 'fuse', 'pins']),
  )
  expect(mill).not.toContain('batteryFuse')
  expect(saw).toEqual(expect.arrayContaining(['batteryFuse', 'charger', 'sparks']))
  for (const name of ['notIsolated', 'residual', 'pins', 'earth']) expect(saw).not.toContain(name)
})

it('what the job has wrong comes first in its group', () => {
  const list = listed('appleMill', { 'supply.earth': 'no', 'cutoff.leads': 'motor lead' })
  expect(list[0]).toMatchObject({ name: 'earthOpen', wrong: true })
  const protect = list.filter(({ group }) => group === 'protect')
  expect(protect[0]).toMatchObject({ name: 'cutoffInMotorLead', wrong: true })
  expect(said(list, 'earthOpen')).toContain('puts up to 187 V on the frame')
  expect(names(listed('appleMill', { 'cutoff.leads': 'not connected' }))).toContain('cutoffLoose')
})

describe('capacitors', () => {
  it('unknown: charged, and no time is named', () => {
    const text = said(listed('appleMill', { 'supply.capacitance': '470 µF' }), 'dischargeUnknown')
    expect(text).toMatch(/^Treat the capacitors as charged; measure under 60 V before touching\./)
    expect(text).not.toMatch(/\d\s?(s|min)\b/)
  })

  it('known: R C ln(V/60) at √2 × mains + 10 % and C + 20 %, rounded up (IEC 60204-1, 6.2.4; closed form)', () => {
    // By hand: 1.2 × 470e-6 × 100e3 = 56.4 s; √2 × 1.1 × 120 = 186.7 V; ln(186.7/60) = 1.1351; 64.02 s.
    const list = listed('appleMill', { 'supply.capacitance': '470 µF', 'supply.bleeder': '100 kΩ' })
    expect(list.find(({ name }) => name === 'discharge')?.facts.seconds.value).toBeCloseTo(64.02, 2)
    expect(said(list, 'discharge')).toMatch(
      /^Unplugged, wait 65 s, then measure under 60 V before you touch\. At worst from 187 V/,
    )
  })
})

describe('stop time', () => {
  const { parts } = changed('appleMill', {}).job

  it('is that of J dω/dt = −c − b ω, stepped in small steps', () => {
    const { rotor, belt, machine } = parts
    const n = belt.machinePulley / belt.motorPulley
    const inertia = rotor.inertia + rotor.flywheel + machine.inertia / n ** 2
    let w = 36.65 * n
    let t = 0
    for (; w > 0; t += 1e-4) {
      const drag =
        rotor.dryFriction +
        rotor.windage * w +
        (machine.drag + (machine.windage * w) / n) / (n * belt.efficiency)
      w -= (drag / inertia) * 1e-4
    }
    expect(stopTime(parts, 36.65)).toBeCloseTo(t, 2)
  })

  it('without drag that grows it is J ω/c; without any, for ever; at standstill nothing', () => {
    const { rotor, machine, belt } = parts
    const plain = { ...parts, rotor: { ...rotor, windage: 0 }, machine: { ...machine, windage: 0 } }
    const n = belt.machinePulley / belt.motorPulley
    const steady = rotor.dryFriction + machine.drag / (n * belt.efficiency)
    const inertia = rotor.inertia + rotor.flywheel + machine.inertia / n ** 2
    expect(stopTime(plain, 10)).toBeCloseTo((inertia * 10 * n) / steady, 9)
    const free = {
      ...plain,
      rotor: { ...plain.rotor, dryFriction: 0 },
      machine: { ...plain.machine, drag: 0 },
    }
    expect(stopTime(free, 10)).toBe(Number.POSITIVE_INFINITY)
    expect(stopTime(parts, 0)).toBe(0)
  })
})

it('overspeed: volts over the constant, at the spindle through the ratio, at the rim by its radius', () => {
  const { job } = changed('appleMill', { 'supply.volts': '90 V' })
  const { winding, belt } = job.parts
  const { motor, spindle, pulleyRim } = runaway(job.parts, undefined)
  // A shorted device of a 90 V controller passes the peak of its 120 V outlet; of a 36 V one, its own supply.
  expect(motor).toBeCloseTo((Math.SQRT2 * 120 - winding.brushDrop) / winding.constant, 9)
  const low = changed('appleMill', { 'supply.volts': '36 V' }).job
  expect(runaway(low.parts, undefined).motor).toBeCloseTo((36 - winding.brushDrop) / winding.constant, 9)
  expect(pulleyRim).toBeCloseTo(
    (motor / (belt.machinePulley / belt.motorPulley)) * (belt.machinePulley / 2),
    9,
  )
  expect(pulleyRim).toBeCloseTo(spindle * 0.127, 9)
  const wild = listed('appleMill', { 'supply.volts': '240 V' }).find(({ name }) => name === 'overspeed')
  expect(wild?.wrong).toBe(true)
  const tame = listed('appleMill', { 'supply.kind': 'battery' })
  expect(tame.find(({ name }) => name === 'overspeed')?.wrong).toBe(false)
})

it('every statement has a source and whole sentences in both unit systems, whatever the supply', () => {
  const kinds = ['battery', 'pwm', 'phase control', 'bare bridge', 'ac']
  for (const kind of kinds)
    for (const leads of ['control circuit', 'motor lead', 'not connected'])
      for (const statement of listed('appleMill', { 'supply.kind': kind, 'cutoff.leads': leads }))
        for (const system of ['us', 'metric'] as const) {
          expect(statement.source).toMatch(
            /IEC|ISO|closed form|common practice|code|rating|constant|quadrant/,
          )
          const { what, so } = wiringWords(statement, { system, temperature: '°F' })
          expect(what).toMatch(/^[A-Z].*\.$/)
          expect(so).toMatch(/^[A-Z].*[.]$/)
          expect(`${what}${so}`).not.toMatch(/NaN|undefined|—|Infinity| {2}/)
        }
})

it('is untouched by a file that says none of it', () => {
  expect(readFile(JSON.stringify(example('bowlLathe'))).ok).toBe(true)
  expect(names(listed('bowlLathe')).length).toBeGreaterThan(15)
})
