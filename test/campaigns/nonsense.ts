// No hang, no nonsense: job files, logs, links and tasks, from a grammar or made worse by the byte.
import { seeded } from '../seeded.ts'
import type { Campaign, Trial } from './campaign.ts'
import { fileOf, tryFile } from './nonsense/file.ts'
import { linkOf, tryLink } from './nonsense/link.ts'
import { logOf, tryLog } from './nonsense/log.ts'
import { taskOf, tryTask } from './nonsense/task.ts'

/** By turns: which way in is tried at a seed. */
const WAYS = {
  file: (seed: number) => tryFile(fileOf(seeded(seed))),
  log: (seed: number) => tryLog(logOf(seeded(seed))),
  link: (seed: number) => tryLink(linkOf(seeded(seed))),
  task: (seed: number) => tryTask(taskOf(seeded(seed))),
} satisfies Record<string, (seed: number) => Trial | Promise<Trial>>
const NAMES = Object.keys(WAYS) as (keyof typeof WAYS)[]

export const nonsense: Campaign = {
  name: 'nonsense',
  about: 'job files, logs, links and tasks made up or damaged: each ends in a result or a named problem',
  whole: 20_000,
  slice: 400,
  fixed: [2181],
  limits: {
    evaluations: { most: 2e7, unit: '' },
    rows: { most: 8e5, unit: '' },
    breaths: { most: 20_000, unit: '' },
    characters: { most: 4e6, unit: '' },
  },
  seen: { carried: 0.05, fitted: 0.05, refused: 0.2, opened: 0.05, answers: 0.05, 'named refusals': 0.03 },
  one: (seed) => WAYS[NAMES[seed % NAMES.length]](seed),
  show(seed) {
    const chance = seeded(seed)
    const name = NAMES[seed % NAMES.length]
    if (name === 'file') return fileOf(chance)
    if (name === 'log') return JSON.stringify(new TextDecoder().decode(logOf(chance)))
    return name === 'link' ? linkOf(chance).slice(0, 2000) : JSON.stringify(taskOf(chance))
  },
}
