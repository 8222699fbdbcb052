// A browser's worker: the service, exposed.
import { expose } from 'comlink'
import { service } from './serve.ts'

expose(service())
