// What was worked out and may be asked for again: kept by the text of its question, least used first to go.

export interface Kept {
  get(question: string): unknown
  put(question: string, answer: unknown): void
}

/** Bytes of all answers kept, about. */
const MOST_BYTES = 32_000_000
/** What an object or a list takes beside what it holds. */
const HEAD = 32

/** About how many bytes plain data takes. */
export function bytesOf(data: unknown): number {
  if (typeof data === 'string') return HEAD + data.length
  if (ArrayBuffer.isView(data)) return HEAD + data.byteLength
  if (typeof data !== 'object' || data === null) return 8
  let sum = HEAD
  for (const value of Object.values(data)) sum += bytesOf(value)
  return sum
}

export function kept(most = MOST_BYTES): Kept {
  // In the order of their use: a map remembers it.
  const answers = new Map<string, { answer: unknown; bytes: number }>()
  let bytes = 0
  const drop = (question: string) => {
    bytes -= answers.get(question)?.bytes ?? 0
    answers.delete(question)
  }
  return {
    get(question) {
      const found = answers.get(question)
      if (!found) return undefined
      answers.delete(question)
      answers.set(question, found)
      return found.answer
    },
    put(question, answer) {
      drop(question)
      const size = bytesOf(answer) + question.length
      if (size > most) return
      answers.set(question, { answer, bytes: size })
      bytes += size
      for (const [oldest] of answers) {
        if (bytes <= most) break
        drop(oldest)
      }
    },
  }
}
