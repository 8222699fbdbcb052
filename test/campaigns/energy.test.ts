// A slice of the campaign "energy".
import { energy } from './energy.ts'
import { slice } from './slice.ts'

slice(energy)
