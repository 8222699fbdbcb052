// A slice of the campaign of the map.
import { map } from './map.ts'
import { slice } from './slice.ts'

slice(map)
