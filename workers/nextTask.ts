// A breath: the next task of this thread, with whatever waits, a message, an input or a frame, let in before it.

/** It is a message to oneself: it goes behind those already waiting, and no timer holds it up. */
export function nextTask(): Promise<void> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel()
    port1.onmessage = () => {
      port1.close()
      resolve()
    }
    port2.postMessage(null)
  })
}
