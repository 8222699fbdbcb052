// The lessons’ jobs, each fetched when it is opened; and links that open one.
import { LESSONS, type LessonName } from '../sim/lessons/lesson.ts'
import { type ReadFile, readFile } from '../sim/read.ts'

const files = import.meta.glob<string>('../scenarios/lessons/*.json', { query: '?raw', import: 'default' })

const MARK = '#lesson='

/** The lesson an address asks for; null: none, or none of that name. */
export const lessonIn = (hash: string): LessonName | null =>
  hash.startsWith(MARK) ? (LESSONS.find((name) => name === hash.slice(MARK.length)) ?? null) : null

/** The job of a lesson. */
export const lessonJob = async (name: LessonName): Promise<ReadFile> =>
  readFile(await files[`../scenarios/lessons/${name}.json`]())
