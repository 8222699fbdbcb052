// Where each number of an identified motor came from: measured, off the plate, estimated, or given.
import type { Plate } from '../parts/plate.ts'
import type { Motor, MotorNumber, MotorReadings } from './motor.ts'

type From = 'measured' | 'plate' | 'estimated' | 'given'

export interface Origin {
  readonly from: From
  /** To finish the sentence "Measured: …". */
  readonly how: string
}

const measured = (how: string): Origin => ({ from: 'measured', how })
const estimated = (how: string): Origin => ({ from: 'estimated', how })

/** True where the plate has a line of its own for all day, or says that all of it is. */
export const printsContinuous = ({ continuousPower, continuousAmps, duty }: Plate): boolean =>
  continuousPower !== undefined || continuousAmps !== undefined || duty === 'continuous'

const GUESSED = { volts: 'volts', amps: 'amps', power: 'power', speed: 'rpm' } as const

function resistanceOrigin({ told }: Motor, fromPlate: (how: string) => Origin): Origin {
  if (told.resistance === 'held') return measured('volts at amps, shaft held')
  if (told.resistance === 'ohms') return measured('ohms between the leads, lowest')
  return fromPlate(
    `plate volts less the volts it makes by turning${told.constant === 'plate' ? '' : ', measured'}`,
  )
}

function constantOrigin({ told }: Motor, ohms: boolean, fromPlate: (how: string) => Origin): Origin {
  if (told.constant === 'spin') return measured('volts made by turning')
  if (told.constant === 'free') return measured('volts and speed running free')
  return fromPlate(
    ohms
      ? 'plate volts less the measured resistance’s share, over plate speed'
      : 'plate torque over plate amps less no-load amps',
  )
}

/** Where each number came from. */
export function origins(
  { plate, given }: MotorReadings,
  motor: Motor,
): Readonly<Record<MotorNumber, Origin>> {
  const { told, point } = motor
  const guessed = point.guessed.map((name) => GUESSED[name]).join(' and ')
  const fromPlate = (how: string): Origin =>
    guessed === '' ? { from: 'plate', how } : estimated(`${how}; its ${guessed} guessed`)
  const friction =
    told.friction === 'free' ? measured('amps running free') : estimated('no-load amps of 7 % of plate amps')
  const mass = estimated(
    plate.mass === undefined ? 'a mass of 4 kg for each kW of plate volts times amps' : 'its mass',
  )
  const conductance = estimated(
    `a usual pattern, scaled so that ${printsContinuous(plate) ? 'the continuous rating' : '60 % of plate power'} settles at the class limit`,
  )
  const ohms = told.resistance !== 'plate' || given.resistance !== undefined
  const origin: Record<MotorNumber, Origin> = {
    resistance: resistanceOrigin(motor, fromPlate),
    constant: constantOrigin(motor, ohms, fromPlate),
    brushDrop:
      told.brushDrop === 'held' ? measured('volts at amps, shaft held') : estimated('usual for its volts'),
    dryFriction: friction,
    windage: friction,
    inertia: told.inertia === 'coast' ? measured('coast-down') : mass,
    flywheel:
      told.flywheel === 'size'
        ? measured('its mass and diameter')
        : told.flywheel === 'coast'
          ? measured('coast-down')
          : estimated('none given'),
    windingCapacity: mass,
    frameCapacity: mass,
    windingToFrame: conductance,
    windingToAir: conductance,
    windingToFanAir: conductance,
    frameToAir: conductance,
    frameToFanAir: conductance,
    fanSpeed:
      plate.speed !== undefined
        ? { from: 'plate', how: 'plate speed' }
        : estimated(
            point.guessed.includes('speed')
              ? 'usual speed for its volts'
              : 'speed at which its measured constant gives plate power',
          ),
  }
  for (const name of Object.keys(given) as MotorNumber[])
    origin[name] = { from: 'given', how: 'given in the job' }
  return origin
}
