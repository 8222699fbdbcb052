// Node's way into a worker: a worker thread reads no TypeScript until tsx is registered in it.
import { register } from 'tsx/esm/api'

register()
await import('./nodeWorker.ts')
