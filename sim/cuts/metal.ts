// Energy to cut a volume of metal: unit power where it was read, else a table or Kienzle’s law.
import * as v from 'valibot'
import { choiceOr, quantity } from '../field.ts'
import { CAST_IRON, castIron, KIENZLE, kienzle } from '../handbook/kienzle.ts'
import { CHIP, CHIPS, type Edge, EDGES, METAL_SPREAD, UNIT_POWER } from '../handbook/unitPower.ts'
import { toUnit } from '../quantity.ts'
import { given, type Row } from './answer.ts'
import { optionsOf } from './options.ts'

type Steel = keyof typeof UNIT_POWER
export type Metal = Steel | 'cast iron' | 'aluminium' | 'brass'

const OPTIONS: Readonly<Record<Metal, string>> = {
  ...optionsOf(UNIT_POWER),
  'cast iron': CAST_IRON.label,
  aluminium: KIENZLE.aluminium.label,
  brass: KIENZLE.brass.label,
}

const isSteel = (metal: Metal): metal is Steel => metal in UNIT_POWER

/** Choice of a tool’s edge. */
export const edgeField = choiceOr('used', { label: 'Edge of the tool', options: optionsOf(EDGES) })

/** What metal, with what edge; or the energy itself. */
export const metalFields = {
  material: choiceOr('plain carbon HB 120-140', { label: 'Material', options: OPTIONS }),
  edge: edgeField,
  energy: v.optional(
    quantity({
      label: 'Energy for each cm³ removed',
      dimension: 'energy',
      low: '10 J',
      high: '200 kJ',
      help: 'Instead of the material’s row and the edge. 1 hp·min/in³ is 2.73 kJ.',
    }),
  ),
}

interface Asked {
  readonly material: Metal
  readonly edge: Edge
  readonly energy?: number | undefined
}

const CUBIC_CM = 1e-6

/** Of one cubic centimetre in kJ, and in hp·min/in³, as the two halves of handbooks print it. */
const printed = (energy: number): string => {
  const inches = toUnit(energy, 'hp') / 60 / toUnit(1, 'in') ** 3
  return `${(energy / 1e9).toFixed(2)} kJ/cm³ (${inches.toFixed(2)} hp·min/in³)`
}

/** Energy of the volume removed (J/m³) as a chip of this thickness (m), with the row it comes from. */
export function metalEnergy(
  { material, edge, energy }: Asked,
  thickness: number,
): Row & { readonly energy: number } {
  if (energy !== undefined)
    return { ...given(`${printed(energy / CUBIC_CM)}, as given`), energy: energy / CUBIC_CM }
  const chip = Math.min(Math.max(thickness, CHIPS.thinnest), CHIPS.thickest)
  const worn = EDGES[edge].factor
  const words = worn === 1 ? 'sharp' : `× ${worn} for the edge`
  if (isSteel(material)) {
    const { label, energy: sharp, source, standing } = UNIT_POWER[material]
    const thin = (chip / CHIP.table) ** -CHIP.exponent
    const row = `${label}: ${printed(sharp)} at a 0.3 mm (0.012 in) chip; × ${thin.toFixed(2)} for this chip, ${words}`
    return {
      energy: sharp * thin * worn,
      row,
      source: `${source}; chip and edge factors from memory`,
      standing,
      ...METAL_SPREAD,
    }
  }
  const cast = material === 'cast iron'
  const { label, source, standing } = cast ? CAST_IRON : KIENZLE[material]
  const sharp = cast ? castIron(chip) : kienzle(KIENZLE[material], chip)
  return {
    energy: sharp * worn,
    row: `${label}: ${printed(sharp)} at this chip, ${words}`,
    source: `${source}${cast ? '; edge factor from memory' : ''}`,
    standing,
    ...METAL_SPREAD,
  }
}
