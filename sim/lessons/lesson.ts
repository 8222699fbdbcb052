// A lesson: a job with variants, and what is asked of them; every answer is computed from the job as it stands.
import type { Dimension } from '../quantity.ts'

export const LESSONS = ['gearing', 'horsepower', 'fan', 'peak', 'fuse'] as const
export type LessonName = (typeof LESSONS)[number]

export const LESSON_TITLES: Readonly<Record<LessonName, string>> = {
  gearing: 'Why slow running needs gearing',
  horsepower: 'Horsepower is not torque',
  fan: 'What the fan is worth at a fifth of speed',
  peak: 'Peak is not continuous',
  fuse: 'A fuse does not protect a winding',
}

/** A number of a lesson, SI or °C; a share or a plain ratio as it is. */
export interface Fact {
  readonly value: number
  readonly dimension: Dimension
  /** The unit it is always told in, whatever the reader’s units. */
  readonly unit?: string
}
export type Facts = Readonly<Record<string, Fact>>

/** A number of the plate: a lesson’s job prints those that it asks for, and of any other it is no number. */
export const printed = (value: number | undefined): number => Number(value)

export const fact = (value: number, dimension: Fact['dimension'] = 'number', unit?: string): Fact => ({
  value,
  dimension,
  unit,
})
