// A slice of the campaign "same".
import { same } from './same.ts'
import { slice } from './slice.ts'

slice(same)
