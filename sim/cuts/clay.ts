// Clay on a potter’s wheel: the torque of centring, the hardest the hands press.
import * as v from 'valibot'
import { CLAY } from '../handbook/roughLoads.ts'
import { answered, type CutKind, sum, torque, type Worked } from './answer.ts'
import { loadOf } from './band.ts'
import { spindleField } from './spindle.ts'

const fields = v.object({ spindle: spindleField })

function work({ spindle }: v.InferOutput<typeof fields>): Worked {
  const { value, ...row } = loadOf(CLAY, undefined, '')
  return answered(value, spindle, row, sum`Centring takes about ${torque(value)}.`)
}

export const clay: CutKind = { label: 'Clay on a potter’s wheel', fields, work }
