// A slice of the campaign "order".
import { order } from './order.ts'
import { slice } from './slice.ts'

slice(order)
