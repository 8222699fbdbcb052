// A slice of the campaign "demos".
import { demos } from './demos.ts'
import { slice } from './slice.ts'

slice(demos)
