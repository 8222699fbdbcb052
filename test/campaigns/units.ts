// The same random job written in metric and in inch and pound units: the same numbers, the same answer.
import type { Job } from '../../sim/job.ts'
import { judge } from '../../sim/judge.ts'
import { finish, run } from '../../sim/run.ts'
import { answerOf } from '../../sim/say/answer.ts'
import type { Units } from '../../sim/say/units.ts'
import { jobOf } from '../jobs.ts'
import type { Campaign } from './campaign.ts'
import { randomTree } from './randomJob.ts'
import { type Drawn, inchPound, metric } from './written.ts'

const UNITS: Units = { system: 'us', temperature: '°F' }

/** Every number below a value, by path. */
function numbers(value: unknown, path = ''): Map<string, number> {
  if (typeof value === 'number') return new Map([[path, value]])
  if (typeof value !== 'object' || value === null) return new Map()
  return new Map(Object.entries(value).flatMap(([name, each]) => [...numbers(each, `${path}.${name}`)]))
}

/** Greatest difference of two lists of numbers, as a share of each (temperatures near nought: of a degree). */
function off(a: Map<string, number>, b: Map<string, number>): number {
  if ([...a.keys()].join() !== [...b.keys()].join()) return Infinity
  return Math.max(
    ...[...a].map(([path, value]) => Math.abs(value - b.get(path)!) / Math.max(Math.abs(value), 1e-9)),
  )
}

export const units: Campaign = {
  name: 'units',
  about: 'random jobs written in metric and in inch, pound and °F: the same numbers and the same answer',
  whole: 2000,
  slice: 40,
  fixed: [],
  limits: {
    'input off': { most: 1e-12, unit: '' },
    'as drawn': { most: 1e-12, unit: '' },
    'temperature off': { most: 2e-3, unit: 'K' },
  },
  seen: { 'answers other in words': 0 },
  one(seed) {
    const tree = randomTree(seed)
    const [a, b] = [metric(tree), inchPound(tree)].map(
      (scenario): Job => ({ ...jobOf(scenario), accuracy: 'precise' }),
    )
    const drawn = (tree.winding as Record<string, Drawn>).constant.si
    const [f, g] = [a, b].map((job) => judge(job, finish(run(job)).trace))
    const [said, again] = [answerOf(a, f, UNITS), answerOf(b, g, UNITS)]
    return {
      measures: {
        'input off': off(numbers(a), numbers(b)),
        'as drawn': Math.abs(a.parts.winding.constant / drawn - 1),
        'temperature off': Math.max(
          Math.abs(f.hottestWindingC.value - g.hottestWindingC.value),
          Math.abs(f.hottestFrameC.value - g.hottestFrameC.value),
        ),
        'answers other in words': said.sentence === again.sentence ? 0 : 1,
      },
      ...(said.verdict !== again.verdict && { wrong: `${said.sentence} / ${again.sentence}` }),
    }
  },
  show: (seed) =>
    `${JSON.stringify(metric(randomTree(seed)))}\n${JSON.stringify(inchPound(randomTree(seed)))}`,
}
