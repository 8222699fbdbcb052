// A slice of the campaign of warm-up fits.
import { slice } from './slice.ts'
import { warmUpHeating } from './warmUp.ts'

slice(warmUpHeating)
