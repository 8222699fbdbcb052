// What an open length or distance of the belt is taken for, and what the one says of the other.
import { beltLength } from '../../sim/belting/geometry.ts'
import { stockBelt } from '../../sim/belting/stock.ts'
import { beltOf, hasJackshaft, stagesOf } from '../../sim/parts/belt.ts'
import type { Input } from '../../sim/scenario.ts'
import { beltSize } from '../../sim/say/drive.ts'
import { NBSP, show } from '../../sim/say/number.ts'
import type { FormState } from './field.ts'

const LENGTHS: readonly string[] = ['belt.length', 'belt.jackshaftLength']
const CENTRES: readonly string[] = ['belt.centreDistance', 'belt.jackshaftCentres']

export interface OpenWords {
  readonly placeholder: string
  readonly helper: string | null
}
const NONE: OpenWords = { placeholder: '', helper: null }

/** The words under a belt's length or centres; nothing of other inputs, or while the pulleys do not read. */
export function beltWords({ path, text }: Input, { asked, units }: FormState): OpenWords {
  const first = path.startsWith('belt.jackshaft')
  if (!LENGTHS.includes(path) && !CENTRES.includes(path)) return NONE
  const belt = beltOf(asked.belt)
  if (!belt || (first && !hasJackshaft(belt))) return NONE
  const stages = stagesOf(belt)
  const { driving, driven, centres } = stages[first ? 0 : stages.length - 1]
  const size = (value: number) => {
    const { number, unit } = show(value, 'length', units)
    return { number, told: `${number}${NBSP}${unit}` }
  }
  const given = first ? belt.jackshaftLength : belt.length
  const length = size(beltLength(driving, driven, centres))
  if (LENGTHS.includes(path)) {
    if (text !== '') return { placeholder: '', helper: `Shafts ${size(centres).told} apart.` }
    const sold = stockBelt(driving, driven, centres)
    const nearest = sold
      ? ` Sold nearest: ${beltSize(sold.length, units)}, shafts ${size(sold.centres).told} apart.`
      : ''
    return { placeholder: length.number, helper: `Left open: ${length.told} fits.${nearest}` }
  }
  if (text !== '') return { placeholder: '', helper: `A belt of ${length.told} fits.` }
  const from = given === undefined ? 'the diameters together' : 'from the belt'
  return { placeholder: size(centres).number, helper: `Left open: ${size(centres).told}, ${from}.` }
}
