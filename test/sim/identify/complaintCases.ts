// What a complaint is tested by: plate and bench that have it, and plate and bench just short of it.
import { describe, expect, it } from 'vitest'
import { APPLE_MILL, known, motor, said } from './motors.ts'

type Plate = Parameters<typeof motor>[0]
type Bench = Parameters<typeof motor>[1] & object
export const mill = (plate: Plate = {}, bench: Bench = {}) => motor({ ...APPLE_MILL, ...plate }, bench)

export interface Case {
  readonly name: string
  readonly path: string
  /** What is said, both numbers in it. */
  readonly wrong: RegExp
  readonly bad: [Plate, Bench?]
  readonly good: [Plate, Bench?]
}

/** Neither continuous line nor mass on the plate. */
export const plain: Plate = { continuousPower: undefined, mass: undefined }
export const running = (amps: number, more: object = {}): Bench => ({
  running: [{ volts: '120 V', amps: `${amps} A`, ...more }],
})
export const spin = (volts: number): Bench => ({ spin: [{ speed: '1000 rpm', volts: `${volts} V` }] })

/** Each is told of, and just short of it is not. */
export const areTold = (cases: readonly Case[]) =>
  describe.each(cases)('$name', ({ path, wrong, bad, good }) => {
    it('is told', () => {
      expect(said(mill(...bad), path).join('\n')).toMatch(wrong)
    })
    it('just short of it is not', () => {
      expect(known(mill(...good)).motor.numbers.constant).toBeGreaterThan(0)
      expect(said(mill(...good), path)).toEqual([])
    })
  })
