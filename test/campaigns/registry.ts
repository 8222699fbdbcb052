// The table of campaigns: what `npm run campaign` runs in full and `npm test` a slice of.
import type { Campaign } from './campaign.ts'
import { circuit } from './circuit.ts'
import { demos } from './demos.ts'
import { energy } from './energy.ts'
import { map } from './map.ts'
import { nonsense } from './nonsense.ts'
import { order } from './order.ts'
import { same } from './same.ts'
import { sureBand, sureMeasured } from './sure.ts'
import { turns } from './turns.ts'
import { twin } from './twin.ts'
import { units } from './units.ts'
import { warmUpCan, warmUpHeating, warmUpOhms } from './warmUp.ts'

export const CAMPAIGNS: readonly Campaign[] = [
  twin,
  circuit,
  demos,
  energy,
  order,
  same,
  units,
  turns,
  map,
  sureBand,
  sureMeasured,
  warmUpCan,
  warmUpOhms,
  warmUpHeating,
  nonsense,
]
