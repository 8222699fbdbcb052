// The command line of the lessons: a sheet to print, with blanks or with answers. `npm run lesson -- NAME`
import { fileURLToPath } from 'node:url'
import { LESSON_TITLES, LESSONS, lessonFacts } from '../sim/lessons.ts'
import { nearest } from '../sim/nearest.ts'
import { read } from '../sim/read.ts'
import { type LessonSheet, lessonSheet } from '../sim/say/lessons.ts'
import { variantsOf } from '../sim/scenario.ts'
import { command, refused } from './options.ts'
import { openJob } from './open.ts'
import { say } from './terminal.ts'

const USAGE = `npm run lesson -- NAME [options]     ${LESSONS.join(', ')}; no name: lists them
  --answers         with the answers; without, blanks to fill in
  --json            one line of JSON: the sheet, and its numbers (SI, °C); use npm run -s
  --units us|metric units of the sheet (us)
  --fahrenheit      temperatures in °F`

/** The sheet in lines. */
function lines({ title, lead, head, rows, questions }: LessonSheet, answers: boolean): string {
  const table = [['', ...head], ...rows]
  const widths = table[0].map((_, column) => Math.max(...table.map((row) => row[column].length)))
  const row = (cells: readonly string[], blank: boolean) =>
    cells
      .map((cell, column) =>
        (blank && column > 0 ? '_'.repeat(8) : cell).padEnd(
          column > 0 ? Math.max(8, widths[column]) : widths[0],
        ),
      )
      .join('  ')
      .trimEnd()
  return [
    title,
    '',
    ...lead,
    '',
    row(table[0], false),
    ...rows.map((cells) => row(cells, !answers)),
    '',
    ...questions.flatMap(({ ask, answer }, n) => [
      `${n + 1}. ${ask}`,
      answers ? `   ${answer}` : '   ____________________',
    ]),
  ].join('\n')
}

function main(): number {
  const asked = command(USAGE, { answers: { type: 'boolean' } })
  if (typeof asked === 'number') return asked
  const [wanted, ...more] = asked.files
  if (wanted === undefined) {
    say(LESSONS.map((name) => `${name.padEnd(12)}${LESSON_TITLES[name]}`).join('\n'))
    return 0
  }
  const name = LESSONS.find((each) => each === wanted)
  if (!name || more.length > 0) {
    const guess = nearest(wanted, LESSONS)
    return asked.fail(
      name
        ? 'One lesson at a time.'
        : `No lesson is called "${wanted}".${guess ? ` Did you mean "${guess}"?` : ''}`,
    )
  }
  const file = fileURLToPath(new URL(`./lessons/${name}.json`, import.meta.url))
  const opened = openJob(file)
  if (!('reading' in opened)) return refused(file, opened, asked.json)
  const variants = variantsOf(opened.scenario)
  const jobs = [opened.reading.job]
  for (const variant of variants) {
    const reading = read(opened.scenario, variant)
    if (!reading.ok) return refused(file, reading.problems, asked.json)
    jobs.push(reading.job)
  }
  const facts = lessonFacts(name, jobs)
  const sheet = lessonSheet(
    name,
    facts,
    ['As found', ...variants.map((variant) => variant.name)],
    asked.units,
  )
  if (asked.json) process.stdout.write(`${JSON.stringify({ name, ...sheet, facts })}\n`)
  else say(lines(sheet, asked.flag('answers')))
  return 0
}

process.exitCode = main()
