// The winding, its magnets and brushes: resistance and motor constant as they warm, and the brush drop.
import * as v from 'valibot'
import { type Filled, choiceOr, quantity } from '../field.ts'
import { copperRatio, fluxRatio } from '../handbook/materials.ts'

export const WindingFields = v.object({
  resistance: v.optional(
    quantity({
      label: 'Winding resistance, cold',
      dimension: 'resistance',
      low: '0.001 Ω',
      high: '1000 Ω',
      below: 'less than any winding has: touch the probes together first and subtract that reading',
      help: 'At 20 °C, between the motor leads. Turn the shaft, take the lowest.',
    }),
  ),
  inductance: v.optional(
    quantity({
      label: 'Winding inductance',
      dimension: 'inductance',
      low: '0.001 mH',
      high: '5 H',
      below: 'less than any winding has',
      help: 'Left open: 5 ms times the resistance.',
    }),
  ),
  constant: v.optional(
    quantity({
      label: 'Motor constant, cold',
      dimension: 'motor constant',
      low: '0.0005 V·s/rad',
      high: '20 V·s/rad',
      help: 'The volts it makes by turning: spin it with a drill and read volts and rpm.',
    }),
  ),
  magnets: choiceOr('ferrite', {
    label: 'Magnets',
    options: { ferrite: 'Ferrite (dark grey, brittle)', NdFeB: 'Neodymium (NdFeB)', AlNiCo: 'AlNiCo' },
  }),
  brushDrop: v.optional(
    quantity({
      label: 'Brush drop',
      dimension: 'voltage',
      low: '0 V',
      high: '5 V',
      below: 'less than nothing',
      help: 'Both brushes together: 1.5 V at 60 V and up, 1 V at 36 to 48 V, 0.6 V at 12 to 24 V.',
    }),
  ),
  insulation: choiceOr('B', {
    label: 'Insulation class',
    options: { A: 'A', E: 'E', B: 'B', F: 'F', H: 'H' },
    help: 'Printed as INS or CLASS. Unknown: B.',
  }),
})

/** The winding with every number known: read, or identified from plate and bench. */
export type Winding = Filled<v.InferOutput<typeof WindingFields>, 'resistance' | 'constant' | 'brushDrop'>

/** Time constant of a winding whose inductance nobody measured. s (PHYSICS.md §3) */
const USUAL_TIME_CONSTANT = 0.005
/** Current at which the brush drop is three quarters there: it keeps the law smooth through zero. A */
const BRUSH_KNEE = 0.05

/** Winding resistance at a winding temperature. Ω */
export const resistanceAt = (winding: Winding, windingC: number): number =>
  winding.resistance * copperRatio(windingC)

/** Motor constant at a magnet temperature. V·s/rad = N·m/A */
export const constantAt = (winding: Winding, frameC: number): number =>
  winding.constant * fluxRatio(winding.magnets, frameC)

/** Voltage lost at the brushes at a current i (A). V */
export const brushVolts = (winding: Winding, i: number): number =>
  winding.brushDrop * Math.tanh(i / BRUSH_KNEE)

/** What the brushes add to the resistance where they lose so many volts: how those grow with the current. Ω */
export const brushOhms = (winding: Winding, volts: number): number =>
  winding.brushDrop > 0 ? (winding.brushDrop - (volts * volts) / winding.brushDrop) / BRUSH_KNEE : 0

/** Inductance, measured or usual. H */
export const inductanceOf = (winding: Winding): number =>
  winding.inductance ?? USUAL_TIME_CONSTANT * winding.resistance
