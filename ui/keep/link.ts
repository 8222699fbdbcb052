// A job in a link: the whole of it behind the #, compressed; nothing is sent anywhere. What comes in is a stranger's text.
import type { Problem } from '../../sim/problem.ts'
import { LARGEST_FILE, readFile, type ReadFile } from '../../sim/read.ts'
import type { Scenario } from '../../sim/scenario.ts'

const MARK = '#job='
/** Of the link's own packing: compressed JSON in base64url. The job inside says its own format. */
const VERSION = '1'
/** Longest link that is opened, in characters. */
const LONGEST = 400_000

const refuse = (wrong: string, wouldDo: string): ReadFile => {
  const problem: Problem = { path: '', wrong, wouldDo }
  return { ok: false, problems: [problem] }
}

/** Whether an address carries a job. */
export const carriesJob = (hash: string): boolean => hash.startsWith(MARK)

/** The part of a link behind the #, the # with it. */
export async function linkTo(scenario: Scenario): Promise<string> {
  const bytes = new TextEncoder().encode(JSON.stringify(scenario))
  const packed = await through(bytes, new CompressionStream('deflate-raw'), Number.POSITIVE_INFINITY)
  let text = ''
  for (const byte of packed ?? []) text += String.fromCharCode(byte)
  const url = btoa(text).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '')
  return `${MARK}${VERSION}${url}`
}

/** The job a link holds, not yet checked any further than a file's; or why there is none. */
export async function jobIn(hash: string): Promise<ReadFile> {
  const body = hash.slice(MARK.length)
  if (body.length > LONGEST)
    return refuse('The link is longer than any job needs.', 'Ask for the job as a file.')
  if (body[0] !== VERSION)
    return /^[0-9A-Za-z]/.test(body)
      ? refuse('The link was made by a newer version.', 'Reload this page, or ask for the job as a file.')
      : refuse('The link holds no job.', 'Copy all of it: programs cut long links short.')
  const broken = () => refuse('The link is damaged.', 'Copy all of it: programs cut long links short.')
  let bytes: Uint8Array<ArrayBuffer>
  try {
    const text = atob(body.slice(1).replaceAll('-', '+').replaceAll('_', '/'))
    bytes = Uint8Array.from(text, (letter) => letter.charCodeAt(0))
  } catch {
    return broken()
  }
  try {
    const whole = await through(bytes, new DecompressionStream('deflate-raw'), LARGEST_FILE)
    if (!whole) return refuse('The link unpacks to more than any job holds.', 'Do not open it.')
    return readFile(new TextDecoder('utf-8', { fatal: true }).decode(whole))
  } catch {
    return broken()
  }
}

/** Bytes sent through a stream; null where more than `most` come out. */
async function through(
  bytes: Uint8Array<ArrayBuffer>,
  stream: GenericTransformStream,
  most: number,
): Promise<Uint8Array<ArrayBuffer> | null> {
  const reader = new Blob([bytes])
    .stream()
    .pipeThrough(stream as TransformStream<Uint8Array, Uint8Array>)
    .getReader()
  const parts: Uint8Array[] = []
  let length = 0
  for (;;) {
    const { done, value } = await reader.read()
    if (done) break
    length += value.length
    if (length > most) {
      await reader.cancel()
      return null
    }
    parts.push(value)
  }
  const whole = new Uint8Array(length)
  let at = 0
  for (const part of parts) {
    whole.set(part, at)
    at += part.length
  }
  return whole
}
