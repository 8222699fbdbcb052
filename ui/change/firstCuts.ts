// What a step's cut begins with when its kind is chosen: an example of each, to be written over.
import type { CutName } from '../../sim/cuts/index.ts'

export interface FirstCut {
  readonly texts: Readonly<Record<string, string>>
  /** How fast, where the step does not say: the surface, or the spindle of kinds that have none. */
  readonly surface?: string
  readonly spindle?: string
}

export const FIRST_CUTS: Readonly<Record<CutName, FirstCut>> = {
  turning: { texts: { depth: '1 mm', feed: '0.1 mm', diameter: '50 mm' }, surface: '30 m/min' },
  drilling: { texts: { diameter: '10 mm', feed: '0.2 mm' }, surface: '25 m/min' },
  milling: {
    texts: { width: '20 mm', depth: '2 mm', diameter: '16 mm', tooth: '0.05 mm' },
    surface: '25 m/min',
  },
  sawingWood: { texts: { height: '100 mm', feed: '3 m/min', diameter: '350 mm' }, surface: '15 m/s' },
  sawingMetal: {
    texts: { width: '50 mm', height: '50 mm', lasts: '4 min', diameter: '280 mm' },
    surface: '30 m/min',
  },
  beltGrinding: { texts: { width: '50 mm', diameter: '100 mm' }, surface: '20 m/s' },
  wheelGrinding: { texts: { press: '50 N', diameter: '200 mm' }, surface: '25 m/s' },
  crushing: { texts: { mass: '100 kg', lasts: '1 h' }, spindle: '350 rpm' },
  hoisting: { texts: { mass: '100 kg', diameter: '50 mm', holds: 'brake' }, surface: '0.1 m/s' },
  wheel: { texts: { mass: '200 kg', slope: '5 %', diameter: '400 mm' }, surface: '1 m/s' },
  stirring: { texts: { diameter: '200 mm' }, spindle: '200 rpm' },
  kneading: { texts: { mass: '5 kg', lasts: '10 min' }, spindle: '100 rpm' },
  clay: { texts: {}, spindle: '100 rpm' },
  torque: { texts: { torque: '5 N·m' }, spindle: '100 rpm' },
  force: { texts: { force: '50 N', radius: '100 mm' }, spindle: '100 rpm' },
}
