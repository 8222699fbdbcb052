// A job in a link comes back as it was; strangers' links end in a sentence, whatever is in them.
import { deflateRawSync } from 'node:zlib'
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { carriesJob, jobIn, linkTo } from '../../../ui/keep/link.ts'
import { example } from '../demo.ts'

const packed = (text: string | Buffer) => `#job=1${deflateRawSync(text).toString('base64url')}`
const wrong = async (hash: string) => {
  const found = await jobIn(hash)
  return found.ok ? 'opened' : found.problems[0].wrong
}

it.each(['appleMill', 'bandSaw', 'bowlLathe'])('%s makes the round trip', async (name) => {
  const link = await linkTo(example(name))
  expect(carriesJob(link)).toBe(true)
  expect(link).toMatch(/^#job=1[\w-]+$/)
  expect(link.length).toBeLessThan(6000)
  expect(await jobIn(link)).toEqual({ ok: true, scenario: example(name) })
})

it('says what is wrong with a link that is newer, cut short, damaged, empty or a trap', async () => {
  const link = await linkTo(example('appleMill'))
  expect(await wrong(link.replace('#job=1', '#job=2'))).toBe('The link was made by a newer version.')
  expect(await wrong(link.slice(0, 200))).toBe('The link is damaged.')
  expect(await wrong(`${link.slice(0, 300)}A${link.slice(301)}`)).not.toBe('opened')
  expect(await wrong('#job=1%%%')).toBe('The link is damaged.')
  expect(await wrong('#job=')).toBe('The link holds no job.')
  expect(await wrong(packed(Buffer.from([0xff, 0xfe, 0x7b])))).toBe('The link is damaged.')
  expect(await wrong(packed('{"format": 2}'))).toContain('from a newer version')
  expect(await wrong(packed('[]'))).toContain('This is not a job file')
  expect(await wrong(`#job=1${'A'.repeat(500_000)}`)).toBe('The link is longer than any job needs.')
  // 64 MB of spaces in 64 kB.
  expect(await wrong(packed(Buffer.alloc(64_000_000, 32)))).toBe(
    'The link unpacks to more than any job holds.',
  )
})

it('whatever stands behind the mark, it ends in a job or a sentence', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.oneof(
        fc.string(),
        fc.base64String(),
        fc.json().map((text) => packed(text).slice(5)),
      ),
      async (body) => {
        const found = await jobIn(`#job=${body}`)
        expect(found.ok || found.problems[0].wrong.length > 10).toBe(true)
      },
    ),
    { seed: 7, numRuns: 300 },
  )
})
