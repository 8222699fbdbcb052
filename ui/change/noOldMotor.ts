// The old motor before anything is typed: known to every page, though few have one.
import type { OldMotor, OldStep } from './oldMotor.ts'

export const NO_STEP: OldStep = { motorPulley: '', machinePulley: '' }
export const NO_OLD_MOTOR: OldMotor = { kind: 'single-phase', power: '', speed: '', steps: [NO_STEP] }
