// A slice of the campaign of the even draws.
import { slice } from './slice.ts'
import { sureBand } from './sure.ts'

slice(sureBand)
