// What the drive line is drawn from: its lengths as asked, each true, or a stand-in until it can be read.
import { type Belt, type Stage, stagesOf } from '../../sim/parts/belt.ts'
import { readInput } from '../../sim/reading.ts'
import { type Input, inputAt, type Scenario } from '../../sim/scenario.ts'

/** A dimension of the drawing that is also an input. */
export interface Dimension {
  readonly input: Input
  /** SI; null where the input is open or cannot be read. */
  readonly value: number | null
}

export interface Drive {
  readonly motorPulley: Dimension
  readonly machinePulley: Dimension
  /** Between centres: of the last stage, and of the first where there are two. */
  readonly centres: Dimension
  readonly jackshaft: {
    readonly large: Dimension
    readonly small: Dimension
    readonly centres: Dimension
  } | null
  /** The stages drawn, from motor to spindle; m. */
  readonly stages: readonly Stage[]
  /** Diameter of the motor's shell, m. */
  readonly shell: number
  readonly kind: string
  readonly cooling: string
  /** Most the controller gives: V and A; null where it cannot be read. */
  readonly volts: number | null
  readonly amps: number | null
  /** Where the cutoff sits; null without one. */
  readonly cutoff: string | null
}

/** Drawn until the pulleys can be read, m. */
const STAND_IN = { motorPulley: 0.0635, machinePulley: 0.254, centres: 0.584 }

/**
 * Diameter of a motor's shell, m, from its mass (kg): a cylinder half as long again as it is wide, of 5 kg a litre
 * (common practice, no source: iron and copper with the air between them).
 */
export const shellDiameter = (mass: number): number => Math.cbrt((4 * mass) / (Math.PI * 1.5 * 5000))

/** Length of the shell in its diameters. */
export const SHELL_LENGTH = 1.5

function dimension(asked: Scenario, path: string): Dimension {
  const input = inputAt(asked, path)
  if (!input) throw new Error(`${path} is no input`)
  if (input.text === '') return { input, value: null }
  const reading = readInput(input.field, input.text)
  return { input, value: reading.ok ? (reading.value as number) : null }
}

const word = (asked: Scenario, path: string): string => inputAt(asked, path)?.text ?? ''

/** The drive as asked; mass of the motor in kg. Reads each text by itself: one that is wrong spoils no other. */
export function driveOf(asked: Scenario, mass: number): Drive {
  const of = (name: string) => dimension(asked, `belt.${name}`)
  const motorPulley = of('motorPulley')
  const machinePulley = of('machinePulley')
  const centres = of('centreDistance')
  const [large, small] = [of('jackshaftLarge'), of('jackshaftSmall')]
  const two = large.value !== null && small.value !== null
  const jackshaft = two ? { large, small, centres: of('jackshaftCentres') } : null
  const bare = motorPulley.value === null && machinePulley.value === null
  const belt: Belt = {
    motorPulley: motorPulley.value ?? STAND_IN.motorPulley,
    machinePulley: machinePulley.value ?? STAND_IN.machinePulley,
    efficiency: 1,
    ribs: undefined,
    carries: undefined,
    centreDistance: centres.value ?? (bare ? STAND_IN.centres : undefined),
    jackshaftLarge: jackshaft ? (large.value ?? undefined) : undefined,
    jackshaftSmall: jackshaft ? (small.value ?? undefined) : undefined,
    jackshaftCentres: jackshaft?.centres.value ?? undefined,
  }
  const fitted = word(asked, 'cutoff.fitted') !== 'none' && word(asked, 'cutoff.leads') !== 'not connected'
  return {
    ...{ motorPulley, machinePulley, centres, jackshaft },
    stages: stagesOf(belt),
    shell: shellDiameter(mass),
    kind: word(asked, 'machine.kind'),
    cooling: word(asked, 'heat.cooling'),
    volts: dimension(asked, 'supply.volts').value,
    amps: dimension(asked, 'controller.currentLimit').value,
    cutoff: fitted ? word(asked, 'cutoff.place') : null,
  }
}

/** Nothing of the belt is known yet: what is drawn is a stand-in. */
export const isStandIn = ({ motorPulley, machinePulley }: Drive): boolean =>
  motorPulley.value === null && machinePulley.value === null
