// A slice of the campaign "twin".
import { twin } from './twin.ts'
import { slice } from './slice.ts'

slice(twin)
