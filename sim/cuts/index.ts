// Every kind of cut by name.
import type { CutKind } from './answer.ts'
import { beltGrinding } from './beltGrinding.ts'
import { clay } from './clay.ts'
import { crushing } from './crushing.ts'
import { drilling } from './drilling.ts'
import { force } from './force.ts'
import { hoisting } from './hoisting.ts'
import { kneading } from './kneading.ts'
import { milling } from './milling.ts'
import { sawingMetal } from './sawingMetal.ts'
import { sawingWood } from './sawingWood.ts'
import { stirring } from './stirring.ts'
import { torque } from './torque.ts'
import { turning } from './turning.ts'
import { wheel } from './wheel.ts'
import { wheelGrinding } from './wheelGrinding.ts'

export const CUTS = {
  turning,
  drilling,
  milling,
  sawingWood,
  sawingMetal,
  beltGrinding,
  wheelGrinding,
  crushing,
  hoisting,
  wheel,
  stirring,
  kneading,
  clay,
  torque,
  force,
} as const satisfies Readonly<Record<string, CutKind>>

export type CutName = keyof typeof CUTS

/** True for the name of a kind of cut. */
export const isCut = (name: string): name is CutName => Object.hasOwn(CUTS, name)
