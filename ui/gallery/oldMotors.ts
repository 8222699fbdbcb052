// The old motors that gallery pictures set beside the drive, as they would be typed.
import type { OldMotor } from '../change/oldMotor.ts'

export const OLD: OldMotor = {
  kind: 'single-phase',
  power: '3/4 hp',
  speed: '1725 rpm',
  steps: [{ motorPulley: '2 in', machinePulley: '10 in' }],
}
export const OLD_STEPS: OldMotor = {
  ...OLD,
  steps: [
    { motorPulley: '2 in', machinePulley: '10 in' },
    { motorPulley: '3 in', machinePulley: '9 in' },
  ],
}
