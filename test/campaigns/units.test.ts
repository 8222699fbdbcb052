// A slice of the campaign "units".
import { units } from './units.ts'
import { slice } from './slice.ts'

slice(units)
