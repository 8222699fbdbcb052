// Lessons: which there are, and what each computes of its job and variants.
import type { Job } from './job.ts'
import { fan } from './lessons/fan.ts'
import { fuse } from './lessons/fuse.ts'
import { gearing } from './lessons/gearing.ts'
import { horsepower } from './lessons/horsepower.ts'
import type { Facts, LessonName } from './lessons/lesson.ts'
import { peak } from './lessons/peak.ts'

export { type Fact, type Facts, LESSON_TITLES, LESSONS, type LessonName } from './lessons/lesson.ts'

const COMPUTED: Readonly<Record<LessonName, (job: Job) => Facts>> = { gearing, horsepower, fan, peak, fuse }

/** The facts of a lesson for each of its jobs: as found, then every variant. */
export const lessonFacts = (name: LessonName, jobs: readonly Job[]): readonly Facts[] =>
  jobs.map(COMPUTED[name])
