// What is worth a look in a drive that runs all the same: limits of belt and pulleys, a belt that does not fit, the pull.
import { beltLength } from '../belting/geometry.ts'
import { stockBelt } from '../belting/stock.ts'
import { BEARING_HOURS, greatestShaftPull, USUAL_BEARING } from '../handbook/bearing.ts'
import { meanTorque } from '../duty.ts'
import type { Job } from '../job.ts'
import { type Belt, hasJackshaft, ratio, stagesOf } from '../parts/belt.ts'
import { idleTorque } from '../parts/machine.ts'
import type { Problem } from '../problem.ts'
import { type BeltFault, beltFaults, type BeltLimit } from './limits.ts'
import { shaftPulls } from './pull.ts'
import { both, bothPulls, bothSpeeds } from './sizes.ts'
import { stepFits, TAKE_UP } from './steps.ts'

const degrees = (angle: number): string => `${Math.round((angle * 180) / Math.PI)}°`
const percent = (share: number): string => `${Number((100 * share).toPrecision(2))} %`

/** The inputs of a stage: its two pulleys, centres and length. */
function pathsOf(belt: Belt, stage: number) {
  const two = hasJackshaft(belt)
  if (two && stage === 0)
    return {
      driving: 'belt.motorPulley',
      driven: 'belt.jackshaftLarge',
      centres: 'belt.jackshaftCentres',
      length: 'belt.jackshaftLength',
      section: 'belt.section',
    }
  const further = belt.pairs && belt.step !== undefined && belt.step > 1
  const pair = `belt.steps.${(belt.step ?? 1) - 2}`
  return {
    driving: further ? `${pair}.driving` : two ? 'belt.jackshaftSmall' : 'belt.motorPulley',
    driven: further ? `${pair}.driven` : 'belt.machinePulley',
    centres: 'belt.centreDistance',
    length: 'belt.length',
    section: 'belt.section',
  }
}

const small = (where: string, { value, limit }: BeltFault) => ({
  wrong: `The ${where} pulley, ${both(value)}, is under the ${both(limit)} that this belt bends round for long.`,
  wouldDo: `A pulley of ${both(limit)} or more, and the other larger in step; or a lighter section.`,
})

/** A limit that is passed, in words. */
function words(fault: BeltFault): { wrong: string; wouldDo: string } {
  const { kind, value, limit } = fault
  switch (kind) {
    case 'touch':
      return {
        wrong: `The pulleys need ${both(limit)} between centres, and there is ${both(value)}.`,
        wouldDo: 'Move the motor away, or take smaller pulleys. It is run as if the rims just touched.',
      }
    case 'wrap':
      return {
        wrong: `The belt wraps only ${degrees(value)} of the small pulley; under ${degrees(limit)} a V-belt loses its grip.`,
        wouldDo: 'Move the shafts apart, take pulleys nearer in size, or two stages.',
      }
    case 'small driving':
      return small('driving', fault)
    case 'small driven':
      return small('driven', fault)
    case 'load':
      return {
        wrong: `The belt’s tight strand pulls with ${bothPulls(value)}; such a belt stands about ${bothPulls(limit)} for long (from memory).`,
        wouldDo: 'A heavier section or more ribs, or larger pulleys: the same power then pulls less.',
      }
    case 'balance':
      return {
        wrong: `The belt runs ${bothSpeeds(value)}; over ${bothSpeeds(limit)} pulleys need balancing.`,
        wouldDo: 'Smaller pulleys at the same ratio, or less motor speed.',
      }
    case 'rim':
      return {
        wrong: `The rims run ${bothSpeeds(value)}; cast pulleys stand ${bothSpeeds(limit)}, and then burst.`,
        wouldDo:
          'Smaller pulleys at the same ratio, or less motor speed. Steel discs stand more: ask their maker.',
      }
    case 'steep':
      return {
        wrong: `One stage of ${Number(value.toPrecision(3))} : 1 is steep; about ${limit} : 1 is usual.`,
        wouldDo: 'Two stages through a jackshaft, or a ribbed belt on a small pulley.',
      }
  }
}

/** The input a limit is told at. */
const PLACES: Readonly<Record<BeltLimit, 'driving' | 'driven' | 'centres' | 'section'>> = {
  load: 'section',
  touch: 'centres',
  wrap: 'centres',
  'small driving': 'driving',
  'small driven': 'driven',
  balance: 'driving',
  rim: 'driving',
  steep: 'driven',
}

function limits({ parts: { belt, machine }, duty }: Job): Problem[] {
  const fastest = Math.max(...duty.phases.map(({ speed }) => speed)) * ratio(belt)
  const hardest = Math.max(
    ...duty.phases.map((phase) => meanTorque(phase) + idleTorque(machine, phase.speed)),
  )
  return beltFaults(belt, fastest, hardest).map((fault) => ({
    path: pathsOf(belt, fault.stage)[PLACES[fault.kind]],
    ...words(fault),
  }))
}

/** Centres and length both given, and further apart than a motor can be moved: the shafts stay, the belt is amiss. */
function odds({ parts: { belt } }: Job): Problem[] {
  const stages = stagesOf(belt)
  return stages.flatMap(({ driving, driven, centres }, stage) => {
    const last = stage === stages.length - 1
    const measured = last ? belt.centreDistance : belt.jackshaftCentres
    const length = last ? belt.length : belt.jackshaftLength
    if (measured === undefined || length === undefined) return []
    const fits = beltLength(driving, driven, centres)
    if (Math.abs(fits / length - 1) <= TAKE_UP) return []
    const sold = stockBelt(driving, driven, centres)
    return [
      {
        path: pathsOf(belt, stage).length,
        wrong: `At ${both(centres)} between centres the belt would be ${both(fits)} long, and ${both(length)} is given.`,
        wouldDo: `The shafts are left where they are.${sold ? ` Of those that are sold ${both(sold.length)} fits.` : ''} Or leave the centres open, and they follow from the belt.`,
      },
    ]
  })
}

/** Steps that one belt does not fit. */
function steps({ parts: { belt } }: Job): Problem[] {
  const fits = stepFits(belt)
  if (fits.length === 0) return []
  const worst = fits.reduce((a, b) => (Math.abs(b.longer) > Math.abs(a.longer) ? b : a))
  if (Math.abs(worst.longer) <= TAKE_UP) return []
  return [
    {
      path: 'belt.steps',
      wrong: `The belt does not fit every step: on step ${worst.step} it would have to be ${percent(Math.abs(worst.longer))} ${worst.longer > 0 ? 'longer' : 'shorter'} than on the step in use.`,
      wouldDo: `A motor that slides takes up about ${percent(TAKE_UP)}. Diameters that add up to nearly the same on each step fit one belt.`,
    },
  ]
}

/** A motor shaft that is pulled harder than its bearing stands for long. */
function pull(job: Job): Problem[] {
  const [motor] = shaftPulls(job) ?? []
  if (!motor || motor.speed <= 0) return []
  const most = greatestShaftPull(USUAL_BEARING, motor.speed)
  const worst = Math.max(motor.rest, motor.working)
  if (worst <= most) return []
  const { name, bore } = USUAL_BEARING
  return [
    {
      path: pathsOf(job.parts.belt, 0).driving,
      wrong: `The belt pulls the motor’s shaft with ${bothPulls(worst)}; a usual bearing (${name}, ${bore * 1000} mm bore) stands about ${bothPulls(most)} at this speed for ${BEARING_HOURS / 1000} 000 hours.`,
      wouldDo:
        'The bearings decide: read what is on yours. A larger motor pulley needs less pull, and no belt more tension than just keeps it from slipping.',
    },
  ]
}

/** Every note on the drive. */
export const driveNotes = (job: Job): Problem[] => [...limits(job), ...odds(job), ...steps(job), ...pull(job)]
