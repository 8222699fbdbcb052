// The first job files, logs, links and tasks of the nonsense campaign.
import { nonsense } from './nonsense.ts'
import { slice } from './slice.ts'

slice(nonsense)
