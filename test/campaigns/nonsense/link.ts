// A link made worse, outside or within its packing: a job that is then tried as any file, or a sentence.
import { deflateRawSync } from 'node:zlib'
import { jobIn } from '../../../ui/keep/link.ts'
import type { Chance } from '../../seeded.ts'
import type { Trial } from '../campaign.ts'
import { damaged, HOSTILE } from './damage.ts'
import { fileOf } from './file.ts'
import { amissIn } from './said.ts'

const packed = (text: string): string => `#job=1${deflateRawSync(Buffer.from(text)).toString('base64url')}`

/** What stands behind the # of a link. */
export function linkOf(chance: Chance): string {
  const text = fileOf(chance)
  const kind = chance.uniform()
  if (kind < 0.4) return packed(text)
  if (kind < 0.8) return `#job=${damaged(packed(text).slice(5), chance, 3)}`
  if (kind < 0.9) return `#job=1${chance.pick(HOSTILE)}`
  return packed(`${' '.repeat(Math.floor(chance.size(1, 8e6)))}${text}`)
}

/** What becomes of a link. */
export async function tryLink(hash: string): Promise<Trial> {
  const found = await jobIn(hash)
  if (found.ok) return { measures: { opened: 1, characters: JSON.stringify(found.scenario).length } }
  // What it held is not to be had here; nothing of a broken link is quoted, but for the shape of its JSON.
  const wrong = amissIn(found.problems, hash)
  return { measures: { refused: 1 }, ...(wrong && { wrong }) }
}
