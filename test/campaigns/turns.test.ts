// A slice of the campaign "turns".
import { turns } from './turns.ts'
import { slice } from './slice.ts'

slice(turns)
