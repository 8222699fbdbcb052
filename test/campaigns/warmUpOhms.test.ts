// A slice of the campaign of warm-up fits.
import { slice } from './slice.ts'
import { warmUpOhms } from './warmUp.ts'

slice(warmUpOhms)
