// What is kept stays within its bytes: the least used goes first.
import { expect, it } from 'vitest'
import { bytesOf, kept } from '../../workers/kept.ts'

it('keeps answers until they are too many bytes, and lets go of the least used', () => {
  const column = () => new Float64Array(100)
  const memory = kept(3 * (bytesOf(column()) + 1))
  const [a, b, c, d] = [column(), column(), column(), column()]
  memory.put('a', a)
  memory.put('b', b)
  memory.put('c', c)
  expect(memory.get('a')).toBe(a)
  memory.put('d', d)
  expect(['a', 'b', 'c', 'd'].map((name) => memory.get(name) !== undefined)).toEqual([
    true,
    false,
    true,
    true,
  ])
})

it('counts an answer that takes the place of another once, and does not keep what is too large', () => {
  const memory = kept(2000)
  for (let n = 0; n < 10; n++) memory.put('a', new Float64Array(200))
  memory.put('b', new Float64Array(30))
  expect(memory.get('a')).toHaveLength(200)
  expect(memory.get('b')).toHaveLength(30)
  memory.put('c', new Float64Array(300))
  expect(memory.get('c')).toBeUndefined()
  expect(memory.get('a')).toHaveLength(200)
})

it('weighs plain data by what it holds', () => {
  expect(bytesOf({ a: [1, 2, 3], b: null })).toBeGreaterThanOrEqual(4 * 8)
  expect(bytesOf('a'.repeat(1000))).toBeGreaterThanOrEqual(1000)
  expect(bytesOf(new Float64Array(1000))).toBeGreaterThanOrEqual(8000)
})
