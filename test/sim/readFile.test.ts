// Files that are no jobs are refused whole: what is wrong and what would do.
import { describe, expect, it } from 'vitest'
import { LARGEST_FILE, readFile } from '../../sim/read.ts'

describe('the file itself', () => {
  const refusal = (text: string) => {
    const opened = readFile(text)
    return opened.ok ? null : opened.problems
  }
  it.each([
    ['', /it is not JSON/, /saved as a job/],
    ['{ "format": 1, ', /it is not JSON/, /saved as a job/],
    ['format: 1', /it is not JSON/, /saved as a job/],
    ['\u0000\u0001', /it is not JSON/, /saved as a job/],
    ['[]', /holds no job/, /begins with \{/],
    ['null', /holds no job/, /begins with \{/],
    ['5', /holds no job/, /begins with \{/],
    ['{}', /does not say its format/, /"format": 1/],
    ['{"format": "1"}', /does not say its format/, /"format": 1/],
    ['{"format": 0}', /does not say its format/, /"format": 1/],
    ['{"format": 2}', /of format 2, from a newer version/, /reads format 1/],
    ['{"format": 1e999}', /from a newer version/, /reads format 1/],
  ])('%j is refused', (text, wrong, wouldDo) => {
    expect(refusal(text)).toEqual([
      {
        path: expect.stringMatching(/^(format)?$/),
        wrong: expect.stringMatching(wrong),
        wouldDo: expect.stringMatching(wouldDo),
      },
    ])
  })

  it('of ten million characters is refused unread', () => {
    const problems = refusal(`{"format": 1, "about": "${'x'.repeat(1e7)}"}`)
    expect(problems?.[0].wrong).toBe('The file holds 10 million characters.')
    expect(refusal(' '.repeat(LARGEST_FILE))?.[0].wrong).toMatch(/not JSON/)
  })
})
