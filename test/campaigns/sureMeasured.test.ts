// A slice of the campaign of what measuring leaves.
import { slice } from './slice.ts'
import { sureMeasured } from './sure.ts'

slice(sureMeasured)
