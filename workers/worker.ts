// A browser's worker: the service, on the wire to its page.
import { serveOn } from './link.ts'
import { service } from './serve.ts'

serveOn(
  {
    send: (message, transfer = []) => postMessage(message, { transfer }),
    receive: (take) => addEventListener('message', ({ data }) => take(data)),
  },
  service(),
)
