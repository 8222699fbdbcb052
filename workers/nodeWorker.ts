// Node's worker: the service, exposed.
import { parentPort } from 'node:worker_threads'
import { expose } from 'comlink'
import nodeEndpoint from 'comlink/dist/umd/node-adapter.js'
import { service } from './serve.ts'

if (parentPort) expose(service(), nodeEndpoint(parentPort))
