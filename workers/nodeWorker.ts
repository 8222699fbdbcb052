// Node's worker: the service, on the wire to its process.
import { parentPort } from 'node:worker_threads'
import { serveOn } from './link.ts'
import { service } from './serve.ts'

const port = parentPort
if (port)
  serveOn(
    {
      send: (message, handedOver) => port.postMessage(message, handedOver),
      receive: (take) => port.on('message', take),
    },
    service(),
  )
