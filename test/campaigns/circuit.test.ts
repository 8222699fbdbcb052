// A slice of the campaign "circuit".
import { circuit } from './circuit.ts'
import { slice } from './slice.ts'

slice(circuit)
