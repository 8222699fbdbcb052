// A slice of the campaign of warm-up fits.
import { slice } from './slice.ts'
import { warmUpCan } from './warmUp.ts'

slice(warmUpCan)
