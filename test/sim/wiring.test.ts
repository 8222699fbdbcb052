// The wiring checklist: what bears on which supply, the computed times and speeds, and a source beside every statement.
import { describe, expect, it } from 'vitest'
import { read, readFile } from '../../sim/read.ts'
import type { Figures } from '../../sim/judge.ts'
import { wiringLead, wiringWords } from '../../sim/say/wiring.ts'
import { type Scenario, withChange } from '../../sim/scenario.ts'
import { wiringOf } from '../../sim/wiring.ts'
import { runaway } from '../../sim/drive/runaway.ts'
import { topSpeed } from '../../sim/steady/operating.ts'
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

  it('is told from the speed of the job and from the knob fully up', () => {
    const { facts } = listed('appleMill').find(({ name }) => name === 'reverse')!
    expect(facts.full.value).toBeCloseTo(stopTime(parts, topSpeed(parts)), 9)
    expect(facts.full.value).toBeGreaterThan(2 * facts.stop.value)
    expect(said(listed('appleMill'), 'reverse')).toContain('from the knob fully up')
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

describe('machines', () => {
  it('a drill press throws chips and its motor sparks, as a saw’s does; a mill does not', () => {
    for (const kind of ['drill', 'saw', 'lathe', 'grinder'])
      expect(names(listed('appleMill', { 'machine.kind': kind }))).toEqual(
        expect.arrayContaining(['sparks', 'eyes']),
      )
    for (const name of ['sparks', 'eyes', 'wheelMark']) expect(names(listed('appleMill'))).not.toContain(name)
  })

  it('a grinding wheel is marked for what a runaway turns it, and the mark that is too low is wrong', () => {
    const { job } = changed('appleMill', {})
    // All there can be: the peak of 120 V through this motor, at the spindle by 4 : 1.
    const wild = (Math.SQRT2 * 120 - job.parts.winding.brushDrop) / job.parts.winding.constant / 4
    const unread = listed('appleMill', { 'machine.kind': 'grinder' })
    expect(unread.find(({ name }) => name === 'wheelMark')).toMatchObject({ wrong: false })
    expect(unread.find(({ name }) => name === 'wheelMark')!.facts.wild.value).toBeCloseTo(wild, 9)
    const rpm = (wild * 60) / (2 * Math.PI)
    const marked = (times: number) =>
      listed('appleMill', { 'machine.kind': 'grinder', 'machine.wheelSpeed': `${times * rpm} rpm` })
    expect(marked(0.99).find(({ name }) => name === 'wheelMark')?.wrong).toBe(true)
    expect(marked(1.01).find(({ name }) => name === 'wheelMark')?.wrong).toBe(false)
    expect(said(marked(0.5), 'wheelMark')).toContain('printed on it')
  })

  it('a flywheel whose rim is too fast in the job as asked is wrong, one just under is not said', () => {
    // 350 rpm × 4 = 146.6 rad/s; 33 m/s at a radius of 225.1 mm, by hand.
    const across = (mm: number) =>
      listed('appleMill', { 'rotor.flywheel': '0.006 kg·m²', 'bench.flywheelDiameter': `${mm} mm` })
    expect(across(451).find(({ name }) => name === 'flywheel')).toMatchObject({
      group: 'moving',
      wrong: true,
    })
    expect(names(across(450))).not.toContain('flywheel')
  })
})

it('on AC nothing runs away and no amps are told; a bare bridge runs up by itself', () => {
  const { job, motor } = changed('appleMill', { 'supply.kind': 'ac' })
  const figures = { outletAmps: 0, hottestFrameC: { value: 25, t: 0 } } as unknown as Figures
  const all = wiringOf(job, motor.bench, figures).map(({ name }) => name)
  expect(all).toContain('ac')
  for (const name of ['overspeed', 'bridge', 'outlet']) expect(all).not.toContain(name)
  const bridge = listed('appleMill', { 'supply.kind': 'bare bridge' })
  expect(names(bridge)).not.toContain('overspeed')
  expect(said(bridge, 'bridge')).toMatch(/^A bare bridge has no knob: with little to do it runs up to/)
})

it('a battery floats, its fuse breaks thousands of amperes, and it has no plug', () => {
  const list = listed('appleMill', { 'supply.kind': 'battery', 'supply.volts': '96 V', 'supply.earth': 'no' })
  expect(said(list, 'earthOpen')).toContain('with a second fault, or a hand on the other pole, up to 96 V')
  expect(said(list, 'batteryFuse')).toContain('breaking capacity')
  expect(said(list, 'unplug')).not.toMatch(/^Unplug/)
  expect(wiringLead(changed('bandSaw', {}).job)).not.toContain('mains')
})

it('every statement has a source and whole sentences in both unit systems, whatever the supply', () => {
  const kinds = ['battery', 'pwm', 'phase control', 'bare bridge', 'ac']
  for (const kind of kinds)
    for (const leads of ['control circuit', 'motor lead', 'not connected'])
      for (const statement of listed('appleMill', {
        'supply.kind': kind,
        'cutoff.leads': leads,
        'machine.kind': 'grinder',
        'rotor.flywheel': '0.006 kg·m²',
        'bench.flywheelDiameter': '0.6 m',
      }))
        for (const system of ['us', 'metric'] as const) {
          expect(statement.source).toMatch(
            /IEC|ISO|EN |closed form|common practice|code|rating|constant|quadrant|cast rims/,
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
