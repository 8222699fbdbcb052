// The wire between a worker and who asks it: plain messages, each with the number of its call.
import type { Progress } from '../sim/run.ts'
import type { Reply, Service, Task } from './contract.ts'

/** One end of the wire, whatever carries it. What is handed over is gone at the sender's. */
export interface Port {
  /** Throws where a message holds what cannot be sent. */
  send(message: unknown, handedOver?: ArrayBuffer[]): void
  receive(take: (message: unknown) => void): void
}

/** To a worker. */
export type Asked =
  | { readonly ask: 'work'; readonly call: number; readonly task: Task }
  | { readonly ask: 'cancel'; readonly call: number }

/** From a worker. */
export type Told =
  | { readonly tell: 'ready' }
  | { readonly tell: 'progress'; readonly call: number; readonly progress: Progress }
  | { readonly tell: 'reply'; readonly call: number; readonly reply: Reply }

/** Every buffer in plain data, once each: handed over instead of copied. */
export function buffersIn(data: unknown, found = new Set<ArrayBuffer>()): ArrayBuffer[] {
  if (ArrayBuffer.isView(data)) {
    if (data.buffer instanceof ArrayBuffer) found.add(data.buffer)
  } else if (typeof data === 'object' && data !== null) {
    for (const value of Object.values(data)) buffersIn(value, found)
  }
  return [...found]
}

/** The worker's end: does what comes in, and says when it is ready. */
export function serveOn(port: Port, service: Service): void {
  const tell = (told: Told, handedOver?: ArrayBuffer[]) => port.send(told, handedOver)
  service.listen((call, progress) => tell({ tell: 'progress', call, progress }))
  port.receive(async (message) => {
    const asked = message as Asked
    if (asked.ask === 'cancel') return service.cancel(asked.call)
    const { call } = asked
    const reply = await service.work(call, asked.task)
    try {
      tell({ tell: 'reply', call, reply }, buffersIn(reply))
    } catch (thrown) {
      tell({ tell: 'reply', call, reply: { kind: 'failed', why: String(thrown) } })
    }
  })
  tell({ tell: 'ready' })
}
