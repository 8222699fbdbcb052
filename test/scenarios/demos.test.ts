// The three demonstrations tell the stories they are there for, and every number in them says where it comes from.
import { describe, expect, it } from 'vitest'
import { type Figures, judge } from '../../sim/judge.ts'
import { inputsOf, variantsOf } from '../../sim/scenario.ts'
import { DEMOS, type Demo, demo, demoText, jobOf, traceOf } from '../jobs.ts'

const figuresOf = (name: Demo, variant?: string): Figures => {
  const found = variantsOf(demo(name)).find((each) => each.name === variant)
  if (variant !== undefined && !found) throw new Error(`${name} has no variant ${variant}`)
  const given = jobOf(demo(name), found)
  return judge(given, traceOf(given))
}
const minutes = ({ firstOpening }: Figures) => (firstOpening === null ? Infinity : firstOpening.t / 60)

describe('apple mill', () => {
  const found = figuresOf('appleMill')
  it('without a fan opens within the first hour, and loses much of its three', () => {
    expect(minutes(found)).toBeGreaterThan(15)
    expect(minutes(found)).toBeLessThan(60)
    expect(found.work.got / found.work.asked).toBeLessThan(0.8)
  })
  it('passes its class before the cutoff acts', () => {
    expect(found.classPassed).not.toBeNull()
    expect(found.classPassed!).toBeLessThan(found.firstOpening!.t)
  })
  it('opens while milling', () => {
    expect(found.firstOpening?.phase).toBe(2)
  })
  it('with the shaft fan never opens', () => {
    const fan = figuresOf('appleMill', 'With the shaft fan')
    expect(fan.firstOpening).toBeNull()
    expect(fan.classPassed).toBeNull()
    expect(fan.delivered).toBe(1)
  })
  it('geared 2 : 1 opens even with the fan, at the current limit', () => {
    const fast = figuresOf('appleMill', 'Fan, ratio 2 : 1')
    expect(minutes(fast)).toBeLessThan(30)
    expect(fast.limitedInCut).toBeGreaterThan(60)
  })
  it('geared 5.6 : 1 stays coolest of all', () => {
    const slow = figuresOf('appleMill', 'Fan, ratio 5.6 : 1')
    expect(slow.firstOpening).toBeNull()
    expect(slow.hottestWindingC.value).toBeLessThan(
      figuresOf('appleMill', 'With the shaft fan').hottestWindingC.value - 20,
    )
  })
})

describe('bowl lathe', () => {
  it('geared 3 : 1 opens within the hour though it has its fan', () => {
    expect(minutes(figuresOf('bowlLathe'))).toBeLessThan(60)
  })
  it('with a blower is still too hot, and still sags: more air is not the cure', () => {
    const blown = figuresOf('bowlLathe', '3 : 1 with a blower')
    expect(blown.classPassed).not.toBeNull()
    expect(blown.speedMissed).toBe(true)
  })
  it('geared 6 : 1 is cool, and holds its speed', () => {
    const geared = figuresOf('bowlLathe', 'Ratio 6 : 1')
    expect(geared.firstOpening).toBeNull()
    expect(geared.hottestWindingC.value).toBeLessThan(100)
    expect(geared.speedMissed).toBe(false)
  })
})

describe('band saw', () => {
  it('geared 15 : 1 opens in its second or third cut, fan or no fan; 30 : 1 never does', () => {
    expect(minutes(figuresOf('bandSaw'))).toBeGreaterThan(10)
    expect(minutes(figuresOf('bandSaw'))).toBeLessThan(30)
    expect(minutes(figuresOf('bandSaw', 'With an outer fan'))).toBeLessThan(30)
    expect(figuresOf('bandSaw', 'Ratio 30 : 1').firstOpening).toBeNull()
  })
})

describe.each(DEMOS)('%s', (name) => {
  it('says of every number outside its duty where it comes from', () => {
    const silent = inputsOf(demo(name)).filter(
      ({ path, usual, source, field }) =>
        !usual && source === null && field.kind !== 'text' && !/^(duty|variants)\b/.test(path),
    )
    expect(silent.map(({ path }) => path)).toEqual([])
  })
  it('calls a source invented, estimated, or a handbook', () => {
    for (const { source, path } of inputsOf(demo(name)))
      if (source !== null) expect(source, path).toMatch(/^(invented|estimated|handbook)\b/)
  })
  it('is a file a person can read', () => {
    expect(demoText(name)).toBe(`${JSON.stringify(JSON.parse(demoText(name)), null, 2)}\n`)
    expect(JSON.parse(demoText(name)).$schema).toBe('./schema.json')
  })
})
